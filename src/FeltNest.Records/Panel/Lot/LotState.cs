namespace FeltNest.Panel.Lot;

/// <summary>The gap with the felt before and with the new lot, in one state.</summary>
/// <param name="Before">With the felt before.</param>
/// <param name="After">With the new lot.</param>
internal sealed record LotState(LotGap Before, LotGap After);
