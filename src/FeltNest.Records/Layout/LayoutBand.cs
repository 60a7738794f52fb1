namespace FeltNest.Layout;

/// <summary>A strip of the width with its own repeat, for lays whose bands do not share one.</summary>
public sealed record LayoutBand
{
    /// <summary>Lower side from the lower selvedge, mm.</summary>
    public required double YFromMm { get; init; }

    /// <summary>Upper side, mm.</summary>
    public required double YToMm { get; init; }

    /// <summary>The band's repeat.</summary>
    public required LayoutRepeat Repeat { get; init; }
}
