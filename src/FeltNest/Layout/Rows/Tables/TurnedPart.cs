using FeltNest.Geometry;

namespace FeltNest.Layout.Rows.Tables;

/// <summary>A part, or a pair of parts, at one tilt, its upper and lower boundary sampled on a grid along the roll. Sampling serves to find good starts; what is kept is polished exactly.</summary>
internal sealed class TurnedPart
{
    private TurnedPart(double tilt, double grid, IReadOnlyList<Outline> turned, int first, double[] top, double[] bottom, int firstGrown, double[] topGrown)
    {
        Tilt = tilt;
        Grid = grid;
        MinX = turned.Min(o => o.MinX);
        MaxX = turned.Max(o => o.MaxX);
        MinY = turned.Min(o => o.MinY);
        MaxY = turned.Max(o => o.MaxY);
        First = first;
        Top = top;
        Bottom = bottom;
        FirstGrown = firstGrown;
        TopGrown = topGrown;
    }

    /// <summary>Angle from +x to the part's +u, radians.</summary>
    internal double Tilt { get; }

    /// <summary>Distance between samples, mm; sample i stands at x = (i + 1/2) Grid, so that corners on whole multiples fall between samples and flush sides can meet.</summary>
    internal double Grid { get; }

    internal double MinX { get; }

    internal double MaxX { get; }

    internal double MinY { get; }

    internal double MaxY { get; }

    internal double Height => MaxY - MinY;

    /// <summary>Grid index of the first sample of <see cref="Top"/> and <see cref="Bottom"/>.</summary>
    internal int First { get; }

    internal double[] Top { get; }

    internal double[] Bottom { get; }

    /// <summary>Grid index of the first sample of <see cref="TopGrown"/>.</summary>
    internal int FirstGrown { get; }

    /// <summary>Upper boundary of the part grown by the gap.</summary>
    internal double[] TopGrown { get; }

    /// <summary>Turns and samples a part.</summary>
    internal static TurnedPart Make(Outline part, double tilt, double grid, double gap) => Sample([part.Turned(tilt)], tilt, grid, gap);

    /// <summary>Two parts as one: the second, turned by <paramref name="turn"/>, stands at <paramref name="offset"/> from the first, before both are tilted.</summary>
    internal static TurnedPart Pair(Outline part, Point2 offset, double turn, double tilt, double grid, double gap) =>
        Sample([part.Turned(tilt), part.Turned(tilt + turn).Moved(offset.Turned(tilt))], tilt, grid, gap);

    private static TurnedPart Sample(IReadOnlyList<Outline> turned, double tilt, double grid, double gap)
    {
        double low = turned.Min(o => o.MinX), high = turned.Max(o => o.MaxX);
        int first = (int)Math.Ceiling((low / grid) - 0.5), last = Math.Max(first, (int)Math.Floor((high / grid) - 0.5));
        double[] top = new double[last - first + 1], bottom = new double[last - first + 1];
        Array.Fill(top, double.NegativeInfinity);
        Array.Fill(bottom, double.PositiveInfinity);
        foreach (IReadOnlyList<Point2> points in turned.Select(o => o.Points))
        {
            for (int i = 0; i < points.Count; i++)
            {
                Point2 a = points[i], b = points[(i + 1) % points.Count];
                (Point2 left, Point2 right) = a.X <= b.X ? (a, b) : (b, a);
                for (int x = Math.Max(first, (int)Math.Ceiling((left.X / grid) - 0.5)); x <= last && (x + 0.5) * grid <= right.X && right.X > left.X; x++)
                {
                    double share = (((x + 0.5) * grid) - left.X) / (right.X - left.X);
                    Mark(top, bottom, x - first, left.Y + (share * (right.Y - left.Y)));
                }
            }
        }

        if (top.Any(double.IsInfinity))
        {
            // Narrower than a sample: its whole height counts there.
            Array.Fill(top, turned.Max(o => o.MaxY));
            Array.Fill(bottom, turned.Min(o => o.MinY));
        }

        int reach = (int)Math.Floor(gap / grid);
        double[] grown = new double[top.Length + (2 * reach)];
        Array.Fill(grown, double.NegativeInfinity);
        for (int d = -reach; d <= reach; d++)
        {
            double rise = Math.Sqrt(Math.Max(0, (gap * gap) - (d * grid * d * grid)));
            for (int i = 0; i < top.Length; i++)
            {
                grown[i + d + reach] = Math.Max(grown[i + d + reach], top[i] + rise);
            }
        }

        return new TurnedPart(tilt, grid, turned, first, top, bottom, first - reach, grown);
    }

    private static void Mark(double[] top, double[] bottom, int at, double y)
    {
        top[at] = Math.Max(top[at], y);
        bottom[at] = Math.Min(bottom[at], y);
    }
}
