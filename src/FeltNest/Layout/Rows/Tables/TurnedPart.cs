using System.Numerics;
using System.Runtime.CompilerServices;
using FeltNest.Geometry;

namespace FeltNest.Layout.Rows.Tables;

/// <summary>A part, or a pair of parts, at one tilt, its upper and lower boundary sampled on a grid along the roll. Sampling serves to find
/// good starts; what is kept is polished exactly.</summary>
internal sealed class TurnedPart
{
    private TurnedPart(
        double tilt, double grid, double area, (double MinX, double MaxX, double MinY, double MaxY) box, int first, double[] top,
        double[] bottom, int firstGrown, double[] topGrown)
    {
        Tilt = tilt;
        Grid = grid;
        Area = area;
        (MinX, MaxX, MinY, MaxY) = box;
        First = first;
        Top = top;
        Bottom = bottom;
        FirstGrown = firstGrown;
        TopGrown = topGrown;
    }

    /// <summary>Angle from +x to the part's +u, radians.</summary>
    internal double Tilt { get; }

    /// <summary>Distance between samples, mm; sample i stands at x = (i + 1/2) Grid, so that corners on whole multiples fall between
    /// samples and flush sides can meet.</summary>
    internal double Grid { get; }

    /// <summary>Area of the part or of both, mm2.</summary>
    internal double Area { get; }

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

    /// <summary>Two parts as one: the second, turned by <paramref name="turn"/>, stands at <paramref name="offset"/> from the first, before
    /// both are tilted.</summary>
    internal static TurnedPart Pair(Outline part, Point2 offset, double turn, double tilt, double grid, double gap) =>
        Sample([part.Turned(tilt), part.Turned(tilt + turn).Moved(offset.Turned(tilt))], tilt, grid, gap);

    /// <summary>The same part mirrored along the roll: for a part that is its own mirror in its u axis, that part at half a turn less the
    /// tilt.</summary>
    internal TurnedPart Mirrored() => new(
        Math.PI - Tilt, Grid, Area, (-MaxX, -MinX, MinY, MaxY), -First - Top.Length, Reversed(Top), Reversed(Bottom),
        -FirstGrown - TopGrown.Length, Reversed(TopGrown));

    private static double[] Reversed(double[] samples)
    {
        double[] reversed = [.. samples];
        Array.Reverse(reversed);
        return reversed;
    }

    private static TurnedPart Sample(IReadOnlyList<Outline> turned, double tilt, double grid, double gap)
    {
        double low = turned.Min(o => o.MinX);
        double high = turned.Max(o => o.MaxX);
        int first = (int)Math.Ceiling((low / grid) - 0.5);
        int last = Math.Max(first, (int)Math.Floor((high / grid) - 0.5));
        double[] top = new double[last - first + 1];
        double[] bottom = new double[last - first + 1];
        Array.Fill(top, double.NegativeInfinity);
        Array.Fill(bottom, double.PositiveInfinity);
        foreach (Outline outline in turned)
        {
            Mark([.. outline.Points], grid, first, top, bottom);
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
            TakeGreater(grown.AsSpan(d + reach, top.Length), top, Math.Sqrt(Math.Max(0, (gap * gap) - (d * grid * d * grid))));
        }

        return new TurnedPart(
            tilt, grid, turned.Sum(o => o.Area), (low, high, turned.Min(o => o.MinY), turned.Max(o => o.MaxY)), first, top, bottom,
            first - reach, grown);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Mark(ReadOnlySpan<Point2> points, double grid, int first, double[] top, double[] bottom)
    {
        for (int i = 0; i < points.Length; i++)
        {
            Point2 a = points[i];
            Point2 b = points[i + 1 == points.Length ? 0 : i + 1];
            (Point2 left, Point2 right) = a.X <= b.X ? (a, b) : (b, a);
            for (int x = Math.Max(0, (int)Math.Ceiling((left.X / grid) - 0.5) - first); x < top.Length
                && (first + x + 0.5) * grid <= right.X
                && right.X > left.X; x++)
            {
                double share = (((first + x + 0.5) * grid) - left.X) / (right.X - left.X);
                double y = left.Y + (share * (right.Y - left.Y));
                top[x] = Math.Max(top[x], y);
                bottom[x] = Math.Min(bottom[x], y);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void TakeGreater(Span<double> grown, ReadOnlySpan<double> top, double rise)
    {
        int i = 0;
        int width = Vector<double>.Count;
        Vector<double> rises = new(rise);
        for (; i <= top.Length - width; i += width)
        {
            Vector.Max(new Vector<double>(grown[i..]), new Vector<double>(top[i..]) + rises).CopyTo(grown[i..]);
        }

        for (; i < top.Length; i++)
        {
            grown[i] = Math.Max(grown[i], top[i] + rise);
        }
    }
}
