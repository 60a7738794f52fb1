namespace FeltNest.Ball;

/// <summary>How the panel is made flat and laid to the warp.</summary>
/// <param name="Flattening">Method.</param>
/// <param name="Edge">Edge rule of the elastic method.</param>
/// <param name="WarpAngleDeg">Angle from +x of the roll (the warp) to the panel's +u for which it is designed, degrees; null where any
/// angle serves (isotropic felt only).</param>
public sealed record PanelSpec(FlatteningMethod Flattening, EdgeRule Edge, double? WarpAngleDeg)
{
    /// <summary>How far outside the panel wanted the die cuts, mm, below 0 inside: makes good what the bevel's side and the felt's
    /// springback take or add.</summary>
    public double DieOffsetMm { get; init; }
}
