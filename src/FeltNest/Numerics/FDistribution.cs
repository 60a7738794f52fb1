namespace FeltNest.Numerics;

/// <summary>The F distribution of the ratio of two mean squares, and Student's t as its case of one freedom above.</summary>
/// <remarks>M. Abramowitz and I. Stegun, <i>Handbook of Mathematical Functions</i>, 1964: 26.6.2 gives the tail by the incomplete beta
/// function, 26.5.8 its continued fraction, 26.5.2 its reflection.</remarks>
internal static class FDistribution
{
    // Terms until the fraction stands still in the last digits, for the freedoms of any list of readings.
    private const int MostTerms = 2000;
    private const double Still = 1e-15;

    /// <summary>Chance that chance alone gives a ratio of at least so much.</summary>
    /// <param name="ratio">Ratio of mean squares, 0 or more.</param>
    /// <param name="above">Freedoms of the upper one, 1 or more.</param>
    /// <param name="below">Freedoms of the lower one, 1 or more.</param>
    public static double Tail(double ratio, int above, int below)
    {
        if (double.IsPositiveInfinity(ratio))
        {
            return 0;
        }

        double share = below / (below + (above * ratio));
        double other = above * ratio / (below + (above * ratio));

        // The fraction runs well on one side of the middle only.
        return share < (below + 2.0) / (above + below + 4)
            ? Beta(share, other, below, above)
            : 1 - Beta(other, share, above, below);
    }

    /// <summary>Factor of Student's t that leaves a chance outside on both sides together.</summary>
    /// <param name="chance">The chance, above 0 and below 1.</param>
    /// <param name="freedom">Freedoms of the spread, 1 or more.</param>
    public static double Student(double chance, int freedom)
    {
        // Halvings until the factor is known to all its digits.
        const int halvings = 200;
        double low = 0;
        double high = 1;
        while (Tail(high * high, 1, freedom) > chance)
        {
            high *= 2;
        }

        for (int i = 0; i < halvings && low < high; i++)
        {
            double middle = (low + high) / 2;
            bool wide = Tail(middle * middle, 1, freedom) > chance;
            (low, high) = wide ? (middle, high) : (low, middle);
        }

        return high;
    }

    // Incomplete beta function of two halves at x, y = 1 - x, over the complete one; Lentz's way of summing the fraction.
    private static double Beta(double x, double y, int twiceA, int twiceB)
    {
        if (x <= 0)
        {
            return 0;
        }

        double a = twiceA / 2.0;
        double b = twiceB / 2.0;
        double front = Math.Exp(
            (a * Math.Log(x)) + (b * Math.Log(y)) + LogGammaOfHalf(twiceA + twiceB) - LogGammaOfHalf(twiceA) - LogGammaOfHalf(twiceB));
        double c = 1;
        double d = 1 / (1 - ((a + b) * x / (a + 1)));
        double value = d;
        for (int m = 1; m < MostTerms; m++)
        {
            double even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            double odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            (c, d) = (1 + (even / c), 1 / (1 + (even * d)));
            value *= c * d;
            (c, d) = (1 + (odd / c), 1 / (1 + (odd * d)));
            double step = c * d;
            value *= step;
            if (Math.Abs(step - 1) < Still)
            {
                break;
            }
        }

        return front * value / a;
    }

    // Logarithm of gamma(n / 2), from gamma(1/2) or gamma(1) upwards.
    private static double LogGammaOfHalf(int n)
    {
        double sum = n % 2 == 1 ? Math.Log(Math.PI) / 2 : 0;
        for (int k = n - 2; k > 0; k -= 2)
        {
            sum += Math.Log(k / 2.0);
        }

        return sum;
    }
}
