namespace FeltNest.Cost.Sheet;

/// <summary>The closed account of the felt bought, per cent of the full roll; the nine parts add to 100. Trims run over the whole length;
/// ends and remnant count the usable width.</summary>
/// <param name="Good">Panels that become balls.</param>
/// <param name="BetweenPanels">Web between panels.</param>
/// <param name="UnusedEdge">Usable width that no row reaches.</param>
/// <param name="EdgeTrim">Both edge trims.</param>
/// <param name="RollEnds">Both roll ends.</param>
/// <param name="Remnant">Length too short for one more strike.</param>
/// <param name="Faults">Panels lost to faults.</param>
/// <param name="Rejects">Panels rejected after cutting.</param>
/// <param name="Unpaired">Good panels without a partner.</param>
public sealed record FeltShares(
    double Good, double BetweenPanels, double UnusedEdge, double EdgeTrim, double RollEnds, double Remnant, double Faults, double Rejects,
    double Unpaired)
{
    /// <summary>Names and values in the order of printing.</summary>
    public IReadOnlyList<(string Name, double Percent)> Named =>
    [
        ("good panels", Good), ("web between panels", BetweenPanels), ("unused edge", UnusedEdge), ("edge trim", EdgeTrim),
        ("roll ends", RollEnds),
        ("remnant", Remnant), ("faults", Faults), ("rejects", Rejects), ("unpaired", Unpaired),
    ];
}
