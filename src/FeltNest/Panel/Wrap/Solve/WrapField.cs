using FeltNest.Geometry;
using FeltNest.Numerics;
using FeltNest.Panel.Felt;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>The functions by which the angles along and across are sought over a flat piece, and its quadrature.</summary>
internal sealed class WrapField
{
    /// <summary>Builds functions and quadrature.</summary>
    /// <param name="region">The piece.</param>
    /// <param name="isEven">Whether the felt's law equals its mirror image in the axes.</param>
    /// <param name="degree">Highest degree.</param>
    public WrapField(WrapRegion region, bool isEven, int degree)
    {
        HasHalfTurn = region.HasHalfTurn;
        HasMirrors = region.HasMirrors && isEven;
        Degree = degree;

        // The energy has four times the degree, but its high parts are small: nodes for one and a half times the degree leave an error
        // below that of the functions.
        (double[] nodes, double[] radial) = GaussLegendre.Rule((3 * degree / 4) + 4);

        // With mirrors a quarter of the rays is enough, the two on the axes counting half.
        int n = HasMirrors ? (region.Edge.Length / 4) + 1 : region.Half;
        double even = (double)region.Edge.Length / n;
        Points = new Point2[n * nodes.Length];
        Weights = new double[Points.Length];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < nodes.Length; j++)
            {
                Points[(i * nodes.Length) + j] = region.Edge[i] * nodes[j];
                Weights[(i * nodes.Length) + j] = Share(i, n, even) * radial[j] * nodes[j] * region.Edge[i].Cross(region.Steps[i]);
            }
        }

        Point2 box = new(region.Edge.Max(p => Math.Abs(p.X)), region.Edge.Max(p => Math.Abs(p.Y)));
        Along = new WrapBasis(
            degree, box, Points, Weights, (i, j) => HasMirrors ? i % 2 == 1 && j % 2 == 0 : !HasHalfTurn || (i + j) % 2 == 1);
        Across = HasMirrors ? new WrapBasis(degree, box, Points, Weights, (i, j) => i % 2 == 0 && j % 2 == 1) : Along;
    }

    // How many rays one stands for.
    private double Share(int ray, int rays, double even)
    {
        if (!HasMirrors)
        {
            return even;
        }

        return ray == 0 || ray == rays - 1 ? 2 : 4;
    }

    /// <summary>Highest degree.</summary>
    public int Degree { get; }

    /// <summary>Functions for the angle along.</summary>
    public WrapBasis Along { get; }

    /// <summary>Functions for the angle across.</summary>
    public WrapBasis Across { get; }

    /// <summary>Quadrature points.</summary>
    public Point2[] Points { get; }

    /// <summary>Their weights: the sum is the piece's area.</summary>
    public double[] Weights { get; }

    /// <summary>Whether only functions that change sign under the half-turn are used.</summary>
    public bool HasHalfTurn { get; }

    /// <summary>Whether only functions that keep the mirrors are used.</summary>
    public bool HasMirrors { get; }

    /// <summary>Coefficients of the piece laid on with all lengths along and across kept.</summary>
    public double[] Start()
    {
        double[] to = new double[Along.Count + Across.Count];
        int q = Points.Length;
        for (int k = 0; k < Along.Count; k++)
        {
            to[k] = DenseRows.Dot(Weights, Along.Rows.AsSpan(3 * q * k, q));
        }

        for (int k = 0; k < Across.Count; k++)
        {
            to[Along.Count + k] = DenseRows.Dot(Weights, Across.Rows.AsSpan((3 * q * k) + q, q));
        }

        return to;
    }

    /// <summary>Angles along and across at a place with their derivatives by the flat coordinates.</summary>
    public (double Along, double Lu, double Lv, double Across, double Pu, double Pv) At(ReadOnlySpan<double> x, Point2 place)
    {
        (double l, double lu, double lv) = Sum(Along, x[..Along.Count], place);
        (double p, double pu, double pv) = Sum(Across, x.Slice(Along.Count, Across.Count), place);
        return (l, lu, lv, p, pu, pv);
    }

    /// <summary>Elastic state at a place.</summary>
    public WrapDensity Density(in FeltLaw law, ReadOnlySpan<double> x, Point2 place)
    {
        (_, double lu, double lv, double across, double pu, double pv) = At(x, place);
        return new WrapDensity(in law, lu, lv, pu, pv, across);
    }

    private static (double Value, double Du, double Dv) Sum(WrapBasis basis, ReadOnlySpan<double> c, Point2 place)
    {
        double[] value = new double[basis.Count];
        double[] du = new double[basis.Count];
        double[] dv = new double[basis.Count];
        basis.Evaluate(place, value, du, dv);
        return (DenseRows.Dot(c, value), DenseRows.Dot(c, du), DenseRows.Dot(c, dv));
    }
}
