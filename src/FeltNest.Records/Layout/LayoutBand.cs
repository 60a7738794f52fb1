namespace FeltNest.Layout;

/// <summary>A strip of the width with its own repeat, for lays whose bands do not share one.</summary>
/// <param name="YFromMm">Lower side from the lower selvedge, mm.</param>
/// <param name="YToMm">Upper side, mm.</param>
/// <param name="Repeat">The band's repeat.</param>
public sealed record LayoutBand(double YFromMm, double YToMm, LayoutRepeat Repeat);
