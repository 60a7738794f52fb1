using FeltNest.Layout.Bands;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Plane;
using FeltNest.Layout.Rows;

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
        (double low, double high) = FreeCloth.Of(request).MaxBy(run => run.High - run.Low);
        RowSearch rows = new(FreeCloth.Run(request, low, high), progress, stop);
        found.AddRange(rows.Run());
        if (request.Rules.Bands > 1 || request.Rules.Rows == RowRule.Any)
        {
            found.AddRange(BandSearch.Best(FreeCloth.Run(request, low, high), rows.Tables, tilts, effort, stop));
        }

        double plane = PlaneLattice.BestDensity(request, rows.Tables, effort, stop) * request.Part.AreaMm2;
        SearchRecord record = new(
            request.Seed, request.Effort, stop.IsCancellationRequested, string.Empty,
            stop.IsCancellationRequested ? null : new GridProof(rows.Tables.TiltStepDeg, rows.Tables.Grid), 100 * plane, 0, rows.FreerPanelsPerMetre);
        return Verified(record);
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

        throw new NoAnswerException(request.Rules.Die is { } die
            ? FormattableString.Invariant($"no layout divides into strikes of a die of at most {die.MostPanels?.ToString() ?? "any number of"} panels on a bed of {die.BedLengthMm ?? double.PositiveInfinity:0.##} x {die.BedWidthMm ?? double.PositiveInfinity:0.##} mm: a bed that holds the panel at its tilt and, with a least repeat, a die of that many panels in a row would work")
            : "no layout passes its check");
    }

    // Written several times over up to the least repeat, and divided into strikes of a die where dies are limited; null where no division keeps the limit.
    private LayoutRepeat? Struck(LayoutRepeat repeat)
    {
        int times = Math.Max(1, (int)Math.Ceiling((request.Rules.LeastRepeatMm / repeat.LengthMm) - 1e-12));
        LayoutRepeat whole = times == 1 ? repeat : new LayoutRepeat(
            times * repeat.LengthMm,
            [.. from panel in repeat.Panels from k in Enumerable.Range(0, times) select panel with { XMm = panel.XMm + (k * repeat.LengthMm) }]);
        return request.Rules.Die is { } die ? StrikeDivision.Divided(whole, [request.Part], die) : whole;
    }
}
