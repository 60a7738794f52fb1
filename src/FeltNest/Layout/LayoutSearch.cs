using FeltNest.Layout.Bands;
using FeltNest.Layout.Check;
using FeltNest.Layout.Free;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Plane;
using FeltNest.Layout.Polish;
using FeltNest.Layout.Quality;
using FeltNest.Layout.Rows;
using FeltNest.Layout.Rows.Tables;

namespace FeltNest.Layout;

/// <summary>Lays a part over a roll width so that a metre of roll gives the most panels.</summary>
/// <remarks>Rows over the width, rows over the runs between forbidden stripes, and bands with a repeat of their own are looked for in turn;
/// the best that the rules on dies allow is verified by <see cref="LayoutCheck"/> and returned.</remarks>
internal sealed class LayoutSearch
{
    private readonly LayoutRequest request;
    private readonly IProgress<SearchProgress>? progress;
    private readonly CancellationToken stop;
    private readonly SearchEffort effort;
    private readonly TiltRange tilts;
    private readonly List<LayCandidate> found = [];
    private readonly List<LayCandidate> refused = [];
    private readonly bool pricesRules;
    private readonly List<LayCandidate> others = [];
    private double? freerRows;
    private double frontShare;

    private LayoutSearch(LayoutRequest request, IProgress<SearchProgress>? progress, bool pricesRules, CancellationToken stop)
    {
        this.pricesRules = pricesRules;
        this.request = request;
        this.progress = progress;
        this.stop = stop;
        effort = SearchEffort.Of(request);
        tilts = TiltRange.Of(request.Rules);
    }

    /// <summary>The same as a <see cref="LayoutSource"/>: the layout of a request, told to nobody on the way.</summary>
    public static RollLayout Of(LayoutRequest request, CancellationToken stop) => Run(request, null, stop);

    /// <summary>Finds a layout.</summary>
    /// <param name="request">Part, roll and rules.</param>
    /// <param name="progress">Told the best so far; may be null.</param>
    /// <param name="stop">Ends the search early with the best so far, marked as cut short; the first good layout is always
    /// finished.</param>
    /// <exception cref="InputException">A number out of its range.</exception>
    /// <exception cref="NoAnswerException">The part fits the cloth at no allowed tilt, or rules contradict each other; the message says
    /// what would work.</exception>
    public static RollLayout Run(LayoutRequest request, IProgress<SearchProgress>? progress = null, CancellationToken stop = default)
    {
        LayoutLimits.Require(request);

        // A second part has a band, and so a die, of its own.
        request =
            request.Second is null ? request : request with { Rules = request.Rules with { Bands = Math.Max(2, request.Rules.Bands) } };
        return new LayoutSearch(request, progress, pricesRules: true, stop).Run();
    }

    /// <summary>The layouts that are worth a price, as a <see cref="LayoutFrontSource"/>: what <see cref="Of"/> gives first, then the best
    /// found of every other number of panels in a repeat, up to <paramref name="moreFelt"/> looser. All come from one search and pass the
    /// check.</summary>
    /// <param name="request">Part, roll and rules.</param>
    /// <param name="moreFelt">How much looser a layout may be, as a share.</param>
    /// <param name="stop">Ends the search early with the best so far.</param>
    /// <exception cref="InputException">A number out of its range.</exception>
    /// <exception cref="NoAnswerException">The part does not fit.</exception>
    public static IReadOnlyList<RollLayout> Front(LayoutRequest request, double moreFelt, CancellationToken stop)
    {
        if (request.Second is not null)
        {
            return [Of(request, stop)];
        }

        LayoutLimits.Require(request);
        LayoutSearch search = new(request, null, pricesRules: true, stop) { frontShare = moreFelt };
        RollLayout best = search.Run();
        return [best, .. search.Others(best, moreFelt)];
    }

    // The best of every other number of panels, densest first.
    private IEnumerable<RollLayout> Others(RollLayout best, double moreFelt)
    {
        HashSet<string> taken = [Panels(best.Bands)];
        double least = best.PanelsPerMetre / 1000 / (1 + moreFelt);
        foreach (LayCandidate candidate in found.Concat(others).Where(f => f.Density >= least).OrderByDescending(f => f.Density))
        {
            LayoutRepeat?[] repeats = [.. candidate.Bands.Select(b => Struck(b.Repeat))];
            if (Array.Exists(repeats, r => r is null))
            {
                continue;
            }

            RollLayout layout = LayoutOf(candidate, repeats, best.Search with { Methods = [], RuleCosts = [], Loss = null });
            if (!taken.Contains(Panels(layout.Bands)) && LayoutCheck.Verify(layout) is { Passed: true } verdict)
            {
                taken.Add(Panels(layout.Bands));
                yield return layout with { Search = layout.Search with { LeastGapMm = verdict.LeastGapMm!.Value } };
            }
        }
    }

    private static string Panels(IReadOnlyList<LayoutBand> bands) =>
        string.Join(' ', bands.Select(b => FormattableString.Invariant($"{b.Repeat.Panels.Count}")));

    private RollLayout Run()
    {
        RowTables tables = Find();

        // The plane's lattice with and without a gap side by side.
        Task<double>? noGap = request.GapMm == 0 ? null : Task.Run(DensityWithoutGap, CancellationToken.None);
        double plane = PlaneLattice.BestDensity(request, tables, effort, stop);
        RollLayout layout = Verified(new SearchRecord
        {
            Seed = request.Seed,
            Effort = request.Effort,
            CutShort = false,
            Method = string.Empty,
            ProvedOnGrid = new GridProof { AngleStepDeg = tables.TiltStepDeg, PitchStepMm = tables.Grid },
            PlaneUtilisationPercent = 100 * plane * request.Part.AreaMm2,
            LeastGapMm = 0,
            FreerRowsPanelsPerMetre = freerRows,
        });

        // With two parts a rule's cost is not a number of panels.
        IReadOnlyList<RuleCost> costs = pricesRules && request.Second is null && !stop.IsCancellationRequested
            ? RulePrices.Of(request, layout, tilts.IsFree, Freer) : [];
        bool cut = stop.IsCancellationRequested;
        return layout with
        {
            Search = layout.Search with
            {
                CutShort = cut,
                ProvedOnGrid = cut ? null : layout.Search.ProvedOnGrid,
                UpperBoundPercent = UtilisationBound.Percent(request),
                Loss = cut || layout.Parts.Count > 1
                    ? null
                    : LossAccount.Of(request, layout, Math.Max(plane, noGap?.GetAwaiter().GetResult() ?? 0), plane),
                Methods = Methods(),
                RuleCosts = costs,
            },
        };
    }

    // 0 where nothing was found yet: parts of many spikes may settle nowhere.
    private double BestPerMetre => 1000 * found.Select(f => f.Density).DefaultIfEmpty(0).Max();

    // All ways of searching that the request gives work to.
    private RowTables Find()
    {
        IReadOnlyList<(double Low, double High)> runs = FreeCloth.Of(request);
        (double low, double high) = runs.MaxBy(run => run.High - run.Low);
        LayoutRequest widest = FreeCloth.Run(request, low, high);
        RowSearch rows = new(widest, progress, stop) { FrontShare = frontShare };
        if (request.Second is { } second)
        {
            found.AddRange(TwoParts.Best(widest, second, rows.Tables, stop));
            if (second.SharePercent is not null)
            {
                return rows.Tables;
            }
        }

        if (runs.Count > 1)
        {
            OverRuns(runs, rows.Tables);
            return rows.Tables;
        }

        found.AddRange(rows.Run());
        others.AddRange(rows.Others);
        freerRows = rows.FreerPanelsPerMetre;
        if ((request.Rules.Bands > 1 || request.Rules.Rows == RowRule.Any) && !stop.IsCancellationRequested)
        {
            found.AddRange(BandSearch.Best(widest, rows.Tables, tilts, effort, stop));
            progress?.Report(new SearchProgress { Stage = "bands", PanelsPerMetre = BestPerMetre, Share = 0.7 });
        }

        bool free = !tilts.IsFree || request.Rules.Rows != RowRule.Same || effort.FreeOnSameRows;
        if (free && found.Where(f => f.Bands.Count == 1).MaxBy(f => f.Density) is { } one && !stop.IsCancellationRequested
            && FreeSearch.Better(widest, tilts, one.Bands[0].Repeat, rows.Tables.HasHalfTurn, effort, stop) is { } better)
        {
            found.Add(better);
        }

        progress?.Report(new SearchProgress { Stage = "free search", PanelsPerMetre = BestPerMetre, Share = 0.9 });
        return rows.Tables;
    }

    private double DensityWithoutGap()
    {
        LayoutRequest bare = request with { GapMm = 0, Effort = 1, Rules = request.Rules with { WarpAngleDeg = null } };
        SearchEffort little = SearchEffort.Of(bare);
        return PlaneLattice.BestDensity(bare, new RowTables(bare, TiltRange.Of(bare.Rules), little), little, stop);
    }

    private double Freer(LayoutRequest shorter) => new LayoutSearch(shorter, null, pricesRules: false, stop).Run().PanelsPerMetre;

    // What the rules on dies forbid or the check refused was not reached.
    private MethodReach[] Methods() =>
        [.. found.Except(refused).GroupBy(f => f.Method).Select(g => g.MaxBy(f => f.Density)!)
            .OrderByDescending(f => f.Density).Select(f => new MethodReach(f.Method, 1000 * f.Density, f.Bands.Count))];

    // One die over all runs; and, where so many dies are allowed, a die for every run.
    private void OverRuns(IReadOnlyList<(double Low, double High)> runs, RowTables tables)
    {
        foreach (LayStart start in RunRows.Starts(request, runs, tables, tilts, effort.Starts))
        {
            if ((!stop.IsCancellationRequested || found.Count == 0)
                && LayoutPolisher.Polish(start.Model, effort.PolishSteps, effort.FirstTrust) is { } end)
            {
                found.Add(new LayCandidate(start.Method, [new LayoutBand
                {
                    YFromMm = request.Usable.Low,
                    YToMm = request.Usable.High,
                    Repeat = start.Build(end),
                }]));
                progress?.Report(new SearchProgress { Stage = "polishing rows", PanelsPerMetre = BestPerMetre, Share = 0.3 });
            }
        }

        double least = tilts.Flattest(request.Part.Outline).Height;
        (double Low, double High)[] wide = [.. runs.Where(run => run.High - run.Low >= least)];
        if (wide.Length > 1 && wide.Length <= request.Rules.Bands && !stop.IsCancellationRequested)
        {
            LayCandidate[] each =
            [
                .. wide
                    .Select(run => new RowSearch(FreeCloth.Run(request, run.Low, run.High), null, stop).Run())
                    .Where(lays => lays.Count > 0)
                    .Select(lays => lays[^1]),
            ];
            found.Add(new LayCandidate($"{each.Length} runs of felt, each with its own repeat", [.. each.SelectMany(lay => lay.Bands)]));
        }
    }

    // Panels count alike where there is one part, by their area where there are two.
    private double Worth(LayCandidate lay) => request.Second is null ? lay.Density : lay.AreaShare(request.Parts);

    // The best layout that the rules on dies allow and the independent check passes. Two thin spikes that cross between their corners can
    // deceive the polish, never the check; rows of bounding boxes pass always.
    private RollLayout Verified(SearchRecord record)
    {
        foreach (LayCandidate candidate in found
            .OrderByDescending(Worth)
            .Concat(request.Second?.SharePercent is null ? [BoxRows.Lay(request, tilts)] : []))
        {
            LayoutRepeat?[] repeats = [.. candidate.Bands.Select(b => Struck(b.Repeat))];
            if (Array.Exists(repeats, r => r is null))
            {
                refused.Add(candidate);
                continue;
            }

            RollLayout layout = LayoutOf(candidate, repeats, record);
            CheckVerdict verdict = LayoutCheck.Verify(layout);
            if (verdict.Passed)
            {
                refused.AddRange(found.Where(f => f.Bands.Any(b => Struck(b.Repeat) is null)));
                return layout with { Search = layout.Search with { LeastGapMm = verdict.LeastGapMm!.Value } };
            }

            refused.Add(candidate);
        }

        throw NoLayout.Why(request, found.Append(BoxRows.Lay(request, tilts)));
    }

    private RollLayout LayoutOf(LayCandidate candidate, LayoutRepeat?[] repeats, SearchRecord record) => new()
    {
        Parts = candidate.Bands.Any(b => b.Repeat.Panels.Any(p => p.Part > 0)) ? request.Parts : [request.Part],
        RollWidthMm = request.RollWidthMm,
        Trims = request.Trims,
        GapMm = request.GapMm,
        Rules = request.Rules,
        Bands = [.. candidate.Bands.Select((b, i) => b with { Repeat = repeats[i]! })],
        Search = record with { Method = candidate.Method },
    };

    // Written several times over up to the least repeat, and divided into strikes of a die where dies are limited; null where no division
    // keeps the limit.
    private LayoutRepeat? Struck(LayoutRepeat repeat)
    {
        int times = StrikeDivision.Times(repeat, request.Rules.LeastRepeatMm);
        if (request.Rules.Die is { } die)
        {
            return StrikeDivision.Divided(repeat, times, request.Parts, die);
        }

        return times == 1
            ? repeat
            : new LayoutRepeat(times * repeat.LengthMm, [.. StrikeDivision.Written(repeat.Panels, times, repeat.LengthMm)]);
    }
}
