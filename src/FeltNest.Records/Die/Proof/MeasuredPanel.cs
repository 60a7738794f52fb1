using FeltNest.Geometry;

namespace FeltNest.Die.Proof;

/// <summary>A measured panel laid on the outline wanted.</summary>
internal sealed record MeasuredPanel
{
    /// <summary>Profile tolerance: width of the zone, mm; a place passes within half of it.</summary>
    public required double ToleranceMm { get; init; }

    /// <summary>Measured points in the outline's frame with their distance off it, mm, positive outside.</summary>
    public required IReadOnlyList<(Point2 Place, double OffMm)> Points { get; init; }

    /// <summary>How far the measured points were turned, degrees.</summary>
    public required double TurnDeg { get; init; }

    /// <summary>Root mean square distance, mm.</summary>
    public required double RmsMm { get; init; }

    /// <summary>Mean signed distance, mm: above 0 the panel is larger all round.</summary>
    public required double MeanMm { get; init; }

    /// <summary>Longest stretch of the outline without a measured point, mm.</summary>
    public required double WidestGapMm { get; init; }

    /// <summary>True where the points lie much better mirrored: the panel was measured nap side down.</summary>
    public required bool Mirrored { get; init; }

    /// <summary>The place furthest off.</summary>
    public (Point2 Place, double OffMm) Worst => Points.MaxBy(p => Math.Abs(p.OffMm));

    /// <summary>Whether every point lies within half the tolerance.</summary>
    public bool Passed => Math.Abs(Worst.OffMm) <= ToleranceMm / 2;

    /// <summary>Points outside the zone.</summary>
    public int Failing => Points.Count(p => Math.Abs(p.OffMm) > ToleranceMm / 2);
}
