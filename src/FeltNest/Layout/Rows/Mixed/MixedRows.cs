using FeltNest.Geometry;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout.Rows.Mixed;

/// <summary>Rows of different tilts in one lay at a common pitch.</summary>
internal static class MixedRows
{
    // Sampled tables read up to this share low, so sequences down to it below the best are worth polishing.
    private const double WorthPolishing = 0.985;

    // Sequences of more arcs than this are not modelled: with hundreds of rows a change of tilt in a few of them gains nothing that could be seen.
    private const int MostArcs = 60_000;

    /// <summary>The most promising row sequences with at least two tilts, best first.</summary>
    internal static List<LayStart> Best(LayoutRequest request, RowTables tables, TiltRange tilts, SearchEffort effort, double toBeat, CancellationToken stop)
    {
        List<LayStart> starts = [];
        double[] grid = tilts.Grid(effort.MixTiltStepDeg);
        bool turned = !request.Rules.OneWay && !tables.HasHalfTurn;
        if (request.Rules.Rows != RowRule.Alternate)
        {
            double[] kinds = turned ? [.. grid, .. grid.Select(t => t + Math.PI)] : grid;
            starts.AddRange(Sequences(request, new RowKinds(request, kinds, effort), tilts, effort, toBeat, isAlternate: false, stop));
        }

        foreach (double tilt in grid.Where(t => t is > 0 and < Math.PI / 2 && (tilts.IsFree || -t >= tilts.Least)))
        {
            if (stop.IsCancellationRequested)
            {
                break;
            }

            starts.AddRange(Sequences(request, new RowKinds(request, [tilt, -tilt], effort), tilts, effort, toBeat, isAlternate: true, stop));
        }

        return [.. starts.OrderByDescending(s => s.Density).Take(effort.MixStarts)];
    }

    private static IEnumerable<LayStart> Sequences(
        LayoutRequest request, RowKinds kinds, TiltRange tilts, SearchEffort effort, double toBeat, bool isAlternate, CancellationToken stop)
    {
        double width = request.UsableWidthMm;
        IEnumerable<RowSequence> found = kinds.Pitches(effort.FirstTrust).AsParallel().AsOrdered().WithDegreeOfParallelism(2)
            .SelectMany(pitch => stop.IsCancellationRequested ? [] : AtPitch(kinds, pitch, width, toBeat * WorthPolishing));
        return found.OrderByDescending(s => s.Kinds.Length / s.Pitch).Take(effort.MixStarts).ToList().Select(s => Start(request, kinds, s, tilts, isAlternate));
    }

    private static IEnumerable<RowSequence> AtPitch(RowKinds kinds, double pitch, double width, double least)
    {
        RowSteps? steps = null;
        for (int rows = Math.Max(2, (int)Math.Ceiling(least * pitch)); ; rows++)
        {
            steps ??= kinds.StepsAt(pitch);
            if (kinds.Count * kinds.Count * rows > MostArcs || !steps.MayFit(rows, width) || steps.Model.Least(rows) is not { } answer || answer.Width > width)
            {
                yield break;
            }

            if (answer.Kinds.Distinct().Count() > 1)
            {
                yield return new RowSequence(pitch, answer.Kinds, steps);
            }
        }
    }

    private static LayStart Start(LayoutRequest request, RowKinds kinds, RowSequence sequence, TiltRange tilts, bool isAlternate)
    {
        int[] used = [.. sequence.Kinds.Distinct()];
        List<(int, double, double, Point2)> rows = [];
        double x = 0, y = request.Usable.Low + kinds.Bottom(sequence.Kinds[0]);
        for (int i = 0; i < sequence.Kinds.Length; i++)
        {
            int kind = sequence.Kinds[i];
            if (i > 0)
            {
                (double step, double shift) = sequence.Steps.Between(sequence.Kinds[i - 1], kind);
                (x, y) = (x + shift, y + step);
            }

            double turn = isAlternate ? 0 : kinds.Turn(kind);
            rows.Add(isAlternate
                ? (0, kinds.Tilt(kind) == kinds.Tilt(0) ? 1 : -1, 0, new Point2(x, y))
                : (Array.IndexOf(used, kind), 1, turn, new Point2(x, y)));
        }

        (double, double, double)[] free = isAlternate
            ? [(kinds.Tilt(0), Math.Max(tilts.Least, -tilts.Most), Math.Min(tilts.Most, -tilts.Least))]
            : [.. used.Select(k => (kinds.Tilt(k) - kinds.Turn(k), tilts.Least, tilts.Most))];
        Polish.PoseModel model = RowModels.Mixed(request, sequence.Pitch, free, rows);
        return new LayStart(
            isAlternate ? "rows at +a and -a, network model, polished" : "rows of several tilts, network model, polished",
            sequence.Kinds.Length / sequence.Pitch, model, at => RowModels.Repeat(model, at), isAlternate);
    }

    private sealed record RowSequence(double Pitch, int[] Kinds, RowSteps Steps);
}
