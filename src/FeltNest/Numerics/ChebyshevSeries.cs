namespace FeltNest.Numerics;

/// <summary>A smooth function on -1 to 1 as a sum of Chebyshev polynomials.</summary>
/// <remarks>Interpolation at the roots and Clenshaw's sum, as in L. N. Trefethen, <i>Approximation Theory and Approximation Practice</i>,
/// 2013, chapters 3 and 4.</remarks>
internal sealed class ChebyshevSeries
{
    private readonly double[] coefficients;
    private readonly double[] slopes;

    private ChebyshevSeries(double[] coefficients)
    {
        this.coefficients = coefficients;
        slopes = Differentiated(coefficients);
    }

    /// <summary>Number of terms kept.</summary>
    public int Count => coefficients.Length;

    /// <summary>The roots at which a function must be known: cos(pi (i + 1/2)/n), descending.</summary>
    public static double[] Nodes(int n) => [.. Enumerable.Range(0, n).Select(i => Math.Cos(Math.PI * (i + 0.5) / n))];

    /// <summary>The interpolant through values at <see cref="Nodes"/>.</summary>
    public static ChebyshevSeries Through(IReadOnlyList<double> values)
    {
        int n = values.Count;
        double[] c = new double[n];
        for (int k = 0; k < n; k++)
        {
            double sum = 0;
            for (int i = 0; i < n; i++)
            {
                sum += values[i] * Math.Cos(Math.PI * k * (i + 0.5) / n);
            }

            c[k] = sum * (k == 0 ? 1.0 : 2.0) / n;
        }

        return new ChebyshevSeries(c);
    }

    /// <summary>Value and first derivative.</summary>
    public (double Value, double Slope) At(double x) => (Sum(coefficients, x), Sum(slopes, x));

    private static double Sum(double[] c, double x)
    {
        double next = 0;
        double after = 0;
        for (int k = c.Length - 1; k > 0; k--)
        {
            (next, after) = (c[k] + (2 * x * next) - after, next);
        }

        return c[0] + (x * next) - after;
    }

    private static double[] Differentiated(double[] c)
    {
        double[] d = new double[Math.Max(1, c.Length - 1)];
        for (int k = c.Length - 1; k > 0; k--)
        {
            d[k - 1] = (2 * k * c[k]) + (k + 1 < d.Length ? d[k + 1] : 0);
        }

        d[0] /= 2;
        return d;
    }
}
