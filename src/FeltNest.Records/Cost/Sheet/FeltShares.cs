namespace FeltNest.Cost.Sheet;

/// <summary>The closed account of the felt bought, per cent of the full roll; the nine parts add to 100. Trims run over the whole length;
/// ends and remnant count the usable width.</summary>
public sealed record FeltShares
{
    /// <summary>Panels that become balls.</summary>
    public required double Good { get; init; }

    /// <summary>Web between panels.</summary>
    public required double BetweenPanels { get; init; }

    /// <summary>Usable width that no row reaches.</summary>
    public required double UnusedEdge { get; init; }

    /// <summary>Both edge trims.</summary>
    public required double EdgeTrim { get; init; }

    /// <summary>Both roll ends.</summary>
    public required double RollEnds { get; init; }

    /// <summary>Length too short for one more strike.</summary>
    public required double Remnant { get; init; }

    /// <summary>Panels lost to faults.</summary>
    public required double Faults { get; init; }

    /// <summary>Panels rejected after cutting.</summary>
    public required double Rejects { get; init; }

    /// <summary>Good panels without a partner.</summary>
    public required double Unpaired { get; init; }

    /// <summary>Names and values in the order of printing.</summary>
    public IReadOnlyList<(string Name, double Percent)> Named =>
    [
        ("good panels", Good), ("web between panels", BetweenPanels), ("unused edge", UnusedEdge), ("edge trim", EdgeTrim),
        ("roll ends", RollEnds),
        ("remnant", Remnant), ("faults", Faults), ("rejects", Rejects), ("unpaired", Unpaired),
    ];
}
