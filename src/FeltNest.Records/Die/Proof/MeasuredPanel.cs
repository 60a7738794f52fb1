using FeltNest.Geometry;

namespace FeltNest.Die.Proof;

/// <summary>A measured panel laid on the outline wanted by its best zone, and judged.</summary>
internal sealed record MeasuredPanel
{
    /// <summary>By what it is judged.</summary>
    public required ProfileRule Rule { get; init; }

    /// <summary>Measured points, laid.</summary>
    public required IReadOnlyList<MeasuredPoint> Points { get; init; }

    /// <summary>How far the measured points were turned, degrees.</summary>
    public required double TurnDeg { get; init; }

    /// <summary>Points that hold the zone; none where the points stand in the frame of the drawing.</summary>
    public required IReadOnlyList<ZonePoint> HeldBy { get; init; }

    /// <summary>Length of the outline, mm.</summary>
    public required double PerimeterMm { get; init; }

    /// <summary>Longest stretch of the outline without a measured point, mm.</summary>
    public required double WidestGapMm { get; init; }

    /// <summary>Middle of that stretch on the outline.</summary>
    public required Point2 WidestGapPlace { get; init; }

    /// <summary>Greatest distance that can hide between two points at the steepness allowed, mm, without sign.</summary>
    public required double HiddenMm { get; init; }

    /// <summary>True where the points lie much better mirrored: the panel was measured nap side down.</summary>
    public required bool Mirrored { get; init; }

    /// <summary>What is proved of the profile.</summary>
    public required Conformity Verdict { get; init; }

    /// <summary>How near to the limit a place may lie to be accepted, mm.</summary>
    public required double GuardMm { get; init; }

    /// <summary>How far beyond the limit the worst place must lie to be rejected, mm.</summary>
    public required double RejectGuardMm { get; init; }

    /// <summary>Chance that the worst place lies within the limits, 0 to 1; null where the uncertainty is unknown.</summary>
    public required double? Chance { get; init; }

    /// <summary>The place furthest off.</summary>
    public MeasuredPoint Worst => Points.MaxBy(p => Math.Abs(p.OffMm));

    /// <summary>Greatest distance by least squares, with its sign, mm: information, it judges nothing.</summary>
    public double SquaresWorstMm => Points.MaxBy(p => Math.Abs(p.SquaresOffMm)).SquaresOffMm;

    /// <summary>Root mean square distance by least squares, mm.</summary>
    public double SquaresRmsMm => Math.Sqrt(Points.Average(p => p.SquaresOffMm * p.SquaresOffMm));

    /// <summary>Mean signed distance by least squares, mm: above 0 the panel is larger all round.</summary>
    public double SquaresMeanMm => Points.Average(p => p.SquaresOffMm);

    /// <summary>Width of the best zone that holds all points, mm.</summary>
    public double ZoneMm => 2 * Math.Abs(Worst.OffMm);

    /// <summary>Points outside the zone of the tolerance.</summary>
    public int Failing => Points.Count(p => Math.Abs(p.OffMm) > Rule.ToleranceMm / 2);

    /// <summary>Points no further apart than this leave nothing hidden that would break the limit, mm; null where the worst place is
    /// itself too near to it.</summary>
    public double? SpacingWantedMm =>
        (Rule.ToleranceMm / 2) - GuardMm - Math.Abs(Worst.OffMm) is > 1e-6 and var room ? 2 * room / Rule.Steepness : null;

    /// <summary>How many points, evenly spread, have that spacing; null where no number is enough.</summary>
    public int? PointsWanted => SpacingWantedMm is { } spacing ? (int)Math.Ceiling(PerimeterMm / spacing) : null;
}
