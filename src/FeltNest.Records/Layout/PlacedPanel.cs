namespace FeltNest.Layout;

/// <summary>A part placed on the roll: its outline turned about its own origin, then moved.</summary>
public readonly record struct PlacedPanel
{
    /// <summary>Index into the layout's parts.</summary>
    public required int Part { get; init; }

    /// <summary>Along the roll, mm.</summary>
    public required double XMm { get; init; }

    /// <summary>Across, from the lower selvedge, mm.</summary>
    public required double YMm { get; init; }

    /// <summary>From +x to the part's +u, degrees.</summary>
    public required double AngleDeg { get; init; }
}
