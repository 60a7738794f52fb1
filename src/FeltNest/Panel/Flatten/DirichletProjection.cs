using FeltNest.Numerics;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;

namespace FeltNest.Panel.Flatten;

/// <summary>Poisson's problem on a piece of the sphere with given edge values, by Galerkin's method in polynomials of the disc.</summary>
/// <remarks>Lap f = source in the sphere's metric. The bubbles of the disc basis carry the inside, so the edge values stay exact.</remarks>
internal sealed class DirichletProjection
{
    private readonly DiscBasis basis;
    private readonly DiscQuadrature rule;
    private readonly GradientTable table;
    private readonly double[] flux;
    private readonly double[] area;
    private readonly DenseCholesky factor;

    /// <summary>Factors the bubbles' stiffness.</summary>
    public DirichletProjection(PanelDomain domain, DiscBasis basis, int degree)
    {
        this.basis = basis;
        rule = DiscQuadrature.Exact(3 * degree, domain.IsMirrorSymmetric);
        table = new GradientTable(basis, rule);
        flux = new double[3 * rule.Count];
        area = new double[rule.Count];
        for (int q = 0; q < rule.Count; q++)
        {
            Metric a = domain.At(rule.X[q], rule.Y[q]).Metric;
            area[q] = Math.Sqrt((a.XX * a.YY) - (a.XY * a.XY));
            double w = rule.Weights[q] / area[q];
            (flux[3 * q], flux[(3 * q) + 1], flux[(3 * q) + 2]) = (w * a.YY, -w * a.XY, w * a.XX);
        }

        int rim = basis.RimCount;
        int free = basis.Count - rim;
        double[] stiffness = new double[free * free];
        double[] row = new double[basis.Count];
        for (int i = 0; i < free; i++)
        {
            DenseRows.Dots(Weighed(table.Row(rim + i)), table.Rows(basis.Count), row);
            row.AsSpan(rim).CopyTo(stiffness.AsSpan(i * free, free));
        }

        factor = DenseCholesky.TryFactor(stiffness, free, 0)
            ?? throw new InvalidOperationException("the stiffness of the disc is not positive definite");
    }

    /// <summary>Coefficients of the function with the given rim coefficients and source.</summary>
    public double[] Solve(ReadOnlySpan<double> rimCoefficients, double source)
    {
        int rim = basis.RimCount;
        int free = basis.Count - rim;
        double[] gradient = new double[2 * rule.Count];
        double[] load = new double[rule.Count];
        double[] all = new double[basis.Count];
        for (int i = 0; i < rim; i++)
        {
            all[i] = rimCoefficients[i];
            DenseRows.Add(gradient, all[i], table.Row(i));
        }

        for (int q = 0; q < rule.Count; q++)
        {
            load[q] = source * rule.Weights[q] * area[q];
        }

        double[] weighed = Weighed(gradient);
        for (int i = 0; i < free; i++)
        {
            all[rim + i] = -DenseRows.Dot(weighed, table.Row(rim + i)) - DenseRows.Dot(load, table.Values(rim + i));
        }

        factor.Solve(all.AsSpan(rim));
        return all;
    }

    private double[] Weighed(ReadOnlySpan<double> gradient)
    {
        double[] to = new double[gradient.Length];
        for (int q = 0; q < rule.Count; q++)
        {
            double x = gradient[q];
            double y = gradient[q + rule.Count];
            to[q] = (flux[3 * q] * x) + (flux[(3 * q) + 1] * y);
            to[q + rule.Count] = (flux[(3 * q) + 1] * x) + (flux[(3 * q) + 2] * y);
        }

        return to;
    }
}
