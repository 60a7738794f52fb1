namespace FeltNest.Ball;

/// <summary>The seam asked for.</summary>
/// <param name="Curve">Family of the curve.</param>
/// <param name="WaistMm">Great-circle arc across the waist on the fitted sphere at zero seam gap, mm; 0 where the seam is given as points,
/// which have a waist of their own.</param>
/// <param name="SeamGapMm">Gap left between the two panels for the edge adhesive, mm; may be 0.</param>
public sealed record SeamSpec(SeamFamily Curve, double WaistMm, double SeamGapMm)
{
    /// <summary>The seam as points in their order along it, where <see cref="Curve"/> is <see cref="SeamFamily.Points"/>; null
    /// otherwise.</summary>
    public IReadOnlyList<SeamPoint>? Points { get; init; }
}
