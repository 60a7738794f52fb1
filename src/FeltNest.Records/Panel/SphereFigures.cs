namespace FeltNest.Panel;

/// <summary>The seam and the panel on the fitted sphere, at zero seam gap.</summary>
/// <param name="RadiusMm">Radius of the fitted sphere, mm.</param>
/// <param name="SeamLengthMm">Length of the seam, mm.</param>
/// <param name="PanelAreaMm2">Area of one panel, mm2.</param>
/// <param name="WaistMm">Arc across the waist, mm.</param>
/// <param name="LengthMm">Arc from tip to tip, mm.</param>
/// <param name="WidthMm">Greatest width as an arc, mm.</param>
/// <param name="LeastRadiusMm">Least geodesic radius of curvature of the seam, mm.</param>
public sealed record SphereFigures(
    double RadiusMm, double SeamLengthMm, double PanelAreaMm2, double WaistMm, double LengthMm, double WidthMm, double LeastRadiusMm);
