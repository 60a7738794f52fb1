using FeltNest.Geometry;
using FeltNest.Numerics;
using FeltNest.Panel.Felt;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>The felt's energy as a function of where it lies on the sphere, with its edge free or held; free, the centroid is kept at the
/// pole and +u towards +x, which holds no force.</summary>
internal sealed class WrapProblem : ConstrainedProblem
{
    private readonly WrapField functions;
    private readonly FeltLaw law;
    private readonly WrapHold? hold;
    private readonly double[][] gauge;
    private readonly double[] state;

    /// <summary>A problem on a functions.</summary>
    public WrapProblem(WrapField functions, FeltLaw law, WrapHold? hold)
    {
        this.functions = functions;
        this.law = law;
        this.hold = hold;
        gauge = hold is null ? Gauge() : [];
        state = new double[5 * functions.Points.Length];
    }

    /// <inheritdoc/>
    public override int Unknowns => functions.Along.Count + functions.Across.Count + (hold?.Slides ?? 0);

    /// <inheritdoc/>
    public override int Equations => hold?.Count ?? gauge.Length;

    /// <inheritdoc/>
    public override bool TryValue(ReadOnlySpan<double> x, out double value, Span<double> residuals)
    {
        SetState(x);
        value = 0;
        for (int q = 0; q < functions.Points.Length; q++)
        {
            value += functions.Weights[q] * At(q).Value;
        }

        hold?.Residuals(x, residuals);
        for (int i = 0; i < gauge.Length; i++)
        {
            residuals[i] = DenseRows.Dot(gauge[i], x);
        }

        return double.IsFinite(value);
    }

    /// <inheritdoc/>
    public override void Linearise(ReadOnlySpan<double> x, Span<double> gradient, Span<double> jacobian)
    {
        SetState(x);
        int q = functions.Points.Length;
        int along = functions.Along.Count;
        double[] forAlong = new double[3 * q];
        double[] forAcross = new double[3 * q];
        Span<double> first = stackalloc double[5];
        for (int i = 0; i < q; i++)
        {
            At(i).First(first);
            double weight = functions.Weights[i];
            (forAlong[i], forAlong[i + q]) = (weight * first[0], weight * first[1]);
            (forAcross[i], forAcross[i + q], forAcross[i + (2 * q)]) = (weight * first[2], weight * first[3], weight * first[4]);
        }

        gradient.Clear();
        DenseRows.Dots(forAlong, functions.Along.Rows, gradient[..along]);
        DenseRows.Dots(forAcross, functions.Across.Rows, gradient.Slice(along, functions.Across.Count));
        jacobian.Clear();
        hold?.Gradients(x, jacobian, Unknowns);
        for (int i = 0; i < gauge.Length; i++)
        {
            gauge[i].CopyTo(jacobian[(i * Unknowns)..]);
        }
    }

    /// <inheritdoc/>
    // Long because the portions, the two families of functions and their sums are one product of matrices, written out.
    public override void Curve(ReadOnlySpan<double> x, ReadOnlySpan<double> multipliers, Span<double> hessian)
    {
        SetState(x);
        int q = functions.Points.Length;
        int along = functions.Along.Count;
        int across = functions.Across.Count;
        int size = Unknowns;
        hessian.Clear();

        // Points are taken in portions that stay in the processor's nearest memory while all pairs of functions are summed over them.
        const int portion = 128;
        double[] second = new double[25 * portion];
        double[] weighed = new double[3 * portion];
        for (int from = 0; from < q; from += portion)
        {
            int count = Math.Min(portion, q - from);
            Second(from, count, second);
            for (int k = 0; k < along + across; k++)
            {
                Span<double> row = hessian.Slice(k * size, k + 1);
                ReadOnlySpan<double> function =
                    k < along ? functions.Along.Rows.AsSpan(3 * q * k, 3 * q) : functions.Across.Rows.AsSpan(3 * q * (k - along), 3 * q);
                ReadOnlySpan<int> own = k < along ? [0, 1] : [2, 3, 4];
                AddRow(function, own, [0, 1], functions.Along, k < along ? row : row[..along]);
                if (k >= along)
                {
                    AddRow(function, own, [2, 3, 4], functions.Across, row[along..]);
                }
            }

            void AddRow(ReadOnlySpan<double> function, ReadOnlySpan<int> own, ReadOnlySpan<int> others, WrapBasis basis, Span<double> to)
            {
                for (int b = 0; b < others.Length; b++)
                {
                    Span<double> target = weighed.AsSpan(b * count, count);
                    target.Clear();
                    for (int a = 0; a < own.Length; a++)
                    {
                        DenseRows.AddProducts(
                            target, function.Slice((a * q) + from, count), second.AsSpan(((5 * own[a]) + others[b]) * count, count));
                    }

                    DenseRows.AddDots(target, basis.Rows.AsSpan((b * q) + from), 3 * q, to);
                }
            }
        }

        for (int i = 0; i < along + across; i++)
        {
            for (int j = 0; j < i; j++)
            {
                hessian[(j * size) + i] = hessian[(i * size) + j];
            }
        }

        hold?.AddSecond(x, multipliers, hessian, size);
    }

    // Second derivatives times weights at a portion of the points: for each of the 25 entries one row, so that they are read in order.
    private void Second(int from, int count, double[] second)
    {
        Span<double> here = stackalloc double[25];
        for (int i = 0; i < count; i++)
        {
            At(from + i).Second(here);
            for (int k = 0; k < here.Length; k++)
            {
                second[(k * count) + i] = functions.Weights[from + i] * here[k];
            }
        }
    }

    private double[][] Gauge()
    {
        if (functions.HasMirrors)
        {
            return [];
        }

        int n = functions.Along.Count;
        double[] value = new double[n];
        double[] du = new double[n];
        double[] dv = new double[n];
        double[] none = new double[n];
        functions.Along.Evaluate(new Point2(0, 0), value, du, dv);
        double[] turn = [.. none, .. du];
        return functions.HasHalfTurn ? [turn] : [turn, [.. value, .. none], [.. none, .. value]];
    }

    private WrapDensity At(int q)
    {
        int n = functions.Points.Length;
        return new WrapDensity(law, state[q], state[q + n], state[q + (2 * n)], state[q + (3 * n)], state[q + (4 * n)]);
    }

    private void SetState(ReadOnlySpan<double> x)
    {
        int q = functions.Points.Length;
        int along = functions.Along.Count;
        Array.Clear(state);
        for (int k = 0; k < along; k++)
        {
            DenseRows.Add(state.AsSpan(0, 2 * q), x[k], functions.Along.Rows.AsSpan(3 * q * k, 2 * q));
        }

        for (int k = 0; k < functions.Across.Count; k++)
        {
            DenseRows.Add(state.AsSpan(2 * q, 3 * q), x[along + k], functions.Across.Rows.AsSpan(3 * q * k, 3 * q));
        }
    }
}
