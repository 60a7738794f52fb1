using FeltNest.Ball;
using FeltNest.Numerics;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Felt;
using FeltNest.Seam;

namespace FeltNest.Panel.Elastic;

/// <summary>The elastic panel of a seam by following the panel from a two-harmonic seam of the same waist: for seams so far from it that a
/// panel of low degree, where a solve usually begins, folds or draws its tips to a spike.</summary>
/// <remarks>Continuation with a secant predictor, as in E. L. Allgower and K. Georg, <i>Numerical Continuation Methods</i>, 1990, chapter
/// 6; the way is the blend of the two seams.</remarks>
internal static class SeamFollowing
{
    // Steps of the way, and the least part of it tried before the panel is given up.
    private const double FirstStep = 0.125;
    private const double LeastStep = 1.0 / 64;

    // Degree at which the way is gone: high enough for the tips, and a third of the full degree's work.
    private const int Degree = 25;

    /// <summary>The panel without an edge limit.</summary>
    /// <param name="law">Stiffness of the felt in the panel's axes.</param>
    /// <param name="edge">Edge rule.</param>
    /// <param name="degree">Polynomial degree of the result, odd.</param>
    /// <param name="domain">The piece of sphere.</param>
    /// <exception cref="NoAnswerException">The panel was lost on the way.</exception>
    public static ElasticPanel Panel(FeltLaw law, EdgeRule edge, int degree, SeamDomain domain)
    {
        SeamCurve from = TwoHarmonicSeam.ForWaist(
            Math.Clamp(domain.Seam.WaistAngle, TwoHarmonicSeam.LeastWaistAngle, TwoHarmonicSeam.GreatestWaistAngle));
        SeamDomain first = new(from);
        ElasticPanel start = new ElasticFlattening(law, edge, null, Degree).Panel(first);
        FlatSpace space = FlatSpace.Of(Degree, domain.IsMirrorSymmetric && law.IsMirrorSymmetric);
        ElasticTables tables = new(space);
        double[] here = start.Map.Raised(space).Coefficients.ToArray();
        double[] before = here;
        double gone = 0;
        double last = FirstStep;
        double step = FirstStep;
        while (gone < 1)
        {
            double next = Math.Min(1, gone + step);
            double[] guess = [.. here];
            DenseRows.Add(guess, (next - gone) / last, here);
            DenseRows.Add(guess, -(next - gone) / last, before);
            SeamDomain there = next == 1 ? domain : new SeamDomain(new BlendedSeam(from, domain.Seam, next));
            if (Solved(new ElasticSolver(there, tables, law, edge, null), guess) is { } found)
            {
                (before, here, last, gone) = (here, found, next - gone, next);
                continue;
            }

            step /= 2;
            if (step < LeastStep)
            {
                throw new NoAnswerException("the flattening found no equilibrium for this seam and felt");
            }
        }

        ElasticPanel end = new(new FlatMap(domain, space, here), start.Solve, [], 0);
        return new ElasticFlattening(law, edge, null, degree).Near(domain, end);
    }

    private static double[]? Solved(ElasticSolver solver, double[] guess)
    {
        try
        {
            return solver.Solve(guess, [], false).Result.X;
        }
        catch (NoAnswerException)
        {
            return null;
        }
    }
}
