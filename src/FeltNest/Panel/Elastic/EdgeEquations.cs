using FeltNest.Ball;
using FeltNest.Numerics;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;

namespace FeltNest.Panel.Elastic;

/// <summary>What the edge rule asks, as equations on the rim coefficients: moments of the squared edge stretch (flat/sphere) over the
/// seam.</summary>
/// <remarks><para>Where two panels meet, s lies on pi/2 - s. Mated: the part of the squared stretch that changes sign under that exchange
/// has no moments, so it is zero up to the degree asked. True: squared stretch less 1 has no moments at all. Own derivation (Galerkin's
/// method in the seam parameter).</para>
/// <para>Limited: of mated edges the squared stretch, as far as its moments tell it, may be held at a greatest value at nodes, one for each
/// pair of places that meet. With t = s - pi/4 it is a sum of cos 2mt, and there are as many nodes as terms: all nodes held at 1 is the
/// edge rule True, term by term.</para></remarks>
internal sealed class EdgeEquations
{
    private readonly EdgeTable u;
    private readonly EdgeTable v;
    private readonly int uRim;
    private readonly int vRim;
    private readonly int vStart;
    private readonly double[][] rule;
    private readonly double[][] bounds;
    private readonly double most;
    private readonly double[] tighter;
    private readonly double[] uRate;
    private readonly double[] vRate;
    private double[][] tests;
    private int[] held = [];

    /// <summary>Equations of an edge rule for maps of a space.</summary>
    /// <param name="domain">The piece of sphere.</param>
    /// <param name="space">The space.</param>
    /// <param name="rule">The edge rule.</param>
    /// <param name="limit">Greatest compression along a mated edge, as a part of flat length below 1; null for none.</param>
    public EdgeEquations(PanelDomain domain, FlatSpace space, EdgeRule rule, double? limit)
    {
        // Squared stretch has up to twice the rim's degree, and the seam's speed and the rim angle add more: six points a degree leave no
        // aliasing that matters.
        int count = 6 * space.Degree;
        u = new EdgeTable(domain, space.U, count);
        v = new EdgeTable(domain, space.V, count);
        (uRim, vRim, vStart) = (space.U.RimCount, space.V.RimCount, space.U.Count);
        this.rule = tests = [.. Tests(rule, space, u.S)];
        Step = space.IsMirrorSymmetric ? 2 : 1;
        bounds = limit is null ? [] : Bounds(space, u.S);
        tighter = new double[bounds.Length];
        most = limit is { } part ? (1 / ((1 - part) * (1 - part))) - 1 : 0;
        (uRate, vRate) = (new double[count], new double[count]);
    }

    /// <summary>Number of equations.</summary>
    public int Count => tests.Length;

    /// <summary>Nodes held at the limit; their equations come last. None to begin with.</summary>
    public IReadOnlyList<int> Held
    {
        get => held;
        set
        {
            held = [.. value];
            tests = [.. rule, .. held.Select(node => bounds[node])];
        }
    }

    /// <summary>How many nodes there are: node i stands for the places with |s - pi/4| from i to i + 1 times <see cref="NodeSpacing"/>, and
    /// for those that symmetry makes equal to them.</summary>
    public int Nodes => bounds.Length;

    /// <summary>Distance between nodes in s, radians.</summary>
    public double NodeSpacing => Math.PI / (2.0 * Step * bounds.Length);

    // Only every second cosine keeps the mirrors.
    private int Step { get; }

    /// <summary>Residuals for a map.</summary>
    public void Residuals(ReadOnlySpan<double> x, Span<double> to)
    {
        double[] excess = Excess(x);
        for (int k = 0; k < tests.Length; k++)
        {
            to[k] = DenseRows.Dot(tests[k], excess) - (k < rule.Length ? 0 : most - tighter[held[k - rule.Length]]);
        }
    }

    /// <summary>How far the squared stretch lies above its limit at each node.</summary>
    public double[] Overs(ReadOnlySpan<double> x)
    {
        double[] excess = Excess(x);
        return [.. bounds.Select((bound, node) => DenseRows.Dot(bound, excess) - most + tighter[node])];
    }

    /// <summary>Lowers the limit of the nodes beside each place of the edge that passes it, by as much as it is passed.</summary>
    /// <remarks>At nodes alone the limit would be passed between the last held node and the first free one, where the edge's few waves
    /// swing over the kink of its stretch.</remarks>
    /// <returns>Whether a limit was lowered: false where the whole edge keeps it.</returns>
    public bool Tighten(ReadOnlySpan<double> x)
    {
        // Squared stretch that may be left above the limit: 0.003 to 0.005 per cent of flat length.
        const double left = 1e-4;
        double[] excess = Excess(x);
        double[] more = new double[bounds.Length];
        double period = Math.PI / Step;
        for (int i = 0; i < excess.Length; i++)
        {
            // The place among the nodes: cosines are even about pi/4 and about half a period from there.
            double over = excess[i] - most;
            double apart = Math.Abs(Math.IEEERemainder(u.S[i] - (Math.PI / 4), period));
            double among = (apart / NodeSpacing) - 0.5;
            for (int node = Math.Max(0, (int)Math.Floor(among)); node <= Math.Min(bounds.Length - 1, (int)Math.Ceiling(among))
                && over > left; node++)
            {
                more[node] = Math.Max(more[node], over);
            }
        }

        DenseRows.Add(tighter, 1, more);
        return more.Any(value => value > 0);
    }

    /// <summary>Gradients of the residuals, rows of <paramref name="size"/>.</summary>
    public void Gradients(ReadOnlySpan<double> x, Span<double> jacobian, int size)
    {
        SetRates(x);
        double[] uWeight = new double[u.Count];
        double[] vWeight = new double[u.Count];
        for (int k = 0; k < tests.Length; k++)
        {
            Span<double> row = jacobian.Slice(k * size, size);
            row.Clear();
            for (int i = 0; i < uWeight.Length; i++)
            {
                uWeight[i] = 2 * tests[k][i] * uRate[i];
                vWeight[i] = 2 * tests[k][i] * vRate[i];
            }

            for (int m = 0; m < uRim; m++)
            {
                row[m] = DenseRows.Dot(uWeight, u.Rates(m));
            }

            for (int m = 0; m < vRim; m++)
            {
                row[vStart + m] = DenseRows.Dot(vWeight, v.Rates(m));
            }
        }
    }

    /// <summary>Adds multipliers times second derivatives.</summary>
    public void AddSecond(ReadOnlySpan<double> multipliers, Span<double> hessian, int size)
    {
        double[] weight = new double[u.Count];
        for (int k = 0; k < tests.Length; k++)
        {
            DenseRows.Add(weight, 2 * multipliers[k], tests[k]);
        }

        AddBlock(u, uRim, 0, weight, hessian, size);
        AddBlock(v, vRim, vStart, weight, hessian, size);
    }

    private static void AddBlock(EdgeTable table, int rim, int start, double[] weight, Span<double> hessian, int size)
    {
        double[] weighted = new double[weight.Length];
        for (int m = 0; m < rim; m++)
        {
            ReadOnlySpan<double> rates = table.Rates(m);
            for (int i = 0; i < weight.Length; i++)
            {
                weighted[i] = weight[i] * rates[i];
            }

            for (int n = 0; n < rim; n++)
            {
                hessian[((start + m) * size) + start + n] += DenseRows.Dot(weighted, table.Rates(n));
            }
        }
    }

    private static IEnumerable<double[]> Tests(EdgeRule rule, FlatSpace space, double[] s)
    {
        for (int k = 0; k <= MostWave(space) && rule != EdgeRule.Free; k++)
        {
            if (rule == EdgeRule.True || k % 2 == 1)
            {
                yield return Wave(k, Math.Cos);
            }

            if (k > 0 && !space.IsMirrorSymmetric && (rule == EdgeRule.True || k % 2 == 0))
            {
                yield return Wave(k, Math.Sin);
            }
        }

        double[] Wave(int k, Func<double, double> wave) => [.. s.Select(at => wave(2 * k * at) / s.Length)];
    }

    private static double[][] Bounds(FlatSpace space, double[] s)
    {
        int step = space.IsMirrorSymmetric ? 2 : 1;
        int terms = (MostWave(space) / step) + 1;
        return [.. Enumerable.Range(0, terms).Select(node => s.Select(at => Value(node, at)).ToArray())];

        // Interpolation in the cosines, as a weight on the places of the edge.
        double Value(int node, double at)
        {
            double sum = 0;
            double there = Math.PI * (node + 0.5) / (2.0 * step * terms);
            double here = at - (Math.PI / 4);
            for (int m = 0; m < terms; m++)
            {
                sum += (m == 0 ? 1 : 2) * Math.Cos(2 * step * m * there) * Math.Cos(2 * step * m * here);
            }

            return sum / s.Length;
        }
    }

    // The rim of degree n moves its stretch freely only in the lower harmonics: more equations than this make rows that nearly depend on
    // each other.
    private static int MostWave(FlatSpace space) => (space.Degree - 3) / 2;

    private double[] Excess(ReadOnlySpan<double> x)
    {
        SetRates(x);
        double[] excess = new double[u.Count];
        for (int i = 0; i < excess.Length; i++)
        {
            excess[i] = (uRate[i] * uRate[i]) + (vRate[i] * vRate[i]) - 1;
        }

        return excess;
    }

    private void SetRates(ReadOnlySpan<double> x)
    {
        Array.Clear(uRate);
        Array.Clear(vRate);
        for (int m = 0; m < uRim; m++)
        {
            DenseRows.Add(uRate, x[m], u.Rates(m));
        }

        for (int m = 0; m < vRim; m++)
        {
            DenseRows.Add(vRate, x[vStart + m], v.Rates(m));
        }
    }
}
