namespace FeltNest.Geometry;

/// <summary>One circular arc between two points.</summary>
internal readonly record struct ArcPiece
{
    /// <summary>Centre of the circle, mm.</summary>
    public required Point2 Centre { get; init; }

    /// <summary>mm, positive.</summary>
    public required double Radius { get; init; }

    /// <summary>Direction from the centre to the start, radians.</summary>
    public required double StartAngle { get; init; }

    /// <summary>Signed included angle, radians, counter-clockwise positive, not 0.</summary>
    public required double Turn { get; init; }

    /// <summary>Length along the arc, mm.</summary>
    public double Length => Radius * Math.Abs(Turn);

    /// <summary>Signed area between the chord and the arc, mm2: positive for a counter-clockwise arc.</summary>
    public double SegmentArea => Radius * Radius * Slice(Turn) / 2;

    /// <summary>Centroid of the region between chord and arc, mm.</summary>
    public Point2 SegmentCentroid
    {
        get
        {
            double half = Math.Abs(Turn) / 2;
            double sin = Math.Sin(half);
            double reach = 4 * sin * sin * sin / (3 * Slice(Math.Abs(Turn)));
            return Centre + (Spoke(Turn / 2) * reach);
        }
    }

    /// <summary>The arc from <paramref name="start"/> to <paramref name="end"/> that turns by <paramref name="turn"/> radians.</summary>
    public static ArcPiece Between(Point2 start, Point2 end, double turn)
    {
        Point2 chord = end - start;
        double radius = chord.Length / (2 * Math.Abs(Math.Sin(turn / 2)));
        Point2 centre = ((start + end) * 0.5) + (chord.Left * (0.5 / Math.Tan(turn / 2)));
        return new ArcPiece
        {
            Centre = centre,
            Radius = radius,
            StartAngle = Math.Atan2(start.Y - centre.Y, start.X - centre.X),
            Turn = turn,
        };
    }

    /// <summary>Turn of a piece of this circle whose chord lies no further than <paramref name="tolerance"/> mm inside it; radians, half a
    /// circle at most.</summary>
    public double ChordStep(double tolerance) => 4 * Math.Asin(Math.Sqrt(Math.Min(1, tolerance / Radius) / 2));

    /// <summary>Turn of a piece of this circle whose tangents at its ends meet no further than <paramref name="tolerance"/> mm outside it,
    /// radians.</summary>
    public double TangentStep(double tolerance) => 2 * Math.Atan(Math.Sqrt(tolerance / Radius * (2 + (tolerance / Radius))));

    /// <summary>Vector from the centre to the point of the arc after turning by <paramref name="angle"/> from the start.</summary>
    public Point2 Spoke(double angle)
    {
        (double sin, double cos) = Math.SinCos(StartAngle + angle);
        return new(Radius * cos, Radius * sin);
    }

    // angle - sin(angle), by its series where the difference would lose digits.
    private static double Slice(double angle) => Math.Abs(angle) < 0.05
        ? angle * angle * angle / 6 * (1 - (angle * angle / 20 * (1 - (angle * angle / 42))))
        : angle - Math.Sin(angle);
}
