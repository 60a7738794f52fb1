using FeltNest.Numerics;

namespace FeltNest.Panel.Disc;

/// <summary>Quadrature over the unit disc for functions kept by the half-turn, or by both mirrors: Gauss-Legendre in r^2, equal steps in
/// angle over the half or the quarter.</summary>
internal sealed class DiscQuadrature
{
    private DiscQuadrature(double[] x, double[] y, double[] weights)
    {
        X = x;
        Y = y;
        Weights = weights;
    }

    /// <summary>Abscissas.</summary>
    public double[] X { get; }

    /// <summary>Ordinates.</summary>
    public double[] Y { get; }

    /// <summary>Weights; their sum is the whole disc's area.</summary>
    public double[] Weights { get; }

    /// <summary>Number of points.</summary>
    public int Count => Weights.Length;

    /// <summary>A rule exact for polynomials of a degree.</summary>
    public static DiscQuadrature Exact(int degree, bool mirrorSymmetric)
    {
        int around = mirrorSymmetric ? (degree / 4) + 1 : (degree / 2) + 1;
        (double[] nodes, double[] radial) = GaussLegendre.Rule((degree / 4) + 1);
        double span = mirrorSymmetric ? Math.PI / 2 : Math.PI;
        double[] x = new double[nodes.Length * around];
        double[] y = new double[x.Length];
        double[] w = new double[x.Length];
        for (int i = 0; i < nodes.Length; i++)
        {
            double r = Math.Sqrt(nodes[i]);
            for (int j = 0; j < around; j++)
            {
                (double sin, double cos) = Math.SinCos(span * (j + 0.5) / around);
                int at = (i * around) + j;
                (x[at], y[at], w[at]) = (r * cos, r * sin, radial[i] * Math.PI / around);
            }
        }

        return new DiscQuadrature(x, y, w);
    }
}
