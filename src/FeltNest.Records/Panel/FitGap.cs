namespace FeltNest.Panel;

/// <summary>Gap and overlap of two panels whose edges nothing pulls.</summary>
public sealed record FitGap
{
    /// <summary>Greatest gap, mm, 0 or more; null where the edges do not face each other.</summary>
    public required double? LargestGapMm { get; init; }

    /// <summary>Greatest overlap, mm, 0 or more; null likewise.</summary>
    public required double? LargestOverlapMm { get; init; }
}
