using FeltNest.Panel.Flatten;
using FeltNest.Seam;

namespace FeltNest.Design.SeamDesign;

/// <summary>The limits of a seam as amounts by which a panel passes them, and as rows of a linear program.</summary>
/// <param name="limits">The limits.</param>
/// <param name="radiusMm">Radius of the fitted sphere, mm.</param>
/// <param name="leastChart">Least area of sphere for a unit of disc.</param>
internal sealed class SeamBounds(SeamLimits limits, double radiusMm, double leastChart)
{
    // Places of the seam between which runs are looked at, and how far apart along it they must be to be two runs: a twelfth of the seam.
    private const int RunStep = 2;
    private const int Apart = SeamReader.Places / 12;

    /// <summary>Usual least area of sphere for a unit of disc: that at which strains at the tips can be believed. Of hollow tips there is
    /// no chart.</summary>
    public const double LeastChart = StrainSampler.LeastTipArea;

    // Weight of that area against a per cent or a mm: a mm of a wave is then about one unit.
    private const double ChartWeight = 0.25;

    // Weight of a mm of gap: a gap is limited to tenths of a mm.
    private const double GapWeight = 10;

    /// <summary>The limits.</summary>
    public SeamLimits Limits => limits;

    /// <summary>By how much a panel passes its limits at most: per cent of strain, mm of radius or distance.</summary>
    public double Violation(SeamLook look)
    {
        double worst = Math.Max(0, Math.Max(ChartWeight * (leastChart - look.Chart.Min()), look.Stretch.Max() - limits.StretchPercent));
        if (limits.CompressionPercent is { } compression)
        {
            worst = Math.Max(worst, look.Compression.Max() - compression);
        }

        if (limits.LeastRadiusMm is { } radius)
        {
            worst = Math.Max(worst, radius * ((radius * look.Curvature.Max(Math.Abs)) - 1));
        }

        if (limits.LeastRunMm is { } run)
        {
            worst = Math.Max(worst, run - LeastRun(look.Seam, radiusMm));
        }

        if (limits.MostGapMm is { } gap)
        {
            worst = Math.Max(worst, GapWeight * (look.Gaps.Max() - gap));
        }

        return worst;
    }

    /// <summary>Rows that a step of at most <paramref name="trust"/> mm in each number can make bind.</summary>
    public IEnumerable<(double[] Factors, double Bound)> Rows(SeamLook look, IReadOnlyList<SeamLook> slopes, double trust)
    {
        IEnumerable<(double[] Slope, double Over)> rows = Most(look.Stretch, slopes, slope => slope.Stretch, limits.StretchPercent, 1)
            .Concat(Most(
                [.. look.Chart.Select(area => -area)], slopes, slope => [.. slope.Chart.Select(area => -area)], -leastChart, ChartWeight));
        if (limits.CompressionPercent is { } compression)
        {
            rows = rows.Concat(Most(look.Compression, slopes, slope => slope.Compression, compression, 1));
        }

        if (limits.LeastRadiusMm is { } radius)
        {
            // In mm of radius; a bend to either side counts.
            double scale = radius * radius;
            rows = rows.Concat(Most(look.Curvature, slopes, slope => slope.Curvature, 1 / radius, scale))
                .Concat(Most(
                    [.. look.Curvature.Select(k => -k)], slopes, slope => [.. slope.Curvature.Select(k => -k)], 1 / radius, scale));
        }

        if (limits.MostGapMm is { } gap)
        {
            rows = rows.Concat(Most(look.Gaps, slopes, slope => slope.Gaps, gap, GapWeight));
        }

        if (limits.LeastRunMm is { } run)
        {
            rows = rows.Concat(Runs(look.Seam).Select(pair => (
                slopes.Select(slope => -Slope(look.Seam, slope.Seam, pair.First, pair.Second)).ToArray(), run - pair.Distance)));
        }

        return rows
            .Where(row => row.Over + (trust * row.Slope.Sum(Math.Abs)) > 0)
            .Select(row => (row.Slope.Select(slope => -slope).ToArray(), row.Over));
    }

    /// <summary>Least distance between two runs of a seam along great circles, mm.</summary>
    public static double LeastRun(SeamCurve seam, double radiusMm) => LeastRun(
        [.. Enumerable.Range(0, SeamReader.Places).Select(i => radiusMm * seam.At(2 * Math.PI * i / SeamReader.Places).Point)], radiusMm);

    /// <summary>The same of places of a seam.</summary>
    /// <param name="seam">Places of the seam, <see cref="SeamReader.Places"/> round, mm.</param>
    /// <param name="radiusMm">Radius of the sphere, mm.</param>
    public static double LeastRun(SpherePoint[] seam, double radiusMm) =>
        new SeamBounds(new SeamLimits { StretchPercent = 0 }, radiusMm, LeastChart).Runs(seam).Min(pair => pair.Distance);

    private static IEnumerable<(double[] Slope, double Over)> Most(
        double[] values, IReadOnlyList<SeamLook> slopes, Func<SeamLook, double[]> part, double most, double scale)
    {
        double[][] parts = [.. slopes.Select(part)];
        return values.Select((value, i) => (parts.Select(p => scale * p[i]).ToArray(), scale * (value - most)));
    }

    // Pairs of places that are nearer to each other than to the places beside them; the waist is one of them always.
    private IEnumerable<(int First, int Second, double Distance)> Runs(SpherePoint[] seam)
    {
        int n = seam.Length;
        for (int i = 0; i < n / 2; i += RunStep)
        {
            for (int j = i + Apart; j <= i + n - Apart; j += RunStep)
            {
                double here = Chord(i, j);
                if (here <= Chord(i + RunStep, j) && here <= Chord(i - RunStep, j) && here <= Chord(i, j + RunStep)
                    && here <= Chord(i, j - RunStep))
                {
                    yield return (i, j % n, 2 * radiusMm * Math.Asin(Math.Min(1, here / (2 * radiusMm))));
                }
            }
        }

        double Chord(int a, int b) => (seam[(a + n) % n] - seam[(b + n) % n]).Length;
    }

    // The arc's slope: the chord's, turned into the arc's.
    private double Slope(SpherePoint[] seam, SpherePoint[] moves, int i, int j)
    {
        SpherePoint apart = seam[i] - seam[j];
        double chord = apart.Length;
        double half = chord / (2 * radiusMm);
        return apart.Dot(moves[i] - moves[j]) / (chord * Math.Sqrt(Math.Max(1e-12, 1 - (half * half))));
    }
}
