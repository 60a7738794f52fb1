using FeltNest.Geometry;
using FeltNest.Numerics;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>Polynomials in the flat coordinates of one parity, by rising degree, whose gradients are orthonormal over the piece.</summary>
/// <remarks>Products of Legendre polynomials over the piece's box, made orthonormal by Gram and Schmidt's method taken twice (G. Golub and
/// C. Van Loan, <i>Matrix Computations</i>, 4th ed. 2013, section 5.2).</remarks>
internal sealed class WrapBasis
{
    private readonly (int I, int J)[] products;
    private readonly double[] mixing;
    private readonly int highest;
    private readonly double boxU;
    private readonly double boxV;

    /// <summary>Builds the functions.</summary>
    /// <param name="degree">Highest degree.</param>
    /// <param name="box">Half the extent of the piece.</param>
    /// <param name="points">Quadrature points.</param>
    /// <param name="weights">Their weights.</param>
    /// <param name="wanted">Which powers of u and v are wanted.</param>
    public WrapBasis(int degree, Point2 box, Point2[] points, double[] weights, Func<int, int, bool> wanted)
    {
        (boxU, boxV, highest) = (box.X, box.Y, degree);
        products =
        [
            .. from d in Enumerable.Range(0, degree + 1) from i in Enumerable.Range(0, d + 1) where wanted(i, d - i) select (i, d - i),
        ];
        int n = products.Length;
        int q = points.Length;
        mixing = new double[n * n];
        Rows = new double[3 * q * n];
        double[] value = new double[n];
        double[] du = new double[n];
        double[] dv = new double[n];
        double[] whole = [.. weights, .. weights];
        for (int p = 0; p < q; p++)
        {
            Products(points[p], value, du, dv);
            for (int k = 0; k < n; k++)
            {
                (Rows[(3 * q * k) + p], Rows[(3 * q * k) + q + p], Rows[(3 * q * k) + (2 * q) + p]) = (du[k], dv[k], value[k]);
            }
        }

        MakeOrthonormal(n, q, whole);
    }

    // The values carry no weight: only gradients are made orthonormal.
    private void MakeOrthonormal(int n, int q, double[] whole)
    {
        double[] weighed = new double[3 * q];
        double[] shares = new double[n];
        for (int k = 0; k < n; k++)
        {
            Span<double> row = Rows.AsSpan(3 * q * k, 3 * q);
            Span<double> mix = mixing.AsSpan(n * k, n);
            mix[k] = 1;
            for (int round = 0; round < 2; round++)
            {
                Weigh(row, whole, weighed);
                DenseRows.Dots(weighed, Rows, shares.AsSpan(0, k));
                for (int l = 0; l < k; l++)
                {
                    DenseRows.Add(row, -shares[l], Rows.AsSpan(3 * q * l, 3 * q));
                    DenseRows.Add(mix, -shares[l], mixing.AsSpan(n * l, n));
                }
            }

            Weigh(row, whole, weighed);

            // The constant has no gradient and keeps its size.
            double scale = products[k] == (0, 0) ? 1 : 1 / Math.Sqrt(DenseRows.Dot(weighed, row));
            Scale(row, scale);
            Scale(mix, scale);
        }
    }

    /// <summary>Number of functions.</summary>
    public int Count => products.Length;

    /// <summary>For each function one row: derivatives by u at all quadrature points, by v, values.</summary>
    public double[] Rows { get; }

    /// <summary>Values and derivatives of all functions at a place.</summary>
    public void Evaluate(Point2 at, Span<double> values, Span<double> du, Span<double> dv)
    {
        int n = products.Length;
        double[] rawValue = new double[n];
        double[] rawU = new double[n];
        double[] rawV = new double[n];
        Products(at, rawValue, rawU, rawV);
        for (int k = 0; k < n; k++)
        {
            ReadOnlySpan<double> mix = mixing.AsSpan(n * k, k + 1);
            (values[k], du[k], dv[k]) = (DenseRows.Dot(mix, rawValue), DenseRows.Dot(mix, rawU), DenseRows.Dot(mix, rawV));
        }
    }

    private void Products(Point2 at, double[] value, double[] du, double[] dv)
    {
        (double[] pu, double[] su) = Legendre(at.X / boxU, highest);
        (double[] pv, double[] sv) = Legendre(at.Y / boxV, highest);
        for (int k = 0; k < products.Length; k++)
        {
            (int i, int j) = products[k];
            (value[k], du[k], dv[k]) = (pu[i] * pv[j], su[i] * pv[j] / boxU, pu[i] * sv[j] / boxV);
        }
    }

    private static (double[] Values, double[] Slopes) Legendre(double x, int most)
    {
        double[] p = new double[most + 2];
        double[] s = new double[most + 2];
        (p[0], p[1], s[1]) = (1, x, 1);
        for (int k = 2; k <= most; k++)
        {
            p[k] = ((((2 * k) - 1) * x * p[k - 1]) - ((k - 1) * p[k - 2])) / k;
            s[k] = s[k - 2] + (((2 * k) - 1) * p[k - 1]);
        }

        return (p, s);
    }

    private static void Weigh(ReadOnlySpan<double> row, double[] weights, double[] to)
    {
        for (int i = 0; i < weights.Length; i++)
        {
            to[i] = weights[i] * row[i];
        }
    }

    private static void Scale(Span<double> row, double factor)
    {
        foreach (ref double value in row)
        {
            value *= factor;
        }
    }
}
