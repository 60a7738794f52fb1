using System.Collections.Concurrent;
using FeltNest.Cost.Compare.Findings;
using FeltNest.Cost.Compare.Outlook;
using FeltNest.Cost.Priced;
using FeltNest.Cost.Sheet;
using FeltNest.Layout;
using FeltNest.Layout.Scan;
using FeltNest.Yield;

namespace FeltNest.Cost.Compare;

/// <summary>Lays one part over every width or offer and puts felt and money side by side.</summary>
internal sealed class CompareStudy
{
    // Savings of a thousand balls below this are rounding.
    private const decimal Rounding = 0.000001m;

    // Widths of a scan that are laid before the next are begun.
    private const int ScannedTogether = 8;

    private readonly CompareRequest question;
    private readonly WidthLays lays;
    private readonly RowPricing pricing;
    private readonly LayoutFrontSource search;
    private readonly CancellationToken stop;
    private readonly ConcurrentDictionary<CompareCase, LayFront> fronts = [];

    private CompareStudy(CompareRequest question, LayoutFrontSource search, CancellationToken stop)
    {
        this.question = question;
        this.search = search;
        this.stop = stop;
        pricing = new RowPricing(question);
        Widest = question.Cases.Max(c => c.Offer?.WidthMm ?? c.WidthMm);

        // One millimetre of width more is asked for too.
        lays = new WidthLays(question.Lay with { RollWidthMm = Widest + 1 }, question.Scan, search);
    }

    private double Widest { get; }

    /// <summary>Runs a comparison.</summary>
    /// <param name="question">What is compared.</param>
    /// <param name="progress">Told each row as it is done; may be null.</param>
    /// <param name="stop">Ends the work with the rows done so far.</param>
    /// <exception cref="InputException">A number out of range, currencies without a rate, a price by the kilogram without a mass, a kept
    /// die of several bands.</exception>
    /// <exception cref="NoAnswerException">No case has a lay; the message is the first one's.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the first row was done.</exception>
    public static Comparison Run(CompareRequest question, IProgress<CompareRow>? progress = null, CancellationToken stop = default) =>
        Run(question, progress, Source(question), stop);

    // Without costs nothing can be weighed against felt: one layout is enough.
    private static LayoutFrontSource Source(CompareRequest question) => question.Costs is null
        ? (request, stop) => [LayoutSearch.Of(request, stop)]
        : (request, stop) => LayoutSearch.Front(request, LayFront.MostMoreFelt, stop);

    /// <summary>The same with what gives the layouts of a width.</summary>
    internal static Comparison Run(
        CompareRequest question, IProgress<CompareRow>? progress, LayoutFrontSource search, CancellationToken stop)
    {
        // What is wrong with money, or with the die, is said before any long work.
        foreach (CompareCase item in question.Cases)
        {
            _ = RowPricing.PriceOf(question, item) is { } price ? RowPricing.CostsOf(question).RateOf(price.Currency) : 0;
        }

        _ = question.Kept is null ? [] : KeptDie.Widths(question.Kept, 0);
        return new CompareStudy(question, search, stop).Run(progress);
    }

    private Comparison Run(IProgress<CompareRow>? progress)
    {
        (List<CompareRow> rows, List<(string Name, string Reason)> unanswered) = Answered(progress);
        if (rows.Count == 0)
        {
            throw unanswered.Count > 0 ? new NoAnswerException(unanswered[0].Reason) : new OperationCanceledException(stop);
        }

        CompareRow[] ranked = CompareRanking.Of(rows);
        CompareRow best = ranked.First(r => r.Rank == 1);
        RollLayout? die = (question.Kept is { } kept ? kept with { Trims = question.Lay.Trims } : null)
            ?? (best.Layout.Bands.Count == 1 ? best.Layout : null);
        (IReadOnlyList<SweepPoint> sweep, IReadOnlyList<Crossover> crossovers) = WidthSweep.Of(question, lays, ranked, stop);
        MillimetreStudy millimetres = new(question, lays, pricing, search, stop);
        IReadOnlyList<LengthValue> values = stop.IsCancellationRequested ? [] : millimetres.Values(best, Widest);
        (IReadOnlyList<RankFlip> flips, IReadOnlyList<CostSwing> swings, IReadOnlyList<GangChoice> gang) = Weighed(ranked);
        return new Comparison
        {
            Question = question,
            Rows = ranked,
            Unanswered = unanswered,
            Sweep = sweep,
            Crossovers = crossovers,
            Die = die,
            DropWidths = die is null ? [] : KeptDie.Widths(die, Widest * 1.1),
            BreakEvens = CompareRanking.BreakEvens(ranked, item => pricing.Ways(item, fronts[item])),
            Values = stop.IsCancellationRequested ? [] : values,
            Outlook = OutlookOf(ranked),
            Years = question.Scan
                ? []
                : YearStudy.Of(
                    question, ranked, (item, more) => pricing.Cheapest(item, fronts[item], moreCavities: more), millimetres.SmallerGap),
            Flips = flips,
            Swings = swings,
            Gang = gang,
            CutShort = stop.IsCancellationRequested,
        };
    }

    private (List<CompareRow> Rows, List<(string Name, string Reason)> Unanswered) Answered(IProgress<CompareRow>? progress)
    {
        List<CompareRow> rows = [];
        List<(string Name, string Reason)> unanswered = [];

        // A search uses all cores by itself; widths of a scan are laid side by side and taken in order.
        foreach (CompareCase[] some in question.Cases.Chunk(question.Scan ? ScannedTogether : 1))
        {
            Task<(CompareRow? Row, string? Reason)>[] begun = [.. some.Select(item => Task.Run(() => Tried(item), CancellationToken.None))];
            foreach ((CompareCase item, Task<(CompareRow? Row, string? Reason)> task) in some.Zip(begun))
            {
                (CompareRow? row, string? reason) = task.GetAwaiter().GetResult();
                if (reason is not null)
                {
                    unanswered.Add((item.Name, reason));
                }
                else if (stop.IsCancellationRequested)
                {
                    // A lay that was cut short would make its row look worse than the others: it is left out.
                    return (rows, unanswered);
                }
                else
                {
                    rows.Add(row!);
                    progress?.Report(row!);
                }
            }
        }

        return (rows, unanswered);
    }

    private (CompareRow? Row, string? Reason) Tried(CompareCase item)
    {
        try
        {
            return (Row(item), null);
        }
        catch (NoAnswerException none)
        {
            return (null, none.Message);
        }
    }

    private CompareRow Row(CompareCase item)
    {
        LayFront front = lays.On(item.WidthMm, item.Trims, stop);
        LayChoice taken = pricing.Cheapest(item, front);
        fronts[item] = front;
        NominalWidth? nominal = null;
        if (item.Offer is { } offer && offer.WidthMm > item.WidthMm && !stop.IsCancellationRequested)
        {
            LayChoice wide = pricing.Cheapest(item, lays.On(offer.WidthMm, item.Trims, stop));
            nominal = new NominalWidth
            {
                WidthMm = offer.WidthMm,
                PanelsPerMetre = wide.Layout.PanelsPerMetre,
                SquareMetresPerThousandBalls = wide.SquareMetres,
                Total = wide.Sheet?.Total,
            };
        }

        return new CompareRow
        {
            Case = item,
            Rank = 0,
            Layout = taken.Layout,
            MostPanels = taken.MostPanels,
            Yield = YieldAccount.Of(taken.Layout),
            Account = taken.Account,
            Sheet = taken.Sheet,
            LeastFelt = pricing.LeastFelt(item, front),
            Front = pricing.Worth(item, front),
            Nominal = nominal,
            Kept = Kept(item, taken.Sheet),
            Further = taken.Layout.Bands.Count > 1 ? Further(item, taken.Layout, taken.Sheet) : null,
        };
    }

    private SecondDie? Further(CompareCase item, RollLayout layout, CostSheet? sheet)
    {
        if (stop.IsCancellationRequested)
        {
            return null;
        }

        LayoutRequest one =
            question.Lay with { RollWidthMm = item.WidthMm, Trims = item.Trims, Rules = question.Lay.Rules with { Bands = 1 } };
        LayChoice cheapest = pricing.Cheapest(item, new LayFront(search(one, stop)));
        (RollLayout best, CostSheet? cost) = (cheapest.Layout, cheapest.Sheet);
        decimal? saved = cost?.Total - sheet?.Total;
        decimal? price = (sheet?.Die?.Price * layout.Bands.Count) - (cost?.Die?.Price * best.Bands.Count);
        return new SecondDie
        {
            Dies = layout.Bands.Count,
            OneDiePanelsPerMetre = best.PanelsPerMetre,
            OneDieTotal = cost?.Total,
            PaysAfterThousandBalls = saved > Rounding ? price / saved : null,
        };
    }

    private KeptDieRow? Kept(CompareCase item, CostSheet? sheet)
    {
        // Where the felt is trimmed by the offer, the die has what the offer's trims leave it.
        if (question.Kept is not { } made || KeptDie.Widths(made with { Trims = item.Trims }, item.WidthMm) is not { Count: > 0 } fitting)
        {
            return null;
        }

        RollLayout die = made with { Trims = item.Trims };
        DropWidth most = fitting.MaxBy(d => (d.PanelsPerMetre, -d.LeastWidthMm))!;
        (FeltAccount felt, CostSheet? cost) =
            pricing.Priced(item, DroppedRows.On(die, most, item.WidthMm), pricing.LossesOf(item).MostPanelsPerStrike);
        decimal? saved = cost?.Total - sheet?.Total;
        decimal? after = saved > Rounding ? sheet?.Die?.Price / saved : null;
        return new KeptDieRow
        {
            Rows = most.Rows,
            PanelsPerMetre = most.PanelsPerMetre,
            SquareMetresPerThousandBalls = felt.PerThousandBalls.SquareMetres,
            Total = cost?.Total,
            RunningCost = cost?.WithoutDie,
            NewDiePaysAfterThousandBalls = after,
        };
    }

    private CostOutlook? OutlookOf(CompareRow[] rows) => question.Costs is { } costs && !question.Scan && !stop.IsCancellationRequested
        && !Array.Exists(rows, r => r.Sheet is null) ? OutlookStudy.Of(rows, pricing, costs) : null;

    private (IReadOnlyList<RankFlip> Flips, IReadOnlyList<CostSwing> Swings, IReadOnlyList<GangChoice> Gang) Weighed(CompareRow[] rows)
    {
        if (question.Costs is not { } costs || question.Scan || Array.Exists(rows, r => r.Sheet is null))
        {
            return ([], [], []);
        }

        IReadOnlyList<Assumption> assumptions = Assumptions.Of(costs, rows);
        RankFlips flips = new(rows, (row, change) => pricing.Cheapest(row.Case, fronts[row.Case], change).Sheet!.Total);
        CompareRow best = rows.First(r => r.Rank == 1);
        return (flips.Flips(assumptions), flips.Swings(assumptions), costs.Gang is null ? [] : GangStudy.Of(costs, (changed, plies) =>
        {
            try
            {
                LayChoice way = pricing.Cheapest(best.Case, fronts[best.Case], new PriceChange(changed), plies);
                return (way.Account, way.Sheet!);
            }
            catch (NoAnswerException)
            {
                // A roll too short for one strike of this die.
                return null;
            }
        }));
    }
}
