namespace FeltNest.Geometry;

/// <summary>Extents of an outline across a direction.</summary>
internal static class OutlineWidth
{
    /// <summary>Least extent in y over all tilts from <paramref name="least"/> to <paramref name="most"/> radians, and the tilt that has
    /// it.</summary>
    /// <remarks>Between tilts at which an edge of the hull lies level the extent is a sine arch, so its least values are at those tilts or
    /// at the ends (M. I. Shamos, <i>Computational Geometry</i>, thesis, Yale 1978: a strip of least width touches an edge).</remarks>
    public static (double Height, double Tilt) Least(Outline outline, double least, double most)
    {
        bool free = most - least >= Math.PI;
        IEnumerable<double> tilts = free ? [0] : [least, most];
        List<Point2> hull = Hull(outline.Points);
        for (int i = 0; i < hull.Count; i++)
        {
            Point2 along = hull[(i + 1) % hull.Count] - hull[i];
            double tilt = -Math.Atan2(along.Y, along.X);
            double start = free ? 0 : least;
            tilt -= Math.Floor((tilt - start) / Math.PI) * Math.PI;
            if (free || tilt <= most)
            {
                tilts = tilts.Append(tilt);
            }
        }

        return tilts.Select(t => (Extent(hull, t), t)).Min();
    }

    private static double Extent(List<Point2> points, double tilt)
    {
        (double sin, double cos) = Math.SinCos(tilt);
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (Point2 p in points)
        {
            double y = (p.X * sin) + (p.Y * cos);
            low = Math.Min(low, y);
            high = Math.Max(high, y);
        }

        return high - low;
    }

    // Monotone chain (A. M. Andrew, Inf. Process. Lett. 9, 1979).
    private static List<Point2> Hull(IReadOnlyList<Point2> points)
    {
        Point2[] sorted = [.. points.OrderBy(p => p.X).ThenBy(p => p.Y)];
        List<Point2> hull = [];
        foreach (IEnumerable<Point2> pass in new[] { sorted, sorted.Reverse() })
        {
            int start = hull.Count;
            foreach (Point2 p in pass)
            {
                while (hull.Count >= start + 2 && Predicates.Turn(hull[^2], hull[^1], p) <= 0)
                {
                    hull.RemoveAt(hull.Count - 1);
                }

                hull.Add(p);
            }

            hull.RemoveAt(hull.Count - 1);
        }

        return hull;
    }
}
