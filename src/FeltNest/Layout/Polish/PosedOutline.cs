using FeltNest.Geometry;

namespace FeltNest.Layout.Polish;

/// <summary>A part at one angle, its edges sorted into level slices, ready for distance work.</summary>
internal sealed class PosedOutline
{
    // Long edges count as several, none longer than this share of the part, so that two flat sides laid into each other are seen by the
    // corners between.
    private const double LongestEdge = 0.03;

    private readonly int[][] slices;
    private readonly double sliceHeight;

    internal PosedOutline(Outline part, double angle)
    {
        Point2[] turned = Divided(part.Turned(angle));
        int n = turned.Length;
        (X, Y, AlongX, AlongY, BeforeX, BeforeY, Length) = (
            new double[n], new double[n], new double[n], new double[n], new double[n], new double[n], new double[n]);
        (IsOutwardCorner, FirstSlice) = (new bool[n], new int[n]);
        (EdgeMinX, EdgeMaxX) = (new double[n], new double[n]);
        for (int i = 0; i < n; i++)
        {
            Point2 a = turned[i];
            Point2 b = turned[(i + 1) % n];
            Length[i] = (b - a).Length;
            (EdgeMinX[i], EdgeMaxX[i]) = (Math.Min(a.X, b.X), Math.Max(a.X, b.X));
            (X[i], Y[i], AlongX[i], AlongY[i]) = (a.X, a.Y, (b.X - a.X) / Length[i], (b.Y - a.Y) / Length[i]);
        }

        (MinX, MaxX, MinY, MaxY) = (X.Min(), X.Max(), Y.Min(), Y.Max());
        int count = Math.Clamp(n / 4, 1, 256);
        sliceHeight = (MaxY - MinY) / count;
        int[] last = new int[n];
        for (int i = 0; i < n; i++)
        {
            int before = (i + n - 1) % n;
            int next = (i + 1) % n;
            (BeforeX[i], BeforeY[i]) = (AlongX[before], AlongY[before]);
            IsOutwardCorner[i] = (AlongX[before] * AlongY[i]) - (AlongY[before] * AlongX[i]) > 0;
            (FirstSlice[i], last[i]) = Slices(Math.Min(Y[i], Y[next]), Math.Max(Y[i], Y[next]));
        }

        slices = Sorted(FirstSlice, last, count);
    }

    // The edges that pass each slice, in rising order.
    private static int[][] Sorted(int[] first, int[] last, int count)
    {
        int[] passing = new int[count];
        for (int i = 0; i < first.Length; i++)
        {
            for (int slice = first[i]; slice <= last[i]; slice++)
            {
                passing[slice]++;
            }
        }

        int[][] slices = [.. passing.Select(edges => new int[edges])];
        for (int i = first.Length - 1; i >= 0; i--)
        {
            for (int slice = first[i]; slice <= last[i]; slice++)
            {
                slices[slice][--passing[slice]] = i;
            }
        }

        return slices;
    }

    /// <summary>Corners, mm from the part's own origin.</summary>
    internal double[] X { get; }

    internal double[] Y { get; }

    /// <summary>Unit vector along edge i, which runs from corner i to the next.</summary>
    internal double[] AlongX { get; }

    internal double[] AlongY { get; }

    /// <summary>Unit vector along the edge that ends at corner i.</summary>
    internal double[] BeforeX { get; }

    internal double[] BeforeY { get; }

    /// <summary>Length of edge i, mm.</summary>
    internal double[] Length { get; }

    /// <summary>Where edge i begins along x, mm.</summary>
    internal double[] EdgeMinX { get; }

    /// <summary>Where edge i ends along x, mm.</summary>
    internal double[] EdgeMaxX { get; }

    /// <summary>True where the corner bulges outwards, so that a point can have it as its nearest place.</summary>
    internal bool[] IsOutwardCorner { get; }

    /// <summary>Lowest slice that edge i passes.</summary>
    internal int[] FirstSlice { get; }

    internal double MinX { get; }

    internal double MaxX { get; }

    internal double MinY { get; }

    internal double MaxY { get; }

    /// <summary>Slices that a range of heights passes, first and last.</summary>
    internal (int First, int Last) Slices(double low, double high)
    {
        // One slice more on both sides than the division says, so that rounding never loses an edge.
        double first = (low - MinY) / sliceHeight;
        double last = (high - MinY) / sliceHeight;
        double most = Math.Clamp(X.Length / 4, 1, 256) - 1;
        return ((int)Math.Clamp(first - 1, 0, most), (int)Math.Clamp(last + 1, 0, most));
    }

    /// <summary>Edges that pass a slice.</summary>
    internal int[] EdgesIn(int slice) => slices[slice];

    private static Point2[] Divided(Outline outline)
    {
        double longest = LongestEdge * (outline.MaxX - outline.MinX + outline.MaxY - outline.MinY);
        List<Point2> corners = [];
        for (int i = 0; i < outline.Points.Count; i++)
        {
            Point2 a = outline.Points[i];
            Point2 along = outline.Points[(i + 1) % outline.Points.Count] - a;
            int pieces = (int)Math.Ceiling(along.Length / longest);
            corners.AddRange(Enumerable.Range(0, pieces).Select(k => a + (along * ((double)k / pieces))));
        }

        return [.. corners];
    }
}
