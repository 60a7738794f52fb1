namespace FeltNest.Ball;

/// <summary>The seam asked for.</summary>
/// <param name="Curve">Family of the curve.</param>
/// <param name="WaistMm">Great-circle arc across the waist on the fitted sphere at zero seam gap, mm.</param>
/// <param name="SeamGapMm">Gap left between the two panels for the edge adhesive, mm; may be 0.</param>
public sealed record SeamSpec(SeamFamily Curve, double WaistMm, double SeamGapMm);
