namespace FeltNest.Layout.Limits;

/// <summary>A stripe along the roll that no panel may touch: bad cloth, or a seam along the roll.</summary>
public readonly record struct ForbiddenStrip
{
    /// <summary>Lower side from the lower selvedge, mm.</summary>
    public required double YFromMm { get; init; }

    /// <summary>Upper side, mm.</summary>
    public required double YToMm { get; init; }
}
