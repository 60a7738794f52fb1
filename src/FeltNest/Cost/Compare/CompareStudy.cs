using FeltNest.Cost.Compare.Findings;
using FeltNest.Cost.Offers;
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

    private readonly CompareRequest question;
    private readonly WidthLays lays;
    private readonly LayoutSource search;
    private readonly CancellationToken stop;

    private CompareStudy(CompareRequest question, LayoutSource search, CancellationToken stop)
    {
        this.question = question;
        this.search = search;
        this.stop = stop;
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
        Run(question, progress, LayoutSearch.Of, stop);

    /// <summary>The same with what gives the layout of a width.</summary>
    internal static Comparison Run(
        CompareRequest question, IProgress<CompareRow>? progress, LayoutSource search, CancellationToken stop)
    {
        // What is wrong with money, or with the die, is said before any long work.
        foreach (CompareCase item in question.Cases)
        {
            _ = PriceOf(question, item) is { } price ? CostsOf(question).RateOf(price.Currency) : 0;
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
        IReadOnlyList<LengthValue> values = stop.IsCancellationRequested ? [] : Values(best);
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
            BreakEvens = ranked.Any(r => r.Sheet is not null) ? CompareRanking.BreakEvens(ranked, CostsOf(question)) : [],
            Values = stop.IsCancellationRequested ? [] : values,
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
        foreach (CompareCase item in question.Cases)
        {
            try
            {
                CompareRow row = Row(item);

                // A lay that was cut short would make its row look worse than the others: it is left out.
                if (stop.IsCancellationRequested)
                {
                    break;
                }

                rows.Add(row);
                progress?.Report(row);
            }
            catch (NoAnswerException none)
            {
                unanswered.Add((item.Name, none.Message));
            }
        }

        return (rows, unanswered);
    }

    private static FeltPrice? PriceOf(CompareRequest question, CompareCase item) => item.Offer?.Price ?? question.Costs?.Felt;

    private static CostInputs CostsOf(CompareRequest question) =>
        question.Costs ?? CostInputs.Bare(question.Cases.Select(c => c.Offer?.Price.Currency).First(c => c is not null)!);

    private CompareRow Row(CompareCase item)
    {
        RollLayout layout = lays.On(item.WidthMm, item.Trims, stop);
        (FeltAccount account, CostSheet? sheet) = Priced(item, LayPlan.Of(layout));
        NominalWidth? nominal = null;
        if (item.Offer is { } offer && offer.WidthMm > item.WidthMm && !stop.IsCancellationRequested)
        {
            RollLayout wide = lays.On(offer.WidthMm, item.Trims, stop);
            (FeltAccount felt, CostSheet? cost) = Priced(item, LayPlan.Of(wide));
            nominal = new NominalWidth
            {
                WidthMm = offer.WidthMm,
                PanelsPerMetre = wide.PanelsPerMetre,
                SquareMetresPerThousandBalls = felt.PerThousandBalls.SquareMetres,
                Total = cost?.Total,
            };
        }

        return new CompareRow
        {
            Case = item,
            Rank = 0,
            Layout = layout,
            Yield = YieldAccount.Of(layout),
            Account = account,
            Sheet = sheet,
            Nominal = nominal,
            Kept = Kept(item, sheet),
            Further = layout.Bands.Count > 1 ? Further(item, layout, sheet) : null,
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
        RollLayout best = search(one, stop);
        CostSheet? cost = Priced(item, LayPlan.Of(best)).Sheet;
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

    private (FeltAccount Account, CostSheet? Sheet) Priced(CompareCase item, LayPlan plan, PriceChange? change = null)
    {
        CostInputs? costs = change?.Costs ?? question.Costs;
        FeltLosses losses = costs?.Losses ?? FeltLosses.None;
        losses = item.Offer is { } offer
            ? losses with { RollLengthM = offer.LengthM, FaultPercent = offer.FaultPercent ?? losses.FaultPercent }
            : losses;
        losses = change?.FaultPercent is { } other ? losses with { FaultPercent = other } : losses;
        FeltAccount account =
            FeltAccount.Of(plan, losses, item.Offer?.MassPerAreaGsm ?? costs?.MassPerAreaGsm ?? question.Lay.Part.MassPerAreaGsm);
        FeltPrice? price = item.Offer?.Price ?? costs?.Felt;
        price = change?.Price is { } amount ? price! with { Amount = amount } : price;
        return (account, price is null ? null : CostSheet.Of(account, price, costs ?? CostsOf(question)));
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
        (FeltAccount felt, CostSheet? cost) = Priced(item, DroppedRows.On(die, most, item.WidthMm));
        decimal? saved = cost?.Total - sheet?.Total;
        decimal? after = saved > Rounding ? sheet?.Die?.Price / saved : null;
        return new KeptDieRow
        {
            Rows = most.Rows,
            PanelsPerMetre = most.PanelsPerMetre,
            SquareMetresPerThousandBalls = felt.PerThousandBalls.SquareMetres,
            Total = cost?.Total,
            NewDiePaysAfterThousandBalls = after,
        };
    }

    private (IReadOnlyList<RankFlip> Flips, IReadOnlyList<CostSwing> Swings, IReadOnlyList<GangChoice> Gang) Weighed(CompareRow[] rows)
    {
        if (question.Costs is not { } costs || question.Scan || Array.Exists(rows, r => r.Sheet is null))
        {
            return ([], [], []);
        }

        Dictionary<CompareRow, LayPlan> plans = rows.ToDictionary(r => r, r => LayPlan.Of(r.Layout));
        IReadOnlyList<Assumption> assumptions = Assumptions.Of(costs, rows);
        RankFlips flips = new(rows, (row, change) => Priced(row.Case, plans[row], change).Sheet!.Total);
        CompareRow best = rows.First(r => r.Rank == 1);
        return (flips.Flips(assumptions), flips.Swings(assumptions), costs.Gang is null ? [] : GangStudy.Of(costs, (changed, plies) =>
        {
            try
            {
                (FeltAccount account, CostSheet? sheet) = Priced(best.Case, plans[best] with { Plies = plies }, new PriceChange(changed));
                return (account, sheet!);
            }
            catch (NoAnswerException)
            {
                // A roll too short for one strike of this die.
                return null;
            }
        }));
    }

    // The best row laid again with a millimetre more or less; what does not fit any more is left out.
    private List<LengthValue> Values(CompareRow best)
    {
        CompareCase item = best.Case;
        double gap = question.Lay.GapMm;
        double length = LongerPart.LengthOf(question.Lay.Part);
        List<LengthValue> values = [];
        if (gap >= 1)
        {
            Gap(gap - 1);
        }

        Gap(gap + 1);
        Add(
            FormattableString.Invariant($"width {item.WidthMm + 1:0.###} instead of {item.WidthMm:0.###} mm"), question.Lay,
            item.WidthMm + 1);
        Add(
            FormattableString.Invariant($"panel {length - 1:0.0} instead of {length:0.0} mm long"),
            question.Lay with { Part = LongerPart.Of(question.Lay.Part, -1) }, item.WidthMm);
        return values;

        void Gap(double other) => Add(
            FormattableString.Invariant($"gap {other:0.###} instead of {gap:0.###} mm"), question.Lay with { GapMm = other }, item.WidthMm);

        void Add(string change, LayoutRequest lay, double width)
        {
            try
            {
                WidthLays other =
                    ReferenceEquals(lay, question.Lay) ? lays : new WidthLays(lay with { RollWidthMm = Widest }, question.Scan, search);
                (FeltAccount felt, CostSheet? cost) = Priced(item, LayPlan.Of(other.On(width, item.Trims, stop)));
                values.Add(new LengthValue(
                    change, 1000 * (felt.PerThousandBalls.SquareMetres - best.Account.PerThousandBalls.SquareMetres),
                    1000 * (cost?.Total - best.Total)));
            }
            catch (NoAnswerException) { /* A wider gap may leave no room for the part. */ }
        }
    }
}
