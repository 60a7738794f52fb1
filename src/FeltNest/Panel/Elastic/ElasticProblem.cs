using FeltNest.Ball;
using FeltNest.Numerics;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;
using FeltNest.Panel.Felt;

namespace FeltNest.Panel.Elastic;

/// <summary>The felt's elastic energy as a function of the flat map's coefficients, under an edge rule; where the panel is not
/// mirror-symmetric its mean turn is held.</summary>
/// <remarks>The mean turn is the integral of x v - y u over the disc. Holding it spreads the torque over the whole panel: a torque given by
/// two forces at the tips alone would bend the tips without end as the degree grows.</remarks>
internal sealed class ElasticProblem : ConstrainedProblem
{
    private readonly FeltLaw law;
    private readonly FlatSpace space;
    private readonly DiscQuadrature rule;
    private readonly Metric[] metrics;
    private readonly GradientTable u;
    private readonly GradientTable v;
    private readonly EdgeEquations edge;
    private readonly double[]? turn;
    private readonly double[] uGradient;
    private readonly double[] vGradient;

    /// <summary>Tabulates everything that does not change during the solve.</summary>
    public ElasticProblem(PanelDomain domain, ElasticTables tables, FeltLaw law, EdgeRule edgeRule, double? edgeLimit)
    {
        this.law = law;
        space = tables.Space;
        rule = tables.Rule;
        metrics = [.. Enumerable.Range(0, rule.Count).Select(q => domain.At(rule.X[q], rule.Y[q]).Metric)];
        u = tables.U;
        v = tables.V;
        edge = new EdgeEquations(domain, space, edgeRule, edgeLimit);
        turn = space.IsMirrorSymmetric ? null : TurnRow();
        (uGradient, vGradient) = (new double[2 * rule.Count], new double[2 * rule.Count]);
    }

    /// <summary>Where the mean turn is held; without effect on a mirror-symmetric panel.</summary>
    public double MeanTurn { get; set; }

    /// <summary>The edge's equations, whose held nodes may be changed between solves.</summary>
    public EdgeEquations Edge => edge;

    /// <inheritdoc/>
    public override int Unknowns => space.Count;

    /// <inheritdoc/>
    public override int Equations => edge.Count + (turn is null ? 0 : 1);

    /// <inheritdoc/>
    public override bool TryValue(ReadOnlySpan<double> x, out double value, Span<double> residuals)
    {
        SetGradients(x);
        value = 0;
        for (int q = 0; q < rule.Count; q++)
        {
            EnergyDensity density = At(q);
            if (!density.IsSound)
            {
                return false;
            }

            value += rule.Weights[q] * density.Value;
        }

        // The turn comes first, so that the edge's equations for held nodes are the last ones.
        if (turn is not null)
        {
            residuals[0] = DenseRows.Dot(turn, x) - MeanTurn;
        }

        edge.Residuals(x, residuals[(Equations - edge.Count)..]);

        return true;
    }

    /// <inheritdoc/>
    public override void Linearise(ReadOnlySpan<double> x, Span<double> gradient, Span<double> jacobian)
    {
        SetGradients(x);
        double[] uForce = new double[2 * rule.Count];
        double[] vForce = new double[2 * rule.Count];
        Span<double> first = stackalloc double[4];
        for (int q = 0; q < rule.Count; q++)
        {
            At(q).First(first);
            double w = rule.Weights[q];
            uForce[q] = w * first[0];
            uForce[q + rule.Count] = w * first[1];
            vForce[q] = w * first[2];
            vForce[q + rule.Count] = w * first[3];
        }

        DenseRows.Dots(uForce, u.Rows(u.Count), gradient[..u.Count]);
        DenseRows.Dots(vForce, v.Rows(v.Count), gradient[u.Count..]);
        turn?.CopyTo(jacobian);
        edge.Gradients(x, jacobian[((Equations - edge.Count) * Unknowns)..], Unknowns);
    }

    /// <inheritdoc/>
    public override void Curve(ReadOnlySpan<double> x, ReadOnlySpan<double> multipliers, Span<double> hessian)
    {
        SetGradients(x);
        int size = Unknowns;
        double[] second = WeightedSecond();
        double[] weighted = new double[2 * rule.Count];
        for (int i = 0; i < u.Count; i++)
        {
            Weigh(u.Row(i), second, 0, 0, weighted);
            DenseRows.Dots(weighted, u.Rows(i + 1), hessian.Slice(i * size, i + 1));
        }

        for (int i = 0; i < v.Count; i++)
        {
            int row = (u.Count + i) * size;
            Weigh(v.Row(i), second, 2, 0, weighted);
            DenseRows.Dots(weighted, u.Rows(u.Count), hessian.Slice(row, u.Count));
            Weigh(v.Row(i), second, 2, 2, weighted);
            DenseRows.Dots(weighted, v.Rows(i + 1), hessian.Slice(row + u.Count, i + 1));
        }

        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j < i; j++)
            {
                hessian[(j * size) + i] = hessian[(i * size) + j];
            }
        }

        edge.AddSecond(multipliers[(Equations - edge.Count)..], hessian, size);
    }

    // The 16 second derivatives of the energy density at every point, times its weight.
    private double[] WeightedSecond()
    {
        double[] second = new double[16 * rule.Count];
        for (int q = 0; q < rule.Count; q++)
        {
            Span<double> here = second.AsSpan(16 * q, 16);
            At(q).Second(here);
            foreach (ref double entry in here)
            {
                entry *= rule.Weights[q];
            }
        }

        return second;
    }

    // One function's gradients times the 2 x 2 blocks of second derivatives that start at (row, column).
    private static void Weigh(ReadOnlySpan<double> gradients, double[] second, int row, int column, double[] to)
    {
        int points = gradients.Length / 2;
        int at = (4 * row) + column;
        for (int q = 0; q < points; q++, at += 16)
        {
            double x = gradients[q];
            double y = gradients[q + points];
            to[q] = (second[at] * x) + (second[at + 4] * y);
            to[q + points] = (second[at + 1] * x) + (second[at + 5] * y);
        }
    }

    /// <summary>The mean turn of a map.</summary>
    public double Turn(ReadOnlySpan<double> x) => turn is null ? 0 : DenseRows.Dot(turn, x);

    /// <summary>How fast the mean turn grows when the flat panel is turned as a whole.</summary>
    /// <exception cref="InvalidOperationException">The panel is mirror-symmetric, so that its turn is not held.</exception>
    public double TurnRate(ReadOnlySpan<double> x)
    {
        double[] row = turn ?? throw new InvalidOperationException("the turn of a mirror-symmetric panel is not held");
        return DenseRows.Dot(row.AsSpan(u.Count), x[..u.Count]) - DenseRows.Dot(row.AsSpan(0, u.Count), x[u.Count..]);
    }

    private double[] TurnRow()
    {
        double[] row = new double[space.Count];
        double[] x = new double[rule.Count];
        double[] y = new double[rule.Count];
        for (int q = 0; q < rule.Count; q++)
        {
            (x[q], y[q]) = (rule.Weights[q] * rule.X[q], rule.Weights[q] * rule.Y[q]);
        }

        for (int i = 0; i < space.U.Count; i++)
        {
            row[i] = -DenseRows.Dot(y, u.Values(i));
            row[space.U.Count + i] = DenseRows.Dot(x, v.Values(i));
        }

        return row;
    }

    private EnergyDensity At(int q) =>
        new(law, metrics[q], uGradient[q], uGradient[q + rule.Count], vGradient[q], vGradient[q + rule.Count]);

    private void SetGradients(ReadOnlySpan<double> x)
    {
        Array.Clear(uGradient);
        Array.Clear(vGradient);
        for (int i = 0; i < u.Count; i++)
        {
            DenseRows.Add(uGradient, x[i], u.Row(i));
        }

        for (int i = 0; i < v.Count; i++)
        {
            DenseRows.Add(vGradient, x[u.Count + i], v.Row(i));
        }
    }
}
