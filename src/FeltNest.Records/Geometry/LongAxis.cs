namespace FeltNest.Geometry;

/// <summary>The direction along which a plane piece is longest, by the second moments of its area.</summary>
internal readonly record struct LongAxis
{
    /// <summary>Direction, radians, above -pi/2 to pi/2.</summary>
    public required double Angle { get; init; }

    /// <summary>Radius of gyration along it over that across: 1 for a piece without such a direction.</summary>
    public required double Ratio { get; init; }

    /// <summary>The axis of the polygon through points, seen from its centroid.</summary>
    /// <param name="points">Corners, counter-clockwise.</param>
    /// <param name="centroid">Its centroid.</param>
    public static LongAxis Of(IReadOnlyList<Point2> points, Point2 centroid)
    {
        (double xx, double xy, double yy) = (0, 0, 0);
        for (int i = 0; i < points.Count; i++)
        {
            // Second moments of the triangles from the centroid, times twelve.
            Point2 a = points[i] - centroid;
            Point2 b = points[(i + 1) % points.Count] - centroid;
            double twice = a.Cross(b);
            xx += 2 * twice * ((a.X * a.X) + (a.X * b.X) + (b.X * b.X));
            yy += 2 * twice * ((a.Y * a.Y) + (a.Y * b.Y) + (b.Y * b.Y));
            xy += twice * ((2 * a.X * a.Y) + (2 * b.X * b.Y) + (a.X * b.Y) + (b.X * a.Y));
        }

        double mean = (xx + yy) / 2;
        double apart = Math.Sqrt(((xx - yy) * (xx - yy) / 4) + (xy * xy));
        return new LongAxis
        {
            Angle = Math.Atan2(2 * xy, xx - yy) / 2,
            Ratio = Math.Sqrt((mean + apart) / Math.Max(mean - apart, double.Epsilon)),
        };
    }
}
