using FeltNest.Geometry;
using Google.OrTools.LinearSolver;

namespace FeltNest.Tests.Die.Proof;

/// <summary>The minimum zone by a second way: feet by looking at every side of the outline, steps by a general linear program (GLOP of
/// Google OR-Tools), the turn about the origin.</summary>
internal static class GlopZone
{
    /// <summary>Half width of the narrowest zone near where the points lie.</summary>
    public static double Half(Outline outline, IReadOnlyList<Point2> points)
    {
        Point2[] at = [.. points];
        double half = Widest(outline, at);
        double reach = 1;
        while (reach > 1e-9)
        {
            (double x, double y, double turn) = Step(outline, at, reach);
            Point2[] next = [.. at.Select(p => p.Turned(turn) + new Point2(x, y))];
            double found = Widest(outline, next);
            if (found < half - 1e-12)
            {
                (at, half) = (next, found);
            }
            else
            {
                reach /= 3;
            }
        }

        return half;
    }

    private static double Widest(Outline outline, IEnumerable<Point2> at) => at.Max(p => Math.Abs(Foot(outline, p).Signed));

    private static (double X, double Y, double Turn) Step(Outline outline, Point2[] at, double reach)
    {
        using Solver solver = Solver.CreateSolver("GLOP");
        double size = at.Max(p => p.Length);
        Variable x = solver.MakeNumVar(-reach, reach, string.Empty);
        Variable y = solver.MakeNumVar(-reach, reach, string.Empty);
        Variable turn = solver.MakeNumVar(-reach / size, reach / size, string.Empty);
        Variable half = solver.MakeNumVar(0, double.PositiveInfinity, string.Empty);
        foreach (Point2 p in at)
        {
            (double signed, Point2 n) = Foot(outline, p);
            LinearExpr moved = (n.X * x) + (n.Y * y) + (((n.Y * p.X) - (n.X * p.Y)) * turn);
            solver.Add(moved + signed <= half);
            solver.Add(moved + signed >= -1.0 * half);
        }

        solver.Minimize(half);
        return solver.Solve() == Solver.ResultStatus.OPTIMAL
            ? (x.SolutionValue(), y.SolutionValue(), turn.SolutionValue())
            : throw new InvalidOperationException("the program has a solution");
    }

    private static (double Signed, Point2 Normal) Foot(Outline outline, Point2 p)
    {
        (double Length, double Signed, Point2 Normal) best = (double.PositiveInfinity, 0, default);
        for (int i = 0; i < outline.Points.Count; i++)
        {
            Point2 a = outline.Points[i];
            Point2 way = outline.Points[(i + 1) % outline.Points.Count] - a;
            double share = Math.Clamp((p - a).Dot(way) / way.Dot(way), 0, 1);
            Point2 off = p - (a + (way * share));
            Point2 outwards = new Point2(way.Y, -way.X) * (1 / way.Length);
            if (off.Length < best.Length)
            {
                best = (off.Length, Math.Sign(off.Dot(outwards)) * off.Length, outwards);
            }
        }

        return (best.Signed, best.Normal);
    }
}
