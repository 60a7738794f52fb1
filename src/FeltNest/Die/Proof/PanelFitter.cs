using System.Globalization;
using FeltNest.Geometry;
using FeltNest.Panel;

namespace FeltNest.Die.Proof;

/// <summary>Lays measured points on an outline by the rigid move that makes the sum of squared distances least.</summary>
/// <remarks>Steps of Gauss and Newton on distances along the normals, feet sought anew each step (point to tangent, as Y. Chen, G. Medioni,
/// <i>Image and Vision Computing</i> 10(3), 1992, from memory), from eight turns about the centroid.</remarks>
internal static class PanelFitter
{
    /// <summary>Fewest points that settle turn and moves and leave something to judge.</summary>
    public const int FewestPoints = 12;

    // Outline points are this near to each other, mm, for finding feet; feet are then exact on the polygon.
    private const double Step = 0.5;

    // Turns that are tried first, and steps of each.
    private const int Starts = 8;
    private const int Steps = 60;

    // Mirrored points that fit by less than this share of the others' distance were measured from behind.
    private const double MirrorShare = 0.4;

    /// <summary>Fits points to an outline.</summary>
    /// <exception cref="InputException">Too few points, or a size that is a slip of units.</exception>
    public static MeasuredPanel Fit(Outline outline, IReadOnlyList<Point2> points, double toleranceMm)
    {
        if (points.Count < FewestPoints)
        {
            throw new InputException($"holds {points.Count} points: at least {FewestPoints}, spread all round the panel, are wanted");
        }

        RequireUnit(outline, points);
        Target target = new(outline);
        Pose best = Best(target, points);
        Pose behind = Best(target, [.. points.Select(p => new Point2(-p.X, p.Y))]);
        Point2[] placed = [.. points.Select(best.Apply)];
        (Point2 Place, double OffMm)[] off = [.. placed.Select(p => (p, target.Foot(p).Signed))];
        double[] along = [.. placed.Select(p => target.Foot(p).Along).Order()];
        double widest = along.Zip(along.Skip(1).Append(along[0] + outline.Perimeter)).Max(pair => pair.Second - pair.First);
        return new MeasuredPanel
        {
            ToleranceMm = toleranceMm,
            Points = off,
            TurnDeg = double.RadiansToDegrees(Math.IEEERemainder(best.Turn, 2 * Math.PI)),
            RmsMm = Math.Sqrt(off.Average(o => o.OffMm * o.OffMm)),
            MeanMm = off.Average(o => o.OffMm),
            WidestGapMm = widest,
            Mirrored = behind.Sum < MirrorShare * MirrorShare * best.Sum && best.Sum / points.Count > 0.01,
        };
    }

    // Sizes are compared by the longest distance of any two points, which hardly depends on where points were taken.
    private static void RequireUnit(Outline outline, IReadOnlyList<Point2> points)
    {
        double ratio = Longest(outline.Points) / Math.Max(Longest(points), 1e-9);
        if (UnitSlip.Of(ratio) is { } words)
        {
            throw new InputException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"the points reach over {Longest(points):0.###} where the panel is {Longest(outline.Points):0.###} mm long, "
                        + $"{words}"));
        }

        if (ratio is < 0.6 or > 1.7)
        {
            throw new InputException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"the points reach over {Longest(points):0.###} mm where the panel is {Longest(outline.Points):0.###} mm long: is "
                        + $"it this panel, measured all round?"));
        }
    }

    private static double Longest(IReadOnlyList<Point2> points)
    {
        int stride = 1 + (points.Count / 400);
        Point2[] few = [.. points.Where((_, i) => i % stride == 0)];
        return few.Max(p => few.Max(q => (p - q).Length));
    }

    private static Pose Best(Target target, IReadOnlyList<Point2> points)
    {
        Point2 centre = points.Aggregate(default(Point2), (sum, p) => sum + p) * (1.0 / points.Count);
        double lean = target.Axis - Axis(points, centre);
        return Enumerable.Range(0, Starts).Select(k =>
        {
            double turn = lean + (k * 2 * Math.PI / Starts);
            return Settled(target, points, new Pose(turn, target.Centre - centre.Turned(turn), double.PositiveInfinity));
        }).MinBy(p => p.Sum)!;
    }

    // Direction of the long axis of points about a centre.
    private static double Axis(IEnumerable<Point2> points, Point2 centre)
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

    private static Pose Settled(Target target, IReadOnlyList<Point2> points, Pose pose)
    {
        for (int step = 0; step < Steps; step++)
        {
            double[,] m = new double[3, 4];
            double sum = 0;
            foreach (Point2 p in points)
            {
                Point2 at = pose.Apply(p);
                (double signed, Point2 normal, _) = target.Foot(at);
                double[] row = [normal.X, normal.Y, normal.Dot((at - pose.Move).Left)];
                sum += signed * signed;
                for (int i = 0; i < 3; i++)
                {
                    for (int k = 0; k < 3; k++)
                    {
                        m[i, k] += row[i] * row[k];
                    }

                    m[i, 3] -= row[i] * signed;
                }
            }

            if (Math.Abs(pose.Sum - sum) <= 1e-14 * sum || Solve(m) is not { } way)
            {
                return pose with { Sum = sum };
            }

            pose = new Pose(pose.Turn + way[2], pose.Move + new Point2(way[0], way[1]), sum);
        }

        return pose;
    }

    // Gauss's elimination of three equations; null where they leave a move open, as turns of a disc.
    private static double[]? Solve(double[,] m)
    {
        for (int i = 0; i < 3; i++)
        {
            int pivot = Enumerable.Range(i, 3 - i).MaxBy(r => Math.Abs(m[r, i]));
            if (Math.Abs(m[pivot, i]) < 1e-12)
            {
                return null;
            }

            for (int k = 0; k < 4; k++)
            {
                (m[i, k], m[pivot, k]) = (m[pivot, k], m[i, k]);
            }

            for (int r = 0; r < 3; r++)
            {
                double share = r == i ? 0 : m[r, i] / m[i, i];
                for (int k = i; k < 4; k++)
                {
                    m[r, k] -= share * m[i, k];
                }
            }
        }

        return [m[0, 3] / m[0, 0], m[1, 3] / m[1, 1], m[2, 3] / m[2, 2]];
    }

    private sealed record Pose(double Turn, Point2 Move, double Sum)
    {
        public Point2 Apply(Point2 p) => p.Turned(Turn) + Move;
    }

    // The outline with quick feet.
    private sealed class Target
    {
        private readonly Point2[] places;
        private readonly double[] along;

        public Target(Outline outline)
        {
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

            Centre = places.Aggregate(default(Point2), (sum, p) => sum + p) * (1.0 / places.Length);
            Axis = PanelFitter.Axis(places, Centre);
        }

        public Point2 Centre { get; }

        public double Axis { get; }

        // Signed distance (outside positive), unit outward normal at the foot, and length along to it.
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
    }
}
