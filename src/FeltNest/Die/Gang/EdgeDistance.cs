using FeltNest.Geometry;

namespace FeltNest.Die.Gang;

/// <summary>Least distance of two outlines of which one may stand anywhere within a box of play about its place: exact for
/// polygons.</summary>
/// <remarks>The differences of points of two sides fill a parallelogram; its distance to the box of play is that of two convex
/// polygons.</remarks>
internal static class EdgeDistance
{
    /// <summary>The least distance, mm, and the middle of the nearest places; infinite distance where it exceeds
    /// <paramref name="worthwhile"/>.</summary>
    /// <param name="a">Corners of one outline.</param>
    /// <param name="b">Corners of the other.</param>
    /// <param name="play">Half the box of play, mm along and across.</param>
    /// <param name="worthwhile">Distances above this are not wanted, mm.</param>
    public static (double Distance, Point2 Place) Least(Point2[] a, Point2[] b, Point2 play, double worthwhile)
    {
        double best = worthwhile;
        Point2 place = default;
        bool found = false;
        double minX = a.Min(p => p.X);
        double maxX = a.Max(p => p.X);
        double minY = a.Min(p => p.Y);
        double maxY = a.Max(p => p.Y);
        for (int i = 0; i < b.Length; i++)
        {
            Point2 c = b[i];
            Point2 d = b[(i + 1) % b.Length];
            if (Apart(minX, maxX, Math.Min(c.X, d.X), Math.Max(c.X, d.X), play.X) >= best
                || Apart(minY, maxY, Math.Min(c.Y, d.Y), Math.Max(c.Y, d.Y), play.Y) >= best)
            {
                continue;
            }

            for (int k = 0; k < a.Length; k++)
            {
                Point2 e = a[k];
                Point2 f = a[(k + 1) % a.Length];
                if (Apart(Math.Min(e.X, f.X), Math.Max(e.X, f.X), Math.Min(c.X, d.X), Math.Max(c.X, d.X), play.X) >= best
                    || Apart(Math.Min(e.Y, f.Y), Math.Max(e.Y, f.Y), Math.Min(c.Y, d.Y), Math.Max(c.Y, d.Y), play.Y) >= best)
                {
                    continue;
                }

                double distance = ToBox([c - e, d - e, d - f, c - f], play);
                if (distance < best)
                {
                    (best, place, found) = (distance, (c + d + e + f) * 0.25, true);
                }
            }
        }

        return (found ? best : double.PositiveInfinity, place);
    }

    private static double Apart(double lowA, double highA, double lowB, double highB, double play) =>
        Math.Max(0, Math.Max(lowB - highA, lowA - highB) - play);

    private static double ToBox(Point2[] quad, Point2 play)
    {
        Point2[] box = [new(-play.X, -play.Y), new(play.X, -play.Y), new(play.X, play.Y), new(-play.X, play.Y)];
        if (Holds(quad, box[0]) || quad.Any(p => Math.Abs(p.X) <= play.X && Math.Abs(p.Y) <= play.Y))
        {
            return 0;
        }

        double least = double.PositiveInfinity;
        for (int i = 0; i < 4; i++)
        {
            least = Math.Min(least, Math.Min(Sides(quad, box[i]), Sides(box, quad[i])));
        }

        // Sides that cross without a corner of one inside the other.
        for (int i = 0; i < 4 && least > 0; i++)
        {
            for (int k = 0; k < 4; k++)
            {
                if (Cross(quad[i], quad[(i + 1) % 4], box[k], box[(k + 1) % 4]))
                {
                    return 0;
                }
            }
        }

        return least;
    }

    private static double Sides(Point2[] ring, Point2 p)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < ring.Length; i++)
        {
            Point2 a = ring[i];
            Point2 way = ring[(i + 1) % ring.Length] - a;
            double square = way.Dot(way);
            double share = square > 0 ? Math.Clamp((p - a).Dot(way) / square, 0, 1) : 0;
            least = Math.Min(least, (a + (way * share) - p).Length);
        }

        return least;
    }

    private static bool Holds(Point2[] quad, Point2 p)
    {
        int left = 0;
        int right = 0;
        for (int i = 0; i < 4; i++)
        {
            int side = Predicates.Turn(quad[i], quad[(i + 1) % 4], p);
            left += side > 0 ? 1 : 0;
            right += side < 0 ? 1 : 0;
        }

        return (left == 0) != (right == 0);
    }

    private static bool Cross(Point2 a, Point2 b, Point2 c, Point2 d) =>
        Predicates.Turn(a, b, c) * Predicates.Turn(a, b, d) < 0 && Predicates.Turn(c, d, a) * Predicates.Turn(c, d, b) < 0;
}
