namespace FeltNest.Numerics;

/// <summary>Nodes and weights of Gauss-Legendre quadrature on 0 to 1: exact for polynomials of degree 2n - 1.</summary>
/// <remarks>Newton's method on the three-term recurrence, as in P. Davis and P. Rabinowitz, <i>Methods of Numerical Integration</i>, 1984,
/// section 2.7.</remarks>
internal static class GaussLegendre
{
    /// <summary>The rule with n nodes, ascending.</summary>
    public static (double[] Nodes, double[] Weights) Rule(int n)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(n, 1);
        double[] nodes = new double[n];
        double[] weights = new double[n];
        for (int i = 0; i < n; i++)
        {
            double x = Math.Cos(Math.PI * (i + 0.75) / (n + 0.5));
            double slope = 0;

            // The starting value is within 1e-3 of the root, so 5 steps reach the last digit.
            for (int round = 0; round < 5; round++)
            {
                double before = 1;
                double here = x;
                for (int k = 2; k <= n; k++)
                {
                    (before, here) = (here, (((2 * k) - 1) * x * here - ((k - 1) * before)) / k);
                }

                slope = n * ((x * here) - before) / ((x * x) - 1);
                x -= here / slope;
            }

            nodes[n - 1 - i] = (1 + x) / 2;
            weights[n - 1 - i] = 1 / ((1 - (x * x)) * slope * slope);
        }

        return (nodes, weights);
    }
}
