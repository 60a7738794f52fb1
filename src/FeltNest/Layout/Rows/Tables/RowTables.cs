using FeltNest.Geometry;

namespace FeltNest.Layout.Rows.Tables;

/// <summary>Step tables of a part for all tilts on the grid, and the parallel row layouts they promise.</summary>
internal sealed class RowTables
{
    // Rows are pushed into each other until their step is this share of the step at the least pitch; deeper, parts of the kind cut here no longer fit.
    private const double DeepestStep = 0.25;

    private readonly LayoutRequest request;
    private readonly TiltRow[] rows;
    private readonly bool wraps;

    internal RowTables(LayoutRequest request, TiltRange tilts, SearchEffort effort)
    {
        this.request = request;
        Outline part = request.Part.Outline;
        double extent = Math.Max(part.MaxX - part.MinX, part.MaxY - part.MinY);
        Grid = (extent + request.GapMm) / effort.Samples;
        TiltStepDeg = effort.TiltStepDeg;
        wraps = tilts.IsFree;

        // A hair of the part's size: the arcs' polygon is equal under the half-turn far below it.
        HasHalfTurn = OutlineSymmetry.HasHalfTurn(part, default, 1e-6 * extent);
        rows = [.. tilts.Grid(effort.TiltStepDeg).AsParallel().AsOrdered().WithDegreeOfParallelism(2)
            .Select(tilt => new TiltRows(TurnedPart.Make(part, tilt, Grid, request.GapMm))).Select(t => new TiltRow(t, Fits(t)))];
    }

    /// <summary>Sampling step of the tables, mm.</summary>
    internal double Grid { get; }

    /// <summary>Step of the tilts, degrees.</summary>
    internal double TiltStepDeg { get; }

    /// <summary>True when the part turned by half a turn about its origin is itself.</summary>
    internal bool HasHalfTurn { get; }

    /// <summary>Tables by tilt.</summary>
    internal IEnumerable<TiltRows> Tilts => rows.Select(r => r.Tables);

    /// <summary>The most promising parallel rows: local best tilts of every row count, best first, so that both steep and flat families are kept.</summary>
    internal IEnumerable<RowLattice> Best(int most)
    {
        List<RowLattice> peaks = [];
        for (int i = 0; i < rows.Length; i++)
        {
            foreach ((int count, RowLattice fit) in rows[i].Fits)
            {
                if (fit.Density >= Neighbour(i - 1, count) && fit.Density >= Neighbour(i + 1, count))
                {
                    peaks.Add(fit);
                }
            }
        }

        // Tables read a little wide: a row count too many may look best at every tilt and never come true, so no count takes more than half of the places.
        return peaks.OrderByDescending(p => p.Density).ThenBy(p => p.Tilt).GroupBy(p => p.Rows).SelectMany(count => count.Take((most + 1) / 2))
            .OrderByDescending(p => p.Density).ThenBy(p => p.Tilt).Take(most);
    }

    private double Neighbour(int i, int count)
    {
        if (!wraps && (i < 0 || i >= rows.Length))
        {
            return 0;
        }

        TiltRow row = rows[(i + rows.Length) % rows.Length];
        return row.Fits.TryGetValue(count, out RowLattice? fit) ? fit.Density : 0;
    }

    // From the row count at which the rows just stop being loose on; fewer rows at the same pitch only leave cloth unused.
    private SortedDictionary<int, RowLattice> Fits(TiltRows tilt)
    {
        SortedDictionary<int, RowLattice> fits = [];
        foreach (RowLattice fit in tilt.Fits(request.UsableWidthMm, DeepestStep))
        {
            fits[fit.Rows] = fit;
        }

        return fits;
    }

    private sealed record TiltRow(TiltRows Tables, SortedDictionary<int, RowLattice> Fits);
}
