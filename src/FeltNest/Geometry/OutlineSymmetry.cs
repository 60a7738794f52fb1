namespace FeltNest.Geometry;

/// <summary>Symmetries of an outline that save search.</summary>
internal static class OutlineSymmetry
{
    /// <summary>True when the outline turned by half a turn about <paramref name="centre"/> is the same outline within
    /// <paramref name="tolerance"/> mm.</summary>
    public static bool HasHalfTurn(Outline outline, Point2 centre, double tolerance) =>
        Probes(outline).All(p => DistanceToBoundary(outline, (2 * centre) - p) <= tolerance);

    /// <summary>True when the outline mirrored in its x axis, y to -y, is the same outline within <paramref name="tolerance"/>
    /// mm.</summary>
    public static bool HasMirror(Outline outline, double tolerance) =>
        Probes(outline).All(p => DistanceToBoundary(outline, new Point2(p.X, -p.Y)) <= tolerance);

    /// <summary>Least distance from a point to the boundary, mm.</summary>
    public static double DistanceToBoundary(Outline outline, Point2 p)
    {
        double least = double.PositiveInfinity;
        IReadOnlyList<Point2> points = outline.Points;
        for (int i = 0; i < points.Count; i++)
        {
            Point2 a = points[i];
            Point2 along = points[(i + 1) % points.Count] - a;
            double share = Math.Clamp((p - a).Dot(along) / along.Dot(along), 0, 1);
            least = Math.Min(least, (a + (along * share) - p).Length);
        }

        return least;
    }

    // Corners alone may fall on each other though the sides between them do not, as with a notch down to the centre: their middles are
    // asked, too. A side that meets its image at both ends and in the middle and nowhere else would still pass.
    private static IEnumerable<Point2> Probes(Outline outline) =>
        outline.Points.Concat(outline.Points.Select((p, i) => 0.5 * (p + outline.Points[(i + 1) % outline.Points.Count])));
}
