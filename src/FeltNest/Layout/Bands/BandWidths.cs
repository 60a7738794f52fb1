using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Bands;

/// <summary>What each width of a band gives at best, on a grid of widths.</summary>
internal sealed class BandWidths
{
    private readonly IReadOnlyList<PitchCurve> curves;

    private BandWidths(IReadOnlyList<PitchCurve> curves, double spacing, double[] densities)
    {
        this.curves = curves;
        Spacing = spacing;
        Densities = densities;
    }

    /// <summary>Distance between the widths, mm: entry i is for i times this.</summary>
    internal double Spacing { get; }

    /// <summary>Best panels per mm by width; 0 where nothing fits.</summary>
    internal double[] Densities { get; }

    /// <summary>The curves of all tilts.</summary>
    internal static PitchCurve[] Curves(RowTables tables) =>
        [.. tables.Tilts.AsParallel().AsOrdered().WithDegreeOfParallelism(2).Select(rows => new PitchCurve(rows))];

    /// <summary>Widths up to <paramref name="most"/> over the given tilts.</summary>
    internal static BandWidths Of(IReadOnlyList<PitchCurve> curves, double most, int count)
    {
        double spacing = most / count;
        return new BandWidths(
            curves, spacing, [.. Enumerable.Range(0, count + 1).Select(i => curves.Max(c => c.Best(i * spacing).Density))]);
    }

    /// <summary>The best rows of a width, or null where none fits.</summary>
    internal RowLattice? Rows(double width)
    {
        (PitchCurve curve, (int count, _)) = curves.Select(c => (c, c.Best(width))).MaxBy(c => c.Item2.Density);
        return count == 0 ? null : curve.Lattice(count, width);
    }
}
