namespace FeltNest.Panel.Lot;

/// <summary>The gap with the felt before and with the new lot, in one state.</summary>
internal sealed record LotState
{
    /// <summary>With the felt before.</summary>
    public required LotGap Before { get; init; }

    /// <summary>With the new lot.</summary>
    public required LotGap After { get; init; }
}
