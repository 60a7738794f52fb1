namespace FeltNest.Numerics;

/// <summary>Complete elliptic integrals by the arithmetic-geometric mean.</summary>
/// <remarks>Follows M. Abramowitz and I. Stegun, <i>Handbook of Mathematical Functions</i>, 1964, section 17.6. The argument is the
/// parameter m, the square of the modulus.</remarks>
internal static class EllipticIntegral
{
    /// <summary>Complete integral of the first kind.</summary>
    /// <param name="m">Parameter, 0 to below 1.</param>
    public static double CompleteK(double m) => Means(m).K;

    /// <summary>Complete integral of the second kind.</summary>
    /// <param name="m">Parameter, 0 to below 1.</param>
    public static double CompleteE(double m) => Means(m).E;

    private static (double K, double E) Means(double m)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(m);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(m, 1);
        double a = 1;
        double g = Math.Sqrt(1 - m);
        double sum = m / 2;
        double power = 1;

        // The two means agree to twice as many digits each round; below this difference the next round changes nothing in double.
        const double settled = 1e-9;
        while (a - g > settled)
        {
            double c = (a - g) / 2;
            (a, g) = ((a + g) / 2, Math.Sqrt(a * g));
            sum += power * c * c;
            power *= 2;
        }

        double k = Math.PI / (a + g);
        return (k, k * (1 - sum));
    }
}
