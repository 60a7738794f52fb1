using FeltNest.Numerics;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;

namespace FeltNest.Panel.Flatten;

/// <summary>The flat map that keeps all angles and the length of every piece of edge: of all conformal maps the one with the least ratio of
/// scales.</summary>
/// <remarks>Follows J. Milnor, "A problem in cartography", <i>Amer. Math. Monthly</i> 76, 1969. The metric e^(2w) g is flat where Lap w =
/// K; with w = 0 on the seam the flat edge has the curvature kg + dw/dn, which is integrated twice along the seam. Both flat coordinates
/// are harmonic, so the inside follows from the edge.</remarks>
internal sealed class ConformalFlattening(int degree) : IFlattening
{
    /// <summary>Degree that settles lengths to 2e-8 at waists of 39 to 60 degrees.</summary>
    public const int UsualDegree = 41;

    /// <inheritdoc/>
    public (FlatMap Map, PanelSolve Solve) Flatten(PanelDomain domain)
    {
        DiscBasis scale = DiscBasis.EvenBubbles(degree + 1, true, !domain.IsMirrorSymmetric);
        double[] w = new DirichletProjection(domain, scale, degree + 1).Solve([], 1);
        ConformalEdge edge = new(domain, s => NormalSlope(domain, scale, w, s), 8 * degree);

        FlatSpace space = FlatSpace.Of(degree, domain.IsMirrorSymmetric);
        double[] u = new DirichletProjection(domain, space.U, degree).Solve(edge.Rim(space.U, p => p.X), 0);
        double[] v = new DirichletProjection(domain, space.V, degree).Solve(edge.Rim(space.V, p => p.Y), 0);
        return (new FlatMap(domain, space, [.. u, .. v]), new PanelSolve
        {
            Degree = degree,
            Unknowns = scale.Count + space.Count,
            Iterations = 0,
            Residual = edge.TurningError,
            ChordTorqueNmm = 0,
        });
    }

    // dw/dn at the seam: w is zero along it, so its slope in the disc's radius is all there is.
    private static double NormalSlope(PanelDomain domain, DiscBasis basis, double[] w, double s)
    {
        double[] value = new double[basis.Count];
        double[] dx = new double[basis.Count];
        double[] dy = new double[basis.Count];
        (double y, double x) = Math.SinCos(domain.EdgeAt(s).Angle);
        basis.Evaluate(x, y, value, dx, dy);
        Metric a = domain.At(x, y).Metric;
        double outward = (x * DenseRows.Dot(w, dx)) + (y * DenseRows.Dot(w, dy));
        double det = (a.XX * a.YY) - (a.XY * a.XY);
        return outward * Math.Sqrt(((x * x * a.YY) - (2 * x * y * a.XY) + (y * y * a.XX)) / det);
    }
}
