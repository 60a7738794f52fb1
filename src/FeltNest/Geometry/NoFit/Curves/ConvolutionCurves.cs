namespace FeltNest.Geometry.NoFit.Curves;

/// <summary>The convolution of two outlines: closed curves whose winding number at a place counts the separate meetings of one part with
/// the negative of the other there.</summary>
/// <remarks>Follows L. Guibas, L. Ramshaw, J. Stolfi, <i>A kinetic framework for computational geometry</i>, FOCS 1983 (from memory): both
/// boundaries are run through together by direction; each edge of one is carried by every corner of the other whose turn passes the edge's
/// direction, backwards where the corner is reflex. Directions are compared as rounded angles, the same numbers everywhere, so the curves
/// close whatever the rounding.</remarks>
internal static class ConvolutionCurves
{
    /// <summary>Pieces of the curves of two counter-clockwise outlines; null when they would be longer than <paramref name="mostLength"/>
    /// mm in all.</summary>
    internal static List<CurvePiece>? Of(IReadOnlyList<Point2> first, IReadOnlyList<Point2> second, double mostLength)
    {
        List<CurvePiece> pieces = [];
        double length = 0;
        Directions a = new(first);
        Directions b = new(second);

        // Of two equal directions the second outline's counts as the greater, as if it were turned by a hair: each of two parallel edges is
        // then carried once.
        return Carry(a, b, equalIsInside: false, pieces, ref length, mostLength)
            && Carry(b, a, equalIsInside: true, pieces, ref length, mostLength)
            ? pieces
            : null;
    }

    // Edges of `moved` carried by the corners of `corners`.
    private static bool Carry(
        Directions moved, Directions corners, bool equalIsInside, List<CurvePiece> pieces, ref double length, double mostLength)
    {
        int n = corners.Points.Count;
        int m = moved.Points.Count;
        for (int i = 0; i < n; i++)
        {
            double before = corners.Angle[(i + n - 1) % n];
            double after = corners.Angle[i];
            bool left = corners.TurnsLeft[i];
            (double from, double to) = left ? (before, after) : (after, before);
            if (from == to)
            {
                continue;
            }

            Point2 at = corners.Points[i];

            // Second outline's edges lie in [from, to) of the first's corners, first outline's in (from, to] of the second's.
            int start = equalIsInside ? moved.FirstFrom(from) : moved.FirstAfter(from);
            int end = equalIsInside ? moved.FirstFrom(to) : moved.FirstAfter(to);
            int count = end - start + (to < from ? m : 0);
            for (int k = 0; k < count; k++)
            {
                int edge = moved.Order[(start + k) % m];
                Point2 p = moved.Points[edge] + at;
                Point2 q = moved.Points[(edge + 1) % m] + at;
                pieces.Add(left ? new CurvePiece { From = p, To = q } : new CurvePiece { From = q, To = p, Joins = true });
                length += moved.Length[edge];
            }

            if (length > mostLength)
            {
                return false;
            }
        }

        return true;
    }

    private sealed class Directions
    {
        // Turns nearer to half a turn than this, radians, are told left from right by the exact test.
        private const double NearlyBack = 1e-6;

        internal Directions(IReadOnlyList<Point2> points)
        {
            Points = points;
            int n = points.Count;
            (Angle, Length, TurnsLeft, Order) = (new double[n], new double[n], new bool[n], new int[n]);
            for (int i = 0; i < n; i++)
            {
                Point2 along = points[(i + 1) % n] - points[i];
                (Angle[i], Length[i], Order[i]) = (Math.Atan2(along.Y, along.X), along.Length, i);
            }

            Sorted = [.. Angle];
            Array.Sort(Sorted, Order);
            for (int i = 0; i < n; i++)
            {
                double turn = Angle[i] - Angle[(i + n - 1) % n];
                turn += turn < 0 ? 2 * Math.PI : 0;
                TurnsLeft[i] = Math.Abs(turn - Math.PI) < NearlyBack
                    ? Predicates.Turn(points[(i + n - 1) % n], points[i], points[(i + 1) % n]) >= 0
                    : turn < Math.PI;
            }
        }

        internal IReadOnlyList<Point2> Points { get; }

        internal double[] Angle { get; }

        internal double[] Length { get; }

        internal bool[] TurnsLeft { get; }

        // Edges by angle.
        internal int[] Order { get; }

        private double[] Sorted { get; }

        internal int FirstFrom(double angle) => Lower(angle, orEqual: true);

        internal int FirstAfter(double angle) => Lower(angle, orEqual: false);

        private int Lower(double angle, bool orEqual)
        {
            int low = 0;
            int high = Sorted.Length;
            while (low < high)
            {
                int middle = (low + high) / 2;
                (low, high) = Sorted[middle] < angle || (!orEqual && Sorted[middle] == angle) ? (middle + 1, high) : (low, middle);
            }

            return low;
        }
    }
}
