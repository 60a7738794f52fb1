using FeltNest.Geometry;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Rows.Mixed;

/// <summary>Rows of different tilts in one lay with a common repeat; a row may stand several times in it.</summary>
internal static class MixedRows
{
    // Sampled tables read up to this share low, so sequences down to it below the best are worth polishing.
    private const double WorthPolishing = 0.985;

    // Sequences of more arcs than this are not modelled: with hundreds of rows a change of tilt in a few of them gains nothing that could
    // be seen.
    private const int MostArcs = 60_000;

    // Panels of a sequence that is polished, at most: every row moves on its own, and more is work without end.
    private const int MostPanels = 120;

    // Rows that lie flat against an edge: tilts from the least height on, degrees.
    private static readonly double[] FlatTilts = [-10, -5, 0, 5, 10];

    /// <summary>The most promising row sequences with at least two tilts, best first.</summary>
    internal static List<LayStart> Best(
        LayoutRequest request, RowTables tables, TiltRange tilts, SearchEffort effort, double toBeat, CancellationToken stop)
    {
        List<LayStart> starts = [];
        double[] grid = tilts.Grid(effort.MixTiltStepDeg);
        bool turned = !request.Rules.OneWay && !tables.HasHalfTurn;
        if (request.Rules.Rows != RowRule.Alternate)
        {
            starts.AddRange(
                Sequences(
                    request, new RowKinds(request, Turned(grid, turned), effort, several: false, stop), tilts, effort, toBeat,
                    isAlternate: false, stop));
        }

        if (request.Rules.Rows == RowRule.Any && tilts.IsFree && !stop.IsCancellationRequested)
        {
            starts.AddRange(
                Sequences(
                    request, new RowKinds(request, Turned(Promising(request, tables, effort), turned), effort, several: true, stop), tilts,
                    effort, toBeat, isAlternate: false, stop));
        }

        foreach (double tilt in grid.Where(t => t is > 0 and < Math.PI / 2 && (tilts.IsFree || -t >= tilts.Least)))
        {
            if (stop.IsCancellationRequested)
            {
                break;
            }

            starts.AddRange(
                Sequences(
                    request, new RowKinds(request, [tilt, -tilt], effort, several: false, stop), tilts, effort, toBeat, isAlternate: true,
                    stop));
        }

        return [.. starts.OrderByDescending(s => s.Density).Take(effort.MixStarts)];
    }

    private static double[] Turned(double[] tilts, bool turned) => turned ? [.. tilts, .. tilts.Select(t => t + Math.PI)] : tilts;

    // The tilts that are best for parallel rows, steep and flat, and those that lie flat against an edge.
    private static double[] Promising(LayoutRequest request, RowTables tables, SearchEffort effort)
    {
        (_, double flat) = OutlineWidth.Least(request.Part.Outline, 0, Math.PI);
        IEnumerable<double> best = tables.Best(4 * effort.MixTilts).Select(rows => rows.Tilt).Distinct().Take(effort.MixTilts);
        return
        [
            .. best
                .Concat(FlatTilts.Select(d => flat + double.DegreesToRadians(d)))
                .Select(t => t - (Math.Floor(t / Math.PI) * Math.PI))
                .Distinct()
                .Order(),
        ];
    }

    private static IEnumerable<LayStart> Sequences(
        LayoutRequest request, RowKinds kinds, TiltRange tilts, SearchEffort effort, double toBeat, bool isAlternate,
        CancellationToken stop)
    {
        double width = request.UsableWidthMm;
        IEnumerable<RowSequence> found = kinds.Pitches(effort.FirstTrust).AsParallel().AsOrdered().WithDegreeOfParallelism(2)
            .SelectMany(pitch => stop.IsCancellationRequested ? [] : AtPitch(kinds, pitch, width, toBeat * WorthPolishing, stop));
        return found
            .OrderByDescending(s => s.Panels / s.Pitch)
            .Take(effort.MixStarts)
            .ToList()
            .Select(s => Start(request, kinds, s, tilts, isAlternate));
    }

    private static IEnumerable<RowSequence> AtPitch(RowKinds kinds, double pitch, double width, double least, CancellationToken stop)
    {
        RowSteps? steps = null;
        int misses = 0;
        for (int panels = Math.Max(2, (int)Math.Ceiling(least * pitch)); !stop.IsCancellationRequested; panels++)
        {
            steps ??= kinds.StepsAt(pitch);
            if (panels > MostPanels || kinds.Count * kinds.Count * panels > MostArcs || !steps.MayFit(panels, width))
            {
                yield break;
            }

            // A count of panels may have no sequence where rows come in twos and threes, and the next one have one; so the first miss is
            // not the end there.
            if (steps.Model.Least(panels) is not { } answer || answer.Width > width)
            {
                if (++misses >= steps.MostCopies)
                {
                    yield break;
                }
            }
            else if (answer.Kinds.Distinct().Count() > 1)
            {
                yield return new RowSequence(pitch, answer.Kinds, panels, steps);
            }
        }
    }

    private static LayStart Start(LayoutRequest request, RowKinds kinds, RowSequence sequence, TiltRange tilts, bool isAlternate)
    {
        int[] used = [.. sequence.Kinds.Distinct()];
        List<MixedRow> rows = [];
        double x = 0;
        double y = request.Usable.Low + kinds.Bottom(sequence.Kinds[0]);
        for (int i = 0; i < sequence.Kinds.Length; i++)
        {
            int kind = sequence.Kinds[i];
            if (i > 0)
            {
                (double step, double shift) = sequence.Steps.Between(sequence.Kinds[i - 1], kind);
                (x, y) = (x + shift, y + step);
            }

            int side = kinds.Tilt(kind) == kinds.Tilt(0) ? 1 : -1;
            rows.Add(new MixedRow
            {
                Tilt = isAlternate ? 0 : Array.IndexOf(used, kind),
                Factor = isAlternate ? side : 1,
                Turn = isAlternate ? 0 : kinds.Turn(kind),
                At = new Point2(x, y),
                Copies = sequence.Steps.Copies(kind),
            });
        }

        (double, double, double)[] free = isAlternate
            ? [(kinds.Tilt(0), Math.Max(tilts.Least, -tilts.Most), Math.Min(tilts.Most, -tilts.Least))]
            : [.. used.Select(k => (kinds.Tilt(k) - kinds.Turn(k), tilts.Least, tilts.Most))];
        Polish.PoseModel model = RowModels.Mixed(request, sequence.Pitch, free, rows);
        string several = rows.Any(r => r.Copies > 1) ? ", some several times in the repeat" : string.Empty;
        return new LayStart(
            isAlternate ? "rows at +a and -a, network model, polished" : $"rows of several tilts{several}, network model, polished",
            sequence.Panels / sequence.Pitch, model, at => RowModels.Repeat(model, at), isAlternate);
    }

    private sealed record RowSequence(double Pitch, int[] Kinds, int Panels, RowSteps Steps);
}
