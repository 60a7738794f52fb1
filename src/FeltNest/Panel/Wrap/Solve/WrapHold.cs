using FeltNest.Numerics;
using FeltNest.Seam;

namespace FeltNest.Panel.Wrap.Solve;

/// <summary>Equations that keep the edge on the seam: moments over the edge of the angles along and across less those of the seam. Where
/// the edge slides, its seam parameters are unknowns too.</summary>
/// <remarks>The place at the waist, where t = 0, is pinned to s = 0: all slides are zero there.</remarks>
internal sealed class WrapHold
{
    private readonly SeamCurve seam;
    private readonly double[] start;
    private readonly double[][] slides;
    private readonly double[][] alongWaves;
    private readonly double[][] acrossWaves;
    private readonly double[] matrix;
    private readonly int alongCount;
    private readonly int acrossCount;

    /// <summary>Tabulates.</summary>
    /// <param name="region">The piece.</param>
    /// <param name="field">The functions on it.</param>
    /// <param name="seam">The seam.</param>
    /// <param name="start">Seam parameter of each station to begin with.</param>
    /// <param name="mostWave">Highest wave along the edge whose moments are held.</param>
    /// <param name="isSliding">Whether the edge may slide along the seam.</param>
    public WrapHold(WrapRegion region, WrapField field, SeamCurve seam, double[] start, int mostWave, bool isSliding)
    {
        this.seam = seam;
        this.start = start;
        (alongCount, acrossCount) = (field.Along.Count, field.Across.Count);
        double[] t = [.. region.Parameters.Take(region.Half)];
        int[] odd = [.. Enumerable.Range(0, mostWave + 1).Where(k => !field.HasHalfTurn || k % 2 == 1)];
        int[] even = [.. Enumerable.Range(1, mostWave).Where(k => !field.HasHalfTurn || k % 2 == 0)];
        alongWaves = [.. Sines(odd, t), .. field.HasMirrors ? [] : Cosines(odd, t)];
        acrossWaves = [.. Cosines(odd, t), .. field.HasMirrors ? [] : Sines(odd, t)];
        IEnumerable<double[]> level = Cosines(even, t).Select(wave => wave.Select(value => value - 1).ToArray());
        IEnumerable<double[]> sliding = Sines(even, t).Concat(level.Where(_ => !field.HasMirrors));
        slides = isSliding ? [.. sliding] : [];
        matrix = Matrix(region, field);
    }

    /// <summary>Number of equations.</summary>
    public int Count => alongWaves.Length + acrossWaves.Length;

    /// <summary>Number of slides.</summary>
    public int Slides => slides.Length;

    /// <summary>Seam parameters of the stations.</summary>
    public double[] Parameters(ReadOnlySpan<double> x)
    {
        double[] s = [.. start];
        for (int i = 0; i < slides.Length; i++)
        {
            DenseRows.Add(s, x[alongCount + acrossCount + i], slides[i]);
        }

        return s;
    }

    /// <summary>Residuals.</summary>
    public void Residuals(ReadOnlySpan<double> x, Span<double> to)
    {
        int known = alongCount + acrossCount;
        SeamChart[] places = Places(x);
        double[] along = [.. places.Select(p => p.Along / places.Length)];
        double[] across = [.. places.Select(p => p.Across / places.Length)];
        for (int row = 0; row < Count; row++)
        {
            to[row] =
                DenseRows.Dot(matrix.AsSpan(row * known, known), x) - DenseRows.Dot(Wave(row), row < alongWaves.Length ? along : across);
        }
    }

    /// <summary>Gradients, rows of <paramref name="size"/>.</summary>
    public void Gradients(ReadOnlySpan<double> x, Span<double> jacobian, int size)
    {
        int known = alongCount + acrossCount;
        SeamChart[] places = Places(x);
        double[] weighed = new double[places.Length];
        for (int row = 0; row < Count; row++)
        {
            Span<double> to = jacobian.Slice(row * size, size);
            matrix.AsSpan(row * known, known).CopyTo(to);
            double[] wave = Wave(row);
            for (int i = 0; i < places.Length; i++)
            {
                weighed[i] = -wave[i] * (row < alongWaves.Length ? places[i].AlongSlope : places[i].AcrossSlope) / places.Length;
            }

            for (int k = 0; k < slides.Length; k++)
            {
                to[known + k] = DenseRows.Dot(weighed, slides[k]);
            }
        }
    }

    /// <summary>Adds multipliers times second derivatives.</summary>
    public void AddSecond(ReadOnlySpan<double> x, ReadOnlySpan<double> multipliers, Span<double> hessian, int size)
    {
        int known = alongCount + acrossCount;
        SeamChart[] places = Places(x);
        double[] along = new double[places.Length];
        double[] across = new double[places.Length];
        double[] weighed = new double[places.Length];
        for (int row = 0; row < Count; row++)
        {
            DenseRows.Add(row < alongWaves.Length ? along : across, -multipliers[row] / places.Length, Wave(row));
        }

        for (int k = 0; k < slides.Length; k++)
        {
            for (int i = 0; i < places.Length; i++)
            {
                weighed[i] = slides[k][i] * ((along[i] * places[i].AlongBend) + (across[i] * places[i].AcrossBend));
            }

            for (int l = 0; l < slides.Length; l++)
            {
                hessian[((known + k) * size) + known + l] += DenseRows.Dot(weighed, slides[l]);
            }
        }
    }

    private static IEnumerable<double[]> Sines(int[] turns, double[] t) =>
        turns.Where(k => k > 0).Select(k => t.Select(at => Math.Sin(k * at)).ToArray());

    private static IEnumerable<double[]> Cosines(int[] turns, double[] t) => turns.Select(k => t.Select(at => Math.Cos(k * at)).ToArray());

    private double[] Wave(int row) => row < alongWaves.Length ? alongWaves[row] : acrossWaves[row - alongWaves.Length];

    private SeamChart[] Places(ReadOnlySpan<double> x) => [.. Parameters(x).Select(s => SeamChart.At(seam, s))];

    private double[] Matrix(WrapRegion region, WrapField field)
    {
        int known = alongCount + acrossCount;
        int n = region.Half;
        double[] to = new double[Count * known];
        double[] along = new double[alongCount];
        double[] across = new double[acrossCount];
        for (int i = 0; i < n; i++)
        {
            field.Along.Evaluate(region.Edge[i], along, new double[alongCount], new double[alongCount]);
            field.Across.Evaluate(region.Edge[i], across, new double[acrossCount], new double[acrossCount]);
            for (int row = 0; row < Count; row++)
            {
                bool isAlong = row < alongWaves.Length;
                DenseRows.Add(
                    to.AsSpan((row * known) + (isAlong ? 0 : alongCount), isAlong ? alongCount : acrossCount), Wave(row)[i] / n,
                    isAlong ? along : across);
            }
        }

        return to;
    }
}
