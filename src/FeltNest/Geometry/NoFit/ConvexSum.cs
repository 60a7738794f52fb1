namespace FeltNest.Geometry.NoFit;

/// <summary>One convex piece of a no-fit region: the sum of a convex piece and the negative of another.</summary>
internal sealed class ConvexSum
{
    private readonly double[] normalX;
    private readonly double[] normalY;
    private readonly double[] reach;

    private ConvexSum(Point2[] corners)
    {
        Corners = corners;
        normalX = new double[corners.Length];
        normalY = new double[corners.Length];
        reach = new double[corners.Length];
        for (int i = 0; i < corners.Length; i++)
        {
            Point2 along = corners[(i + 1) % corners.Length] - corners[i];
            normalX[i] = along.Y / along.Length;
            normalY[i] = -along.X / along.Length;
            reach[i] = (normalX[i] * corners[i].X) + (normalY[i] * corners[i].Y);
            MinX = Math.Min(MinX, corners[i].X);
            MaxX = Math.Max(MaxX, corners[i].X);
            MinY = Math.Min(MinY, corners[i].Y);
            MaxY = Math.Max(MaxY, corners[i].Y);
        }
    }

    /// <summary>Corners, counter-clockwise, none straight.</summary>
    internal Point2[] Corners { get; }

    internal double MinX { get; } = double.PositiveInfinity;

    internal double MaxX { get; } = double.NegativeInfinity;

    internal double MinY { get; } = double.PositiveInfinity;

    internal double MaxY { get; } = double.NegativeInfinity;

    /// <summary>Places of the moving piece's reference at which the two convex pieces meet: edges of both merged by direction.</summary>
    internal static ConvexSum Of(Point2[] standing, Point2[] moving)
    {
        Point2[] turned = Array.ConvertAll(moving, p => -p);
        Point2[] a = FromLowest(standing);
        Point2[] b = FromLowest(turned);
        List<Point2> sum = [];
        int i = 0;
        int k = 0;
        while (i < a.Length || k < b.Length)
        {
            Point2 here = a[i % a.Length] + b[k % b.Length];
            Point2 alongA = a[(i + 1) % a.Length] - a[i % a.Length];
            Point2 alongB = b[(k + 1) % b.Length] - b[k % b.Length];
            sum.Add(here);
            double cross;
            if (i >= a.Length)
            {
                cross = -1;
            }
            else if (k >= b.Length)
            {
                cross = 1;
            }
            else
            {
                cross = alongA.Cross(alongB);
            }

            // Parallel edges run together as one; "parallel" within rounding, else a sliver edge is left that is shorter than any
            // tolerance.
            bool parallel =
                i < a.Length && k < b.Length && Math.Abs(cross) <= 1e-14 * alongA.Length * alongB.Length && alongA.Dot(alongB) > 0;
            i += parallel || cross > 0 ? 1 : 0;
            k += parallel || cross <= 0 ? 1 : 0;
        }

        return new ConvexSum([
            .. sum.Where((p, n) => Predicates.Turn(sum[(n + sum.Count - 1) % sum.Count], p, sum[(n + 1) % sum.Count]) != 0),
        ]);
    }

    /// <summary>How deep the point lies inside: positive inside, the distance to the nearest edge line.</summary>
    internal double Depth(Point2 p)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < reach.Length; i++)
        {
            least = Math.Min(least, reach[i] - (normalX[i] * p.X) - (normalY[i] * p.Y));
        }

        return least;
    }

    /// <summary>The part of the segment that lies deeper than <paramref name="depth"/> inside, as shares of its length; empty when From >=
    /// To.</summary>
    internal (double From, double To) Covered(Point2 start, Point2 end, double depth)
    {
        double from = 0;
        double to = 1;
        for (int i = 0; i < reach.Length && from < to; i++)
        {
            double first = reach[i] - depth - (normalX[i] * start.X) - (normalY[i] * start.Y);
            double last = reach[i] - depth - (normalX[i] * end.X) - (normalY[i] * end.Y);
            if (first <= 0 && last <= 0)
            {
                return (1, 0);
            }

            if (first <= 0)
            {
                from = Math.Max(from, first / (first - last));
            }
            else if (last <= 0)
            {
                to = Math.Min(to, first / (first - last));
            }
        }

        return (from, to);
    }

    private static Point2[] FromLowest(Point2[] ring)
    {
        int lowest = 0;
        for (int i = 1; i < ring.Length; i++)
        {
            if (ring[i].Y < ring[lowest].Y || (ring[i].Y == ring[lowest].Y && ring[i].X < ring[lowest].X))
            {
                lowest = i;
            }
        }

        return [.. ring[lowest..], .. ring[..lowest]];
    }
}
