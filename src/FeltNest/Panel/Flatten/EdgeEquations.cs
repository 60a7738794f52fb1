using FeltNest.Ball;
using FeltNest.Numerics;
using FeltNest.Panel.Disc;
using FeltNest.Panel.Domain;

namespace FeltNest.Panel.Flatten;

/// <summary>What the edge rule asks, as equations on the rim coefficients: moments of the squared edge stretch (flat/sphere) over the seam.</summary>
/// <remarks>Where two panels meet, s lies on pi/2 - s. Mated: the part of the squared stretch that changes sign under that exchange has no moments, so it is zero up to the degree asked.
/// True: squared stretch less 1 has no moments at all. Own derivation (Galerkin's method in the seam parameter).</remarks>
internal sealed class EdgeEquations
{
    private readonly EdgeTable u;
    private readonly EdgeTable v;
    private readonly int uRim;
    private readonly int vRim;
    private readonly int vStart;
    private readonly double[][] tests;
    private readonly double[] uRate;
    private readonly double[] vRate;

    /// <summary>Equations of an edge rule for maps of a space.</summary>
    public EdgeEquations(PanelDomain domain, FlatSpace space, EdgeRule rule)
    {
        // Squared stretch has up to twice the rim's degree, and the seam's speed and the rim angle add more: six points a degree leave no aliasing that matters.
        int count = 6 * space.Degree;
        u = new EdgeTable(domain, space.U, count);
        v = new EdgeTable(domain, space.V, count);
        (uRim, vRim, vStart) = (space.U.RimCount, space.V.RimCount, space.U.Count);
        tests = [.. Tests(rule, space, u.S)];
        (uRate, vRate) = (new double[count], new double[count]);
    }

    /// <summary>Number of equations.</summary>
    public int Count => tests.Length;

    /// <summary>Residuals for a map.</summary>
    public void Residuals(ReadOnlySpan<double> x, Span<double> to)
    {
        SetRates(x);
        double[] excess = new double[u.Count];
        for (int i = 0; i < excess.Length; i++)
        {
            excess[i] = (uRate[i] * uRate[i]) + (vRate[i] * vRate[i]) - 1;
        }

        for (int k = 0; k < tests.Length; k++)
        {
            to[k] = DenseRows.Dot(tests[k], excess);
        }
    }

    /// <summary>Gradients of the residuals, rows of <paramref name="size"/>.</summary>
    public void Gradients(ReadOnlySpan<double> x, Span<double> jacobian, int size)
    {
        SetRates(x);
        double[] uWeight = new double[u.Count], vWeight = new double[u.Count];
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
        // The rim of degree n moves its stretch freely only in the lower harmonics: more equations than this make rows that nearly depend on each other.
        int most = (space.Degree - 3) / 2;
        for (int k = 0; k <= most && rule != EdgeRule.Free; k++)
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
