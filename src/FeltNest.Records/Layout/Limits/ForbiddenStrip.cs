namespace FeltNest.Layout.Limits;

/// <summary>A stripe along the roll that no panel may touch: bad cloth, or a seam along the roll.</summary>
/// <param name="YFromMm">Lower side from the lower selvedge, mm.</param>
/// <param name="YToMm">Upper side, mm.</param>
public readonly record struct ForbiddenStrip(double YFromMm, double YToMm);
