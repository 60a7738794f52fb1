using FeltNest.Geometry;

namespace FeltNest.Rolls.Plan.Chain;

/// <summary>Where along a level line a polygon is met. Ranges are exact but for rounding and may overlap.</summary>
internal static class LevelLine
{
    /// <summary>The x at which a point at height <paramref name="y"/> is inside the rings (an odd count of them) or at most so far from
    /// them.</summary>
    internal static List<XRange> Near(IReadOnlyList<IReadOnlyList<Point2>> rings, double y, double distance)
    {
        List<XRange> met = Inside(rings, y);
        foreach (IReadOnlyList<Point2> ring in rings)
        {
            Point2 a = ring[^1];
            foreach (Point2 b in ring)
            {
                if (Math.Min(a.Y, b.Y) - distance <= y && y <= Math.Max(a.Y, b.Y) + distance)
                {
                    met.Add(NearEdge(a, b, y, distance));
                }

                a = b;
            }
        }

        return met;
    }

    /// <summary>The x over which the polygon has a point between two heights, both included.</summary>
    internal static List<XRange> Across(IReadOnlyList<Point2> ring, double low, double high)
    {
        // What lies in the band is bounded by pieces of edges and by level pieces on its two sides.
        List<XRange> met = [.. Inside([ring], low), .. Inside([ring], high)];
        Point2 a = ring[^1];
        foreach (Point2 b in ring)
        {
            (Point2 under, Point2 over) = a.Y <= b.Y ? (a, b) : (b, a);
            if (under.Y <= high && over.Y >= low)
            {
                double from = under.Y < low ? AtHeight(under, over, low) : under.X;
                double to = over.Y > high ? AtHeight(under, over, high) : over.X;
                met.Add(new XRange { From = Math.Min(from, to), To = Math.Max(from, to) });
            }

            a = b;
        }

        return met;
    }

    private static List<XRange> Inside(IReadOnlyList<IReadOnlyList<Point2>> rings, double y)
    {
        List<double> crossed = [];
        foreach (IReadOnlyList<Point2> ring in rings)
        {
            Point2 a = ring[^1];
            foreach (Point2 b in ring)
            {
                if (a.Y > y != b.Y > y)
                {
                    crossed.Add(AtHeight(a, b, y));
                }

                a = b;
            }
        }

        crossed.Sort();
        return [.. crossed.Chunk(2).Select(pair => new XRange { From = pair[0], To = pair[1] })];
    }

    // An edge and all within a distance is two discs and the rectangle between them; a line cuts so round a shape in one range.
    private static XRange NearEdge(Point2 a, Point2 b, double y, double distance)
    {
        double from = double.PositiveInfinity;
        double to = double.NegativeInfinity;
        foreach (Point2 centre in (ReadOnlySpan<Point2>)[a, b])
        {
            double up = y - centre.Y;
            double half = (distance * distance) - (up * up);
            if (half >= 0)
            {
                half = Math.Sqrt(half);
                (from, to) = (Math.Min(from, centre.X - half), Math.Max(to, centre.X + half));
            }
        }

        Point2 side = (b - a).Left * (distance / (b - a).Length);
        ReadOnlySpan<Point2> corners = [a + side, b + side, b - side, a - side];
        Point2 last = corners[^1];
        foreach (Point2 next in corners)
        {
            if (Math.Min(last.Y, next.Y) <= y && y <= Math.Max(last.Y, next.Y) && last.Y != next.Y)
            {
                double x = AtHeight(last, next, y);
                (from, to) = (Math.Min(from, x), Math.Max(to, x));
            }

            last = next;
        }

        // Rounding can leave a line that only grazes with nothing: the whole reach of the edge is on the safe side.
        return from <= to
            ? new XRange { From = from, To = to }
            : new XRange { From = Math.Min(a.X, b.X) - distance, To = Math.Max(a.X, b.X) + distance };
    }

    private static double AtHeight(Point2 a, Point2 b, double y) => a.X + ((b.X - a.X) * ((y - a.Y) / (b.Y - a.Y)));
}
