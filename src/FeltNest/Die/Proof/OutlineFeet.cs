using FeltNest.Geometry;

namespace FeltNest.Die.Proof;

/// <summary>Feet of points on an outline.</summary>
internal sealed class OutlineFeet
{
    // Outline points are this near to each other, mm, for finding feet; feet are then exact on the polygon.
    private const double Step = 0.5;

    private readonly Point2[] places;
    private readonly double[] along;

    /// <summary>Prepares an outline.</summary>
    public OutlineFeet(Outline outline)
    {
        Outline = outline;
        List<Point2> dense = [];
        for (int i = 0; i < outline.Points.Count; i++)
        {
            Point2 a = outline.Points[i];
            Point2 way = outline.Points[(i + 1) % outline.Points.Count] - a;
            int parts = Math.Max(1, (int)Math.Ceiling(way.Length / Step));
            dense.AddRange(Enumerable.Range(0, parts).Select(k => a + (way * ((double)k / parts))));
        }

        places = [.. dense];
        along = new double[places.Length];
        for (int i = 1; i < places.Length; i++)
        {
            along[i] = along[i - 1] + (places[i] - places[i - 1]).Length;
        }

        Perimeter = along[^1] + (places[0] - places[^1]).Length;
        Centre = places.Aggregate(default(Point2), (sum, p) => sum + p) * (1.0 / places.Length);
        Axis = AxisOf(places, Centre);
    }

    /// <summary>The outline.</summary>
    public Outline Outline { get; }

    /// <summary>Mean place of the outline.</summary>
    public Point2 Centre { get; }

    /// <summary>Direction of its long axis, radians.</summary>
    public double Axis { get; }

    /// <summary>Its length, mm.</summary>
    public double Perimeter { get; }

    /// <summary>Direction of the long axis of points about a centre, radians.</summary>
    public static double AxisOf(IEnumerable<Point2> points, Point2 centre)
    {
        double xx = 0;
        double xy = 0;
        double yy = 0;
        foreach (Point2 p in points)
        {
            Point2 d = p - centre;
            (xx, xy, yy) = (xx + (d.X * d.X), xy + (d.X * d.Y), yy + (d.Y * d.Y));
        }

        return Math.Atan2(2 * xy, xx - yy) / 2;
    }

    /// <summary>Signed distance of a point, mm, outside positive; the unit normal outwards at its foot; the length along to the
    /// foot, mm.</summary>
    public (double Signed, Point2 Normal, double Along) Foot(Point2 p)
    {
        int near = 0;
        double best = double.PositiveInfinity;
        for (int i = 0; i < places.Length; i++)
        {
            Point2 d = places[i] - p;
            double square = d.Dot(d);
            (near, best) = square < best ? (i, square) : (near, best);
        }

        (double Signed, Point2 Normal, double Along) found = default;
        double least = double.PositiveInfinity;
        for (int s = near - 1; s <= near; s++)
        {
            int i = (s + places.Length) % places.Length;
            Point2 way = places[(i + 1) % places.Length] - places[i];
            double share = Math.Clamp((p - places[i]).Dot(way) / way.Dot(way), 0, 1);
            Point2 off = p - (places[i] + (way * share));
            Point2 normal = -way.Left * (1 / way.Length);
            if (off.Length < least)
            {
                least = off.Length;
                found = (off.Dot(normal) < 0 ? -off.Length : off.Length, normal, along[i] + (share * way.Length));
            }
        }

        return found;
    }

    /// <summary>The place so far along the outline.</summary>
    public Point2 At(double length)
    {
        double wrapped = length - (Perimeter * Math.Floor(length / Perimeter));
        int found = Array.BinarySearch(along, wrapped);
        int i = found >= 0 ? found : ~found - 1;
        Point2 way = places[(i + 1) % places.Length] - places[i];
        return places[i] + (way * ((wrapped - along[i]) / way.Length));
    }
}
