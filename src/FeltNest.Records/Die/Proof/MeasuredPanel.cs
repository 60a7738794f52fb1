using FeltNest.Geometry;

namespace FeltNest.Die.Proof;

/// <summary>A measured panel laid on the outline wanted.</summary>
/// <param name="ToleranceMm">Profile tolerance: width of the zone, mm; a place passes within half of it.</param>
/// <param name="Points">Measured points in the outline's frame with their distance off it, mm, positive outside.</param>
/// <param name="TurnDeg">How far the measured points were turned, degrees.</param>
/// <param name="RmsMm">Root mean square distance, mm.</param>
/// <param name="MeanMm">Mean signed distance, mm: above 0 the panel is larger all round.</param>
/// <param name="WidestGapMm">Longest stretch of the outline without a measured point, mm.</param>
/// <param name="Mirrored">True where the points lie much better mirrored: the panel was measured nap side down.</param>
public sealed record MeasuredPanel(
    double ToleranceMm, IReadOnlyList<(Point2 Place, double OffMm)> Points, double TurnDeg, double RmsMm, double MeanMm, double WidestGapMm,
    bool Mirrored)
{
    /// <summary>The place furthest off.</summary>
    public (Point2 Place, double OffMm) Worst => Points.MaxBy(p => Math.Abs(p.OffMm));

    /// <summary>Whether every point lies within half the tolerance.</summary>
    public bool Passed => Math.Abs(Worst.OffMm) <= ToleranceMm / 2;

    /// <summary>Points outside the zone.</summary>
    public int Failing => Points.Count(p => Math.Abs(p.OffMm) > ToleranceMm / 2);
}
