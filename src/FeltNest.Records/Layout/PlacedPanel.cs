namespace FeltNest.Layout;

/// <summary>A part placed on the roll: its outline turned about its own origin, then moved.</summary>
/// <param name="Part">Index into the layout's parts.</param>
/// <param name="XMm">Along the roll, mm.</param>
/// <param name="YMm">Across, from the lower selvedge, mm.</param>
/// <param name="AngleDeg">From +x to the part's +u, degrees.</param>
public readonly record struct PlacedPanel(int Part, double XMm, double YMm, double AngleDeg);
