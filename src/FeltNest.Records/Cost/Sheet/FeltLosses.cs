namespace FeltNest.Cost.Sheet;

/// <summary>What is lost beside the lay itself. Shares are normal losses: what goes wrong once belongs to a variance.</summary>
/// <param name="RollLengthM">Length of a roll, m; null counts no roll ends and no remnants.</param>
/// <param name="EndLossMm">Length lost at each end of a roll, mm.</param>
/// <param name="FaultPercent">Panels lost to faults of the cloth, per cent of all panels cut.</param>
/// <param name="RejectPercent">Panels rejected after cutting, per cent of the rest.</param>
/// <param name="UnpairedPercent">Good panels that find no partner of their kind and roll, per cent of the good ones.</param>
/// <param name="MostPanelsPerStrike">Most panels of one layer that a strike cuts: the die cuts as many whole repeats as that allows, or a
/// repeat in several strikes; null for one repeat a strike.</param>
public sealed record FeltLosses(
    double? RollLengthM, double EndLossMm, double FaultPercent, double RejectPercent, double UnpairedPercent, int? MostPanelsPerStrike)
{
    /// <summary>No losses but those of the lay.</summary>
    public static FeltLosses None { get; } = new(null, 0, 0, 0, 0, null);
}
