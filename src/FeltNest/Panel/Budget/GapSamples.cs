using FeltNest.Ball.Tolerance;
using FeltNest.Numerics;

namespace FeltNest.Panel.Budget;

/// <summary>Balls drawn at random: how far each part is off, as a share of its tolerance.</summary>
/// <remarks>Latin hypercube: each part takes every one of as many equal slices of its distribution as there are balls, in an order of its
/// own (M. D. McKay, R. J. Beckman, W. J. Conover, <i>Technometrics</i> 21:239-245, 1979). The seed is fixed: the same ball file gives the
/// same budget.</remarks>
internal sealed class GapSamples
{
    /// <summary>How many balls.</summary>
    public const int Balls = 40_000;

    private const int Seed = 18;

    private readonly double[][] shares;

    /// <summary>Draws the balls.</summary>
    /// <param name="reading">How tolerances are read.</param>
    /// <param name="parts">How many parts are off.</param>
    public GapSamples(ToleranceReading reading, int parts)
    {
        Random random = new(Seed);
        shares = [.. Enumerable.Range(0, parts).Select(_ => Column(random, reading))];
    }

    /// <summary>How far a part is off, a value a ball.</summary>
    public ReadOnlySpan<double> Of(int part) => shares[part];

    /// <summary>Variance of the share by which a part is off, and that of its square.</summary>
    public static (double OfShare, double OfSquare) Variance(ToleranceReading reading) => reading switch
    {
        ToleranceReading.Uniform => (1.0 / 3, 4.0 / 45),
        ToleranceReading.TwoSigma => (1.0 / 4, 1.0 / 8),
        _ => throw new ArgumentOutOfRangeException(nameof(reading), reading, "no such reading"),
    };

    private static double[] Column(Random random, ToleranceReading reading)
    {
        double[] column = new double[Balls];
        for (int i = 0; i < Balls; i++)
        {
            double below = (i + random.NextDouble()) / Balls;
            column[i] = reading == ToleranceReading.Uniform ? (2 * below) - 1 : NormalDistribution.Quantile(below) / 2;
        }

        random.Shuffle(column);
        return column;
    }
}
