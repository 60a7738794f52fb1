using FeltNest.Layout.Check;
using FeltNest.Layout.Plane;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Mixed;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout;

/// <summary>Lays a part over a roll width so that a metre of roll gives the most panels, within the class of row layouts.</summary>
/// <remarks>Starts come from sampled step tables (all tilts, all row counts, pitch interpolated) and, where rows may mix, from a network model of the row
/// sequence solved with OR-Tools; the best are polished on exact distances in pitch, tilt, steps and phases together, and the winner is verified by
/// <see cref="LayoutCheck"/>. The classic one-row case is T. J. Nye, <i>Stamping Strip Layout for Optimal Raw Material Utilization</i>, J. Manuf. Systems 19, 2000.</remarks>
public sealed class LayoutSearch
{
    private readonly LayoutRequest request;
    private readonly IProgress<SearchProgress>? progress;
    private readonly CancellationToken stop;
    private readonly SearchEffort effort;
    private readonly TiltRange tilts;
    private readonly List<(double Density, LayStart Start, LayoutRepeat Repeat)> found = [];
    private LayStart? best;
    private double bestDensity;

    private LayoutSearch(LayoutRequest request, IProgress<SearchProgress>? progress, CancellationToken stop)
    {
        this.request = request;
        this.progress = progress;
        this.stop = stop;
        effort = SearchEffort.Of(request);
        tilts = TiltRange.Of(request.Rules);
    }

    /// <summary>Finds a layout.</summary>
    /// <param name="request">Part, roll and rules.</param>
    /// <param name="progress">Told the best so far; may be null.</param>
    /// <param name="stop">Ends the search early with the best so far, marked as cut short; the first good layout is always finished.</param>
    /// <exception cref="InputException">A number out of its range.</exception>
    /// <exception cref="NoAnswerException">The part fits the usable width at no allowed tilt, or the rules contradict each other; the message says what would work.</exception>
    public static RollLayout Run(LayoutRequest request, IProgress<SearchProgress>? progress = null, CancellationToken stop = default)
    {
        LayoutLimits.Require(request);
        return new LayoutSearch(request, progress, stop).Run();
    }

    private RollLayout Run()
    {
        RowTables tables = new(request, tilts, effort);
        IReadOnlyList<LayStart> starts = Starts(tables);
        PolishAll(starts, 0.1, 0.5);
        double? freer = Mixed(tables);
        double plane = PlaneLattice.BestDensity(request, tables, effort, stop) * request.Part.AreaMm2;
        Shake();
        return Verified(plane, freer, tables);
    }

    // The best layout that the independent check passes. Two thin spikes that cross between their corners can deceive the polish, never the check; rows of bounding boxes pass always.
    private RollLayout Verified(double plane, double? freer, RowTables tables)
    {
        foreach ((LayStart start, LayoutRepeat repeat) in found.OrderByDescending(f => f.Density).Select(f => (f.Start, f.Repeat)).Append(BoxRows.Lay(request, tilts)))
        {
            SearchRecord record = new(
                request.Seed, request.Effort, stop.IsCancellationRequested, start.Method,
                stop.IsCancellationRequested ? null : new GridProof(tables.TiltStepDeg, tables.Grid), 100 * plane, 0, freer);
            RollLayout layout = new(
                [request.Part], request.RollWidthMm, request.Trims, request.GapMm, request.Rules,
                [new LayoutBand(request.Usable.Low, request.Usable.High, repeat)], record);
            LayoutVerdict verdict = LayoutCheck.Verify(layout);
            if (verdict.Passed)
            {
                return layout with { Search = record with { LeastGapMm = verdict.LeastGapMm } };
            }
        }

        throw new InvalidOperationException("no layout passes its check");
    }

    private List<LayStart> Starts(RowTables tables)
    {
        List<LayStart> starts = [.. tables.Best(effort.Starts).Select(rows => LayStart.Of(request, rows, tilts))];
        if (!request.Rules.OneWay && !tables.HasHalfTurn)
        {
            starts.AddRange(PairedRows.Best(request, tilts, Math.PI, effort));
        }

        if (!tilts.IsFree)
        {
            starts.AddRange(PairedRows.Best(request, tilts, 0, effort));
        }

        return [.. starts.OrderByDescending(s => s.Density)];
    }

    private void PolishAll(IReadOnlyList<LayStart> starts, double from, double to)
    {
        // Two at a time and taken in order, so that the winner does not depend on which thread was faster.
        for (int i = 0; i < starts.Count && (!stop.IsCancellationRequested || best is null); i += 2)
        {
            LayStart[] pair = [.. starts.Skip(i).Take(2)];
            double[]?[] ends = [.. pair.AsParallel().AsOrdered().WithDegreeOfParallelism(2).Select(s => LayoutPolisher.Polish(s.Model, effort.PolishSteps, effort.FirstTrust))];
            for (int k = 0; k < pair.Length; k++)
            {
                Keep(pair[k], ends[k]);
            }

            progress?.Report(new SearchProgress("polishing rows", 1000 * bestDensity, from + ((to - from) * (i + pair.Length) / starts.Count)));
        }
    }

    private void Keep(LayStart start, double[]? end)
    {
        if (end is null)
        {
            return;
        }

        LayoutRepeat repeat = start.Build(end);
        double density = repeat.Panels.Count / repeat.LengthMm;

        // A gain below this share is rounding: the earlier layout stays, which keeps results stable.
        if (density > bestDensity * (1 + 1e-10))
        {
            (best, bestDensity) = (start with { Model = start.Model with { Parameters = end } }, density);
            found.Add((density, start, repeat));
        }
    }

    // Rows of more than one tilt: part of the search where the rules allow it, else the answer to "what would freer rows gain".
    private double? Mixed(RowTables tables)
    {
        RowRule wanted = request.Rules.Rows;
        double strict = bestDensity;
        List<LayStart> mixed = stop.IsCancellationRequested ? [] : MixedRows.Best(request, tables, tilts, effort, bestDensity, stop);
        if (wanted == RowRule.Any)
        {
            PolishAll(mixed, 0.6, 0.8);
            return null;
        }

        if (wanted == RowRule.Alternate)
        {
            PolishAll([.. mixed.Where(s => s.IsAlternate)], 0.6, 0.8);
            strict = bestDensity;
        }

        double freer = strict;
        foreach (LayStart start in mixed.Take(effort.FreerPolishes))
        {
            if (!stop.IsCancellationRequested && LayoutPolisher.Polish(start.Model, effort.PolishSteps, effort.FirstTrust) is { } end)
            {
                LayoutRepeat repeat = start.Build(end);
                freer = Math.Max(freer, repeat.Panels.Count / repeat.LengthMm);
            }
        }

        return freer > strict * (1 + 1e-6) ? 1000 * freer : null;
    }

    // Seeded restarts near the best: a wrong contact chosen by a start is shaken loose.
    private void Shake()
    {
        Random random = new(request.Seed);
        for (int i = 0; i < effort.Shakes && best is not null && !stop.IsCancellationRequested; i++)
        {
            LayStart start = best.Shaken(random, effort.FirstTrust, request.Part.Outline);
            Keep(start, LayoutPolisher.Polish(start.Model, effort.PolishSteps, effort.FirstTrust));
            progress?.Report(new SearchProgress("shaking the best", 1000 * bestDensity, 0.85 + (0.15 * (i + 1) / effort.Shakes)));
        }
    }
}
