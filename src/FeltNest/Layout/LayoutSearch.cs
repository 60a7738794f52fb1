using FeltNest.Layout.Bands;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Plane;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout;

/// <summary>Lays a part over a roll width so that a metre of roll gives the most panels.</summary>
/// <remarks>Rows over the width, rows over the runs between forbidden stripes, and bands with a repeat of their own are looked for in turn; the best that the rules on dies allow
/// is verified by <see cref="LayoutCheck"/> and returned.</remarks>
public sealed class LayoutSearch
{
    private readonly LayoutRequest request;
    private readonly IProgress<SearchProgress>? progress;
    private readonly CancellationToken stop;
    private readonly SearchEffort effort;
    private readonly TiltRange tilts;
    private readonly List<LayCandidate> found = [];

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
    /// <exception cref="NoAnswerException">The part fits the cloth at no allowed tilt, or rules contradict each other; the message says what would work.</exception>
    public static RollLayout Run(LayoutRequest request, IProgress<SearchProgress>? progress = null, CancellationToken stop = default)
    {
        LayoutLimits.Require(request);
        return new LayoutSearch(request, progress, stop).Run();
    }

    private RollLayout Run()
    {
        IReadOnlyList<(double Low, double High)> runs = FreeCloth.Of(request);
        (double low, double high) = runs.MaxBy(run => run.High - run.Low);
        RowSearch rows = new(FreeCloth.Run(request, low, high), progress, stop);
        if (runs.Count > 1)
        {
            OverRuns(runs, rows.Tables);
        }
        else
        {
            found.AddRange(rows.Run());
        }

        if (runs.Count == 1 && (request.Rules.Bands > 1 || request.Rules.Rows == RowRule.Any))
        {
            found.AddRange(BandSearch.Best(FreeCloth.Run(request, low, high), rows.Tables, tilts, effort, stop));
        }

        double plane = PlaneLattice.BestDensity(request, rows.Tables, effort, stop) * request.Part.AreaMm2;
        SearchRecord record = new(
            request.Seed, request.Effort, stop.IsCancellationRequested, string.Empty,
            stop.IsCancellationRequested ? null : new GridProof(rows.Tables.TiltStepDeg, rows.Tables.Grid), 100 * plane, 0, rows.FreerPanelsPerMetre);
        return Verified(record);
    }

    // One die over all runs; and, where so many dies are allowed, a die for every run.
    private void OverRuns(IReadOnlyList<(double Low, double High)> runs, RowTables tables)
    {
        foreach (LayStart start in RunRows.Starts(request, runs, tables, tilts, effort.Starts))
        {
            if ((!stop.IsCancellationRequested || found.Count == 0) && LayoutPolisher.Polish(start.Model, effort.PolishSteps, effort.FirstTrust) is { } end)
            {
                found.Add(new LayCandidate(start.Method, [new LayoutBand(request.Usable.Low, request.Usable.High, start.Build(end))]));
                progress?.Report(new SearchProgress("polishing rows", 1000 * found.Max(f => f.Density), 0.3));
            }
        }

        double least = tilts.Flattest(request.Part.Outline).Height;
        (double Low, double High)[] wide = [.. runs.Where(run => run.High - run.Low >= least)];
        if (wide.Length > 1 && wide.Length <= request.Rules.Bands && !stop.IsCancellationRequested)
        {
            LayCandidate[] each = [.. wide.Select(run => new RowSearch(FreeCloth.Run(request, run.Low, run.High), null, stop).Run()).Where(lays => lays.Count > 0).Select(lays => lays[^1])];
            found.Add(new LayCandidate($"{each.Length} runs of cloth, each with its own repeat", [.. each.SelectMany(lay => lay.Bands)]));
        }
    }

    // The best layout that the rules on dies allow and the independent check passes. Two thin spikes that cross between their corners can deceive the polish, never the
    // check; rows of bounding boxes pass always.
    private RollLayout Verified(SearchRecord record)
    {
        foreach (LayCandidate candidate in found.OrderByDescending(f => f.Density).Append(BoxRows.Lay(request, tilts)))
        {
            LayoutRepeat?[] repeats = [.. candidate.Bands.Select(b => Struck(b.Repeat))];
            if (Array.Exists(repeats, r => r is null))
            {
                continue;
            }

            RollLayout layout = new(
                [request.Part], request.RollWidthMm, request.Trims, request.GapMm, request.Rules,
                [.. candidate.Bands.Select((b, i) => b with { Repeat = repeats[i]! })], record with { Method = candidate.Method });
            LayoutVerdict verdict = LayoutCheck.Verify(layout);
            if (verdict.Passed)
            {
                return layout with { Search = layout.Search with { LeastGapMm = verdict.LeastGapMm } };
            }
        }

        if (request.Rules.Die is null)
        {
            throw new InvalidOperationException("no layout passes its check");
        }

        if (request.Rules.LeastRepeatMm == 0)
        {
            throw new NoAnswerException($"no layout was found that a die of this size cuts in equal strikes ({DieWords(request.Rules.Die)}): allow a larger bed, or another tilt");
        }

        // One panel of a row is always a die, so it is the least repeat that asks for more of them in a row than the die may hold.
        LayoutRepeat longest = found.Select(f => f.Bands[0].Repeat).Append(BoxRows.Lay(request, tilts).Bands[0].Repeat).MaxBy(r => r.LengthMm)!;
        throw new NoAnswerException(FormattableString.Invariant(
            $"the limit on the die ({DieWords(request.Rules.Die)}) and the least repeat of {request.Rules.LeastRepeatMm:0.##} mm contradict each other: a die then holds at least {Math.Ceiling(request.Rules.LeastRepeatMm / longest.LengthMm):0} panels in a row; with this die a least repeat of up to {longest.LengthMm:0.##} mm works"));
    }

    private static string DieWords(DieLimit die) => string.Join(", ", new[]
    {
        die.MostPanels is { } panels ? $"at most {panels} panels" : null,
        die.BedLengthMm is { } length ? FormattableString.Invariant($"bed {length:0.##} x {die.BedWidthMm:0.##} mm") : null,
    }.OfType<string>());

    // Written several times over up to the least repeat, and divided into strikes of a die where dies are limited; null where no division keeps the limit.
    private LayoutRepeat? Struck(LayoutRepeat repeat)
    {
        int times = StrikeDivision.Times(repeat, request.Rules.LeastRepeatMm);
        return request.Rules.Die is { } die ? StrikeDivision.Divided(repeat, times, [request.Part], die) : times == 1 ? repeat : new LayoutRepeat(
            times * repeat.LengthMm,
            [.. from panel in repeat.Panels from k in Enumerable.Range(0, times) select panel with { XMm = panel.XMm + (k * repeat.LengthMm) }]);
    }
}
