using FeltNest.Numerics;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;

namespace FeltNest.Panel.Flatten;

/// <summary>The plain reference: the great circle through pole and tips keeps its length, and so do the great circles across it.</summary>
/// <remarks>The angles along and across the panel are the flat coordinates. They are expanded in the disc's polynomials, which are
/// orthonormal by their gradients.</remarks>
internal sealed class EquidistantFlattening(int degree) : IFlattening
{
    /// <summary>Degree at which the expansion has settled to 1e-9 for usual waists; nothing is solved, so it costs little.</summary>
    public const int UsualDegree = 45;

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The piece is not the inside of a seam.</exception>
    public (FlatMap Map, PanelSolve Solve) Flatten(PanelDomain domain)
    {
        FlatMap map =
            Expand(domain as SeamDomain ?? throw new ArgumentException("only the inside of a seam has a long axis", nameof(domain)));
        return (map, new PanelSolve { Degree = degree, Unknowns = 0, Iterations = 0, Residual = 0, ChordTorqueNmm = 0 });
    }

    private FlatMap Expand(SeamDomain domain)
    {
        FlatSpace space = FlatSpace.Of(degree, domain.IsMirrorSymmetric);
        DiscQuadrature rule = DiscQuadrature.Exact(3 * degree, space.IsMirrorSymmetric);
        double[] to = new double[space.Count];
        Expand(space.U, to.AsSpan(0, space.U.Count), chart => (chart.AlongDx, chart.AlongDy));
        Expand(space.V, to.AsSpan(space.U.Count), chart => (chart.AcrossDx, chart.AcrossDy));
        return new FlatMap(domain, space, to);

        void Expand(DiscBasis basis, Span<double> coefficients, Func<ChartJet, (double Dx, double Dy)> gradient)
        {
            double[] value = new double[basis.Count];
            double[] dx = new double[basis.Count];
            double[] dy = new double[basis.Count];
            for (int q = 0; q < rule.Count; q++)
            {
                (double gx, double gy) = gradient(domain.ChartAt(rule.X[q], rule.Y[q]));
                basis.Evaluate(rule.X[q], rule.Y[q], value, dx, dy);
                DenseRows.Add(coefficients, rule.Weights[q] * gx, dx);
                DenseRows.Add(coefficients, rule.Weights[q] * gy, dy);
            }
        }
    }
}
