using FeltNest.Numerics;

namespace FeltNest.Die.Proof;

/// <summary>Whether readings speak against a straight line.</summary>
/// <remarks>Two tests at 5 per cent each; the one that speaks more is told. A reading against the line of the others: its residual over
/// its own spread without it follows Student's t, and the worst of n is looked at (J. Neter, W. Wasserman, M. Kutner, <i>Applied Linear
/// Regression Models</i>, from memory; bound of Bonferroni). A bend: what a square of the strikes takes from the rest, by the F test.
/// </remarks>
internal static class DriftDoubt
{
    private const double Chance = 0.05;
    private const int Fewest = 4;

    /// <summary>How well a line fits.</summary>
    public static DriftFit Of(IReadOnlyList<(double X, double Y)> points)
    {
        int apart = points.Select(p => p.X).Distinct().Count();
        if (points.Count < Fewest || apart < 3)
        {
            return DriftFit.TooFew;
        }

        double off = OneOff(points);
        double bends = Bends(points);
        if (Math.Min(off, bends) >= Chance)
        {
            return DriftFit.Line;
        }

        return off <= bends ? DriftFit.OneOff : DriftFit.Bends;
    }

    // Chance that the worst reading lies as far off the line of the others, were all on one.
    private static double OneOff(IReadOnlyList<(double X, double Y)> points)
    {
        double least = 1;
        for (int i = 0; i < points.Count; i++)
        {
            (double X, double Y)[] others = [.. points.Where((_, k) => k != i)];
            if (others.Select(p => p.X).Distinct().Count() < 2)
            {
                continue;
            }

            DriftLine line = DriftLine.Of(others);
            double away = points[i].X - line.MeanX;
            double spread = line.Scatter!.Value * Math.Sqrt(1 + (1.0 / others.Length) + (away * away / line.SquaredX));
            double residual = points[i].Y - line.Start - (line.Slope * points[i].X);
            double ratio = Math.Pow(residual / Math.Max(spread, 1e-12), 2);
            least = Math.Min(least, points.Count * FDistribution.Tail(ratio, 1, others.Length - 2));
        }

        return least;
    }

    private static double Bends(IReadOnlyList<(double X, double Y)> points)
    {
        DriftLine line = DriftLine.Of(points);
        double straight = points.Sum(p => Math.Pow(p.Y - line.Start - (line.Slope * p.X), 2));
        double size = Math.Sqrt(line.SquaredX / points.Count);
        NormalEquations equations = new(3);
        foreach ((double x, double y) in points)
        {
            double u = (x - line.MeanX) / size;
            equations.Add([1, u, u * u], y);
        }

        if (equations.Solve() is not { } c)
        {
            return 1;
        }

        double rest = points.Sum(p => (p.X - line.MeanX) / size is var u ? Math.Pow(p.Y - c[0] - (c[1] * u) - (c[2] * u * u), 2) : 0);
        int freedom = points.Count - 3;
        double ratio = Math.Max(0, straight - rest) / Math.Max(rest / freedom, 1e-18);
        return FDistribution.Tail(ratio, 1, freedom);
    }
}
