using System.Globalization;
using FeltNest.Geometry;
using FeltNest.Panel;

namespace FeltNest.Die.Proof;

/// <summary>Lays measured points on an outline, first by least squares, then by the best zone, and judges them.</summary>
/// <remarks>Least squares: steps of Gauss and Newton on distances along the normals, feet sought anew each step (point to tangent, as
/// Y. Chen, G. Medioni, <i>Image and Vision Computing</i> 10(3), 1992, from memory), from eight turns about the centroid. It finds the pose
/// near which the zone is then made narrowest.</remarks>
internal static class PanelFitter
{
    /// <summary>Fewest points that settle turn and moves and leave something to judge.</summary>
    public const int FewestPoints = 12;

    // Turns that are tried first, and steps of each.
    private const int Starts = 8;
    private const int Steps = 60;

    // Mirrored points that fit by less than this share of the others' distance were measured from behind.
    private const double MirrorShare = 0.4;

    /// <summary>Lays points on an outline by their best zone and judges them.</summary>
    /// <exception cref="InputException">Too few points, or a size that is a slip of units.</exception>
    public static MeasuredPanel Fit(Outline outline, IReadOnlyList<Point2> points, ProfileRule rule) =>
        Laid(new OutlineFeet(outline), points, rule).Panel;

    /// <summary>The same, with the move that lays the points.</summary>
    /// <param name="feet">The outline wanted.</param>
    /// <param name="points">The points.</param>
    /// <param name="rule">By what they are judged.</param>
    /// <param name="lieNear">Whether the points lie near the outline already, so that no other turn is tried.</param>
    /// <exception cref="InputException">Too few points, or a size that is a slip of units.</exception>
    public static (MeasuredPanel Panel, RigidMove Move) Laid(
        OutlineFeet feet, IReadOnlyList<Point2> points, ProfileRule rule, bool lieNear = false)
    {
        if (points.Count < FewestPoints)
        {
            throw new InputException($"holds {points.Count} points: at least {FewestPoints}, spread all round the panel, are wanted");
        }

        RequireUnit(feet.Outline, points);
        (RigidMove squares, double sum) = lieNear ? Settled(feet, points, RigidMove.None) : Best(feet, points);
        double behind = lieNear ? double.PositiveInfinity : Best(feet, [.. points.Select(p => new Point2(-p.X, p.Y))]).Sum;
        (RigidMove pose, IReadOnlyList<ZonePoint> heldBy) =
            rule.InFrame ? (RigidMove.None, []) : ZoneFit.Settle(feet, points, squares);
        MeasuredPoint[] laid = [.. points.Select(p => Point(feet, pose.Apply(p), squares.Apply(p)))];
        MeasuredPanel panel = Judged(feet, laid, rule, pose.TurnDeg) with
        {
            HeldBy = heldBy,
            Mirrored = behind < MirrorShare * MirrorShare * sum && sum / points.Count > 0.01,
        };
        return (panel, pose);
    }

    private static MeasuredPoint Point(OutlineFeet feet, Point2 place, Point2 squares)
    {
        (double signed, _, double along) = feet.Foot(place);
        return new MeasuredPoint
        {
            Place = place,
            OffMm = signed,
            AlongMm = along,
            SquaresOffMm = feet.Foot(squares).Signed,
        };
    }

    // What the fit alone knows is filled in afterwards.
    private static MeasuredPanel Judged(OutlineFeet feet, MeasuredPoint[] laid, ProfileRule rule, double turnDeg)
    {
        HiddenBetween hidden = HiddenBetween.Of([.. laid.Select(p => (p.AlongMm, p.OffMm))], feet.Perimeter, rule.Steepness);
        double worst = laid.Max(p => Math.Abs(p.OffMm));
        double half = rule.ToleranceMm / 2;
        double guard = ConformityRule.AcceptGuard(rule.UncertaintyMm);
        double reject = ConformityRule.RejectGuard(rule.UncertaintyMm, laid.Length);
        return new MeasuredPanel
        {
            Rule = rule,
            Points = laid,
            TurnDeg = turnDeg,
            HeldBy = [],
            PerimeterMm = feet.Perimeter,
            WidestGapMm = hidden.WidestGapMm,
            WidestGapPlace = feet.At(hidden.WidestGapAt),
            HiddenMm = hidden.FarthestMm,
            Mirrored = false,
            Verdict = ConformityRule.Of(worst, hidden.FarthestMm, half, guard, reject),
            GuardMm = guard,
            RejectGuardMm = reject,
            Chance = rule.UncertaintyMm is > 0 and { } expanded
                ? ConformityRule.Chance(worst, expanded / ConformityRule.Coverage, -half, half)
                : null,
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

    // The turns are tried with at most so many points; the best of them is settled with all.
    private static (RigidMove Move, double Sum) Best(OutlineFeet feet, IReadOnlyList<Point2> points)
    {
        const int enough = 400;
        int stride = 1 + (points.Count / enough);
        Point2[] few = [.. points.Where((_, i) => i % stride == 0)];
        Point2 centre = points.Aggregate(default(Point2), (sum, p) => sum + p) * (1.0 / points.Count);
        double lean = feet.Axis - OutlineFeet.AxisOf(points, centre);
        (RigidMove Move, double Sum) best = Enumerable.Range(0, Starts).Select(k =>
        {
            double turn = lean + (k * 2 * Math.PI / Starts);
            return Settled(feet, few, new RigidMove(turn, feet.Centre - centre.Turned(turn)));
        }).MinBy(p => p.Sum);
        return stride == 1 ? best : Settled(feet, points, best.Move);
    }

    private static (RigidMove Move, double Sum) Settled(OutlineFeet feet, IReadOnlyList<Point2> points, RigidMove pose)
    {
        double before = double.PositiveInfinity;
        for (int step = 0; step < Steps; step++)
        {
            (double[,] m, double sum) = Normal(feet, points, pose);
            if (Math.Abs(before - sum) <= 1e-14 * sum || Solve(m) is not { } way)
            {
                return (pose, sum);
            }

            pose = new RigidMove(pose.Turn + way[2], pose.Move + new Point2(way[0], way[1]));
            before = sum;
        }

        return (pose, before);
    }

    // The equations of one step: two moves and the turn about the frame's own origin as it lies now.
    private static (double[,] Equations, double Sum) Normal(OutlineFeet feet, IReadOnlyList<Point2> points, RigidMove pose)
    {
        double[,] m = new double[3, 4];
        double sum = 0;
        foreach (Point2 p in points)
        {
            Point2 at = pose.Apply(p);
            (double signed, Point2 normal, _) = feet.Foot(at);
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

        return (m, sum);
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
}
