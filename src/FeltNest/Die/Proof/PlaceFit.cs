using FeltNest.Geometry;
using FeltNest.Numerics;

namespace FeltNest.Die.Proof;

/// <summary>Lays places on places so that the farthest is least: no datum is drawn, so the whole die may turn and move.</summary>
/// <remarks>Least squares first, in closed form (the turn of two sets of points about their middles). Then small steps of a linear
/// program: a distance is the greatest of its projections on all directions, of which a fan and the present one are taken.</remarks>
internal static class PlaceFit
{
    private const int Fan = 24;
    private const int MostSteps = 60;
    private const double Shortest = 1e-8;

    /// <summary>The move of the first places onto the second.</summary>
    public static RigidMove Settle(IReadOnlyList<(Point2 From, Point2 To)> pairs)
    {
        RigidMove pose = Squares(pairs);
        double worst = Worst(pairs, pose);
        double reach = Math.Max(worst, 1e-6);
        for (int step = 0; step < MostSteps && reach > Shortest; step++)
        {
            if (Step(pairs, pose, reach) is not { } next)
            {
                break;
            }

            double found = Worst(pairs, next);
            if (found >= worst - 1e-12)
            {
                reach /= 4;
                continue;
            }

            (pose, worst) = (next, found);
        }

        return pose;
    }

    /// <summary>The move with the least sum of squares.</summary>
    public static RigidMove Squares(IReadOnlyList<(Point2 From, Point2 To)> pairs)
    {
        Point2 from = pairs.Aggregate(default(Point2), (sum, p) => sum + p.From) * (1.0 / pairs.Count);
        Point2 to = pairs.Aggregate(default(Point2), (sum, p) => sum + p.To) * (1.0 / pairs.Count);
        double along = pairs.Sum(p => (p.From - from).Dot(p.To - to));
        double across = pairs.Sum(p => (p.From - from).Cross(p.To - to));
        double turn = along == 0 && across == 0 ? 0 : Math.Atan2(across, along);
        return new RigidMove(turn, to - from.Turned(turn));
    }

    private static double Worst(IReadOnlyList<(Point2 From, Point2 To)> pairs, RigidMove pose) =>
        pairs.Max(p => (pose.Apply(p.From) - p.To).Length);

    private static RigidMove? Step(IReadOnlyList<(Point2 From, Point2 To)> pairs, RigidMove pose, double reach)
    {
        Point2[] at = [.. pairs.Select(p => pose.Apply(p.From))];
        Point2 pivot = at.Aggregate(default(Point2), (sum, p) => sum + p) * (1.0 / at.Length);
        double size = Math.Max(1, at.Max(p => (p - pivot).Length));
        List<(double[] Factors, double Bound)> limits = [];
        for (int i = 0; i < at.Length; i++)
        {
            Point2 off = at[i] - pairs[i].To;
            Point2 arm = (at[i] - pivot).Left * (1 / size);
            double own = Math.Atan2(off.Y, off.X);
            foreach (int k in Enumerable.Range(0, Fan))
            {
                Point2 way = new Point2(1, 0).Turned(own + (k * Math.Tau / Fan));
                limits.Add(([-way.X, -way.Y, -way.Dot(arm)], off.Dot(way)));
            }
        }

        double[] most = [reach, reach, reach];
        double[]? change = VertexProgram.Solve([1e-9, 1e-9, 1e-9], limits, [.. most.Select(m => -m)], most, 1);
        return change is null ? null : pose.Then(change[2] / size, pivot, new Point2(change[0], change[1]));
    }
}
