using MathNet.Numerics.Distributions;

namespace FeltNest.Numerics;

/// <summary>Counts of single chances, and counts of rare events.</summary>
internal static class CountDistribution
{
    /// <summary>How often a count of so many chances lies outside two limits of its share.</summary>
    public static double BinomialOutside(double share, double chances, double low, double high)
    {
        int n = (int)Math.Round(chances);
        return Outside(low * n, high * n, k => Binomial.CDF(share, n, k));
    }

    /// <summary>How often a count of rare events lies outside two limits of its rate.</summary>
    public static double PoissonOutside(double rate, double size, double low, double high) =>
        rate <= 0 ? 0 : Outside(low * size, high * size, k => Poisson.CDF(rate * size, k));

    // Counts are whole: those at a limit are inside.
    private static double Outside(double low, double high, Func<double, double> upTo)
    {
        const double slack = 1e-9;
        double least = Math.Ceiling(low - slack);
        double most = Math.Floor(high + slack);
        return (least > 0 ? upTo(least - 1) : 0) + Math.Max(0, 1 - upTo(most));
    }
}
