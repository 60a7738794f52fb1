using FeltNest.Layout.Limits;

namespace FeltNest.Layout.Rows.Tables;

/// <summary>The parallel row layouts that the step tables of a part promise on one width.</summary>
internal sealed class RowTables
{
    // Rows are pushed into each other until their step is this share of the step at the least pitch; deeper, parts of the kind cut here no
    // longer fit.
    private const double DeepestStep = 0.25;

    private readonly TiltTables tables;
    private readonly SortedDictionary<int, RowLattice>[] fits;

    /// <summary>Tables of its own, for one width.</summary>
    internal RowTables(LayoutRequest request, TiltRange tilts, SearchEffort effort)
        : this(new TiltTables(request.Part.Outline, request.GapMm, tilts, effort), request.UsableWidthMm)
    {
    }

    /// <summary>Kept tables at one more width.</summary>
    /// <param name="tables">Tables of the part at its gap.</param>
    /// <param name="usableWidthMm">Width less the edge trims, mm.</param>
    internal RowTables(TiltTables tables, double usableWidthMm)
    {
        this.tables = tables;
        int asked = tables.HasMirror ? (tables.Tilts.Count / 2) + 1 : tables.Tilts.Count;
        fits = [.. tables.Tilts.Take(asked).AsParallel().AsOrdered().WithDegreeOfParallelism(2).Select(t => Fits(t, usableWidthMm))];
    }

    /// <summary>Sampling step of the tables, mm.</summary>
    internal double Grid => tables.Grid;

    /// <summary>Step of the tilts, degrees.</summary>
    internal double TiltStepDeg => tables.StepDeg;

    /// <summary>True when the part turned by half a turn about its origin is itself.</summary>
    internal bool HasHalfTurn => tables.HasHalfTurn;

    /// <summary>Tables by tilt.</summary>
    internal IEnumerable<TiltRows> Tilts => tables.Tilts;

    /// <summary>The most promising parallel rows: local best tilts of every row count, best first, so that both steep and flat families are
    /// kept. Of layouts that are mirrors of each other one is given.</summary>
    internal IEnumerable<RowLattice> Best(int most)
    {
        List<RowLattice> peaks = [];
        for (int i = 0; i < fits.Length; i++)
        {
            foreach ((int count, RowLattice fit) in fits[i])
            {
                if (fit.Density >= Neighbour(i - 1, count) && fit.Density >= Neighbour(i + 1, count))
                {
                    peaks.Add(fit);
                }
            }
        }

        // Tables read a little wide: a row count too many may look best at every tilt and never come true, so no count takes more than half
        // of the places.
        return peaks
            .OrderByDescending(p => p.Density)
            .ThenBy(p => p.Tilt)
            .GroupBy(p => p.Rows)
            .SelectMany(count => count.Take((most + 1) / 2))
            .OrderByDescending(p => p.Density).ThenBy(p => p.Tilt).Take(most);
    }

    // Beyond the ends of half the tilts stand their mirrors.
    private double Neighbour(int i, int count)
    {
        int all = tables.Tilts.Count;
        if (!tables.Wraps && (i < 0 || i >= all))
        {
            return 0;
        }

        int at = (i + all) % all;
        at = at < fits.Length ? at : all - at;
        return fits[at].TryGetValue(count, out RowLattice? fit) ? fit.Density : 0;
    }

    // From the row count at which the rows just stop being loose on; fewer rows at the same pitch only leave cloth unused.
    private static SortedDictionary<int, RowLattice> Fits(TiltRows tilt, double width)
    {
        SortedDictionary<int, RowLattice> fits = [];
        foreach (RowLattice fit in tilt.Fits(width, DeepestStep))
        {
            fits[fit.Rows] = fit;
        }

        return fits;
    }
}
