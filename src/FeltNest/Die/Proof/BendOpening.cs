using FeltNest.Geometry;
using FeltNest.Numerics;

namespace FeltNest.Die.Proof;

/// <summary>How far the bends of a rule sprang open, from the points of its edge.</summary>
/// <remarks>Own derivation. A run that turns one way and springs open keeps its length, and each of its elements loses the same share s of
/// its turn. Walked from its first end, the direction at a place is then off by s times the turn so far, which moves what follows to the
/// side. To this comes any move and turn of the run as a whole. So the distances along the run are a sum of four known shapes, and s is
/// one of the factors of their least squares. Runs that turn by less than an eighth of a circle tell too little.</remarks>
internal static class BendOpening
{
    private const double LeastTurn = Math.PI / 4;
    private const int FewestPoints = 8;

    /// <summary>The bends of an edge, each with the share it opened and its standard error; bends with too few points are left
    /// out.</summary>
    /// <param name="outline">The edge wanted, counter-clockwise.</param>
    /// <param name="points">Length along the edge and distance off it of each measured point.</param>
    public static IReadOnlyList<OpenedBend> Of(Outline outline, IReadOnlyList<(double Along, double Off)> points)
    {
        List<OpenedBend> bends = [];
        foreach (Run run in Runs(outline))
        {
            if (run.Opened(points) is var (share, error))
            {
                bends.Add(new OpenedBend
                {
                    Number = bends.Count + 1,
                    Place = run.Middle,
                    WantedDeg = double.RadiansToDegrees(run.Turn),
                    OpenedShare = share,
                    ErrorShare = error,
                });
            }
        }

        return bends;
    }

    // Runs of corners that turn the same way; a ring that turns one way all round has none, as it cannot open.
    private static IEnumerable<Run> Runs(Outline outline)
    {
        IReadOnlyList<Point2> p = outline.Points;
        int count = p.Count;
        double[] turn = [.. Enumerable.Range(0, count).Select(i => Turn(p[(i + count - 1) % count], p[i], p[(i + 1) % count]))];
        int first = Enumerable.Range(0, count).FirstOrDefault(i => turn[i] * turn[(i + count - 1) % count] < 0, -1);
        if (first < 0)
        {
            yield break;
        }

        double along = Enumerable.Range(0, first).Sum(i => (p[i + 1] - p[i]).Length);
        for (int done = 0; done < count;)
        {
            int start = (first + done) % count;
            int length = 1;
            while (done + length < count && turn[(start + length) % count] * turn[start] > 0)
            {
                length++;
            }

            Point2[] places = [.. Enumerable.Range(0, length + 1).Select(i => p[(start + i) % count])];
            double[] turns = [.. Enumerable.Range(0, length).Select(i => turn[(start + i) % count])];
            Run run = new(places, turns, along, outline.Perimeter);
            if (Math.Abs(run.Turn) >= LeastTurn)
            {
                yield return run;
            }

            along += Enumerable.Range(0, length).Sum(i => (places[i + 1] - places[i]).Length);
            done += length;
        }
    }

    private static double Turn(Point2 before, Point2 at, Point2 after) =>
        Math.Atan2((at - before).Cross(after - at), (at - before).Dot(after - at));

    private sealed class Run(Point2[] places, double[] turns, double start, double perimeter)
    {
        public double Turn => turns.Sum();

        public Point2 Middle => places[places.Length / 2];

        // The share lost and its standard error, or null with too few points.
        public (double Share, double Error)? Opened(IReadOnlyList<(double Along, double Off)> points)
        {
            List<(double[] Shapes, double Off)> rows = [.. Rows(points)];
            if (rows.Count < FewestPoints)
            {
                return null;
            }

            NormalEquations equations = new(4);
            foreach ((double[] shapes, double off) in rows)
            {
                equations.Add(shapes, off);
            }

            if (equations.Solve() is not { } solved || equations.Inverse() is not { } inverse)
            {
                return null;
            }

            double rest = rows.Sum(row => Math.Pow(row.Off - row.Shapes.Zip(solved, (a, b) => a * b).Sum(), 2));
            return (solved[3], Math.Sqrt(rest / (rows.Count - 4) * inverse[3, 3]));
        }

        // Along the run: what a unit of move, of turn (about the first end) and of opening does to the distance.
        private IEnumerable<(double[] Shapes, double Off)> Rows(IReadOnlyList<(double Along, double Off)> points)
        {
            double[] far = new double[places.Length];
            Point2[] sideways = new Point2[places.Length];
            double turned = 0;
            for (int i = 1; i < places.Length; i++)
            {
                Point2 side = places[i] - places[i - 1];
                turned += turns[i - 1];
                far[i] = far[i - 1] + side.Length;
                sideways[i] = sideways[i - 1] - (side.Left * turned);
            }

            foreach ((double along, double off) in points)
            {
                double here = along - start;
                here -= perimeter * Math.Floor(here / perimeter);
                if (here > far[^1])
                {
                    continue;
                }

                int i = Math.Clamp(Array.FindLastIndex(far, f => f <= here), 0, places.Length - 2);
                double share = (here - far[i]) / (far[i + 1] - far[i]);
                Point2 side = places[i + 1] - places[i];
                Point2 outwards = -side.Left * (1 / side.Length);
                Point2 at = places[i] + (side * share);
                Point2 opened = sideways[i] + ((sideways[i + 1] - sideways[i]) * share);
                yield return ([outwards.X, outwards.Y, outwards.Dot((at - places[0]).Left), outwards.Dot(opened)], off);
            }
        }
    }
}
