using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Findings;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;
using FeltNest.Report;
using FeltNest.Tests.Layout;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Cost.Compare;

/// <summary>Comparisons of squares, whose best lays are plain arithmetic, and of dog bones.</summary>
public sealed class CompareStudyTests
{
    private static readonly Outline Square = Outline.From([new(-25, -25), new(25, -25), new(25, 25), new(-25, 25)]);
    private static readonly CostInputs Costs = CostInputs.Bare("XTS") with
    {
        Losses = FeltLosses.None with { MostPanelsPerStrike = 6 },
        Die = new DieCost { Price = 1000, LifeStrikes = 1_000_000_000, ReRules = 0, ReRulePrice = 0 },
    };

    private static LayoutRequest Lay { get; } =
        Shapes.Request(Square, 100, gap: 0, edge: 0) with { Rules = new LayoutRules(0, 0, RowRule.Same, false) };

    [Fact]
    public void Squares_of_50_on_three_widths_use_what_whole_rows_use()
    {
        Comparison comparison = Compare(Costs, Bare(125), Bare(150), Bare(149));

        // 2, 3 and 2 rows at a pitch of 50 mm; a thousand balls are 2000 panels: 50 m of two rows, 33.33 m of three. The wider roll with
        // spare width loses.
        Assert.Equal([50, 33.333333, 50], comparison.Rows.Select(r => Math.Round(r.Account.PerThousandBalls.Metres, 6)));
        Assert.Equal([6.25, 5, 7.45], comparison.Rows.Select(r => Math.Round(r.Account.PerThousandBalls.SquareMetres, 6)));
        Assert.Equal([2, 1, 3], comparison.Rows.Select(r => r.Rank));
        Assert.Equal("150 mm", comparison.Best.Case.Name);
        Assert.All(comparison.Rows, r => Assert.Null(r.Total));
        Assert.All(comparison.Rows, r => Assert.Equal(100, r.Account.Shares.Named.Sum(s => s.Percent), 1e-9));
    }

    [Fact]
    public void Offers_are_planned_on_the_guaranteed_width_and_show_the_gain_at_the_nominal_one()
    {
        FeltOffer offer = Offer("A", 150, 3m) with { LeastWidthMm = 149 };
        CompareRow row = Assert.Single(Compare(null, CompareCase.Of(offer, EdgeTrims.Both(0))).Rows);

        // A roll of 9.001 m takes 180 squares a row; 1 mm is left over.
        Assert.Equal((149d, 50.005556), (row.Case.WidthMm, Math.Round(row.Account.PerThousandBalls.Metres, 6)));
        Assert.Equal(150.016667m, Math.Round(row.Total!.Value, 6));
        Assert.Equal(150, row.Nominal!.WidthMm);
        Assert.Equal(100.011111m, Math.Round(row.Nominal.Total!.Value, 6));
    }

    [Fact]
    public void At_its_break_even_price_an_offer_costs_what_the_other_does()
    {
        Comparison comparison =
            Compare(null, CompareCase.Of(Offer("A", 150, 3m), EdgeTrims.Both(0)), CompareCase.Of(Offer("B", 100, 2.5m), EdgeTrims.Both(0)));

        // A: 33.337 m at 3 are 100.01; B: 50.006 m at 2.5 are 125.01. B equals A at 2, A equals B at 3.75.
        Assert.Equal("A", comparison.Best.Case.Name);
        Assert.Equal(2m, Math.Round(comparison.BreakEvens.Single(e => e.Offer == "B").Price.Amount, 6));
        Assert.Equal(3.75m, Math.Round(comparison.BreakEvens.Single(e => e.Offer == "A").Price.Amount, 6));
    }

    [Fact]
    public void The_figure_that_makes_another_one_the_cheapest_is_found_where_the_totals_meet()
    {
        // A: 33.337 m at 3 are 100.01; B: 50.006 m at 2.2 are 110.01; faults f of A alone divide its felt by 1 - f: equal at f = 1/11,
        // 9.0909 %.
        CompareCase[] cases =
        [
            CompareCase.Of(Offer("A", 150, 3m), EdgeTrims.Both(0)), CompareCase.Of(Offer("B", 100, 2.2m), EdgeTrims.Both(0)),
        ];
        Comparison comparison = Compare(Costs with { Die = null }, cases);

        RankFlip flip = Assert.Single(comparison.Flips);
        Assert.Equal(("faults of A alone, %", 0d, "B"), (flip.Assumption, flip.Now, flip.Best));
        Assert.Equal(100.0 / 11, flip.At, 1e-4);
    }

    [Fact]
    public void Currencies_are_not_mixed_without_a_rate()
    {
        FeltOffer foreign = Offer("B", 100, 5m) with { Price = new FeltPrice(5m, PriceUnit.Metre, "XXX") };
        CompareCase[] cases = [CompareCase.Of(Offer("A", 150, 3m), EdgeTrims.Both(0)), CompareCase.Of(foreign, EdgeTrims.Both(0))];

        Assert.Contains(
            "XXX cannot be mixed with XTS", Assert.Throws<InputException>(() => Compare(null, cases)).Message, StringComparison.Ordinal);
        Comparison comparison = Compare(Costs with { Die = null, Rates = [new CurrencyRate("XXX", 0.5m)] }, cases);
        Assert.Equal(125.013889m, Math.Round(comparison.Rows[1].Total!.Value, 6));
    }

    [Fact]
    public void A_kept_die_of_three_rows_keeps_two_below_150_and_says_when_a_new_one_pays()
    {
        RollLayout kept = ByHand(50, 25, 75, 125);
        FeltPrice price = new(3m, PriceUnit.Metre, "XTS");
        CompareRequest question = new(Lay, [Bare(149), Bare(155)], false, Costs with { Felt = price }, kept);
        Comparison comparison = CompareStudy.Run(question, null, Boxes, TestContext.Current.CancellationToken);

        Assert.Equal([50, 100, 150], comparison.DropWidths.Take(3).Select(d => Math.Round(d.LeastWidthMm, 6)));
        Assert.Equal([2, 3], comparison.Rows.Select(r => r.Kept!.Rows));
        Assert.All(comparison.Rows, r => Assert.Equal((double)r.Total!.Value, (double)r.Kept!.Total!.Value, 1e-6));
        Assert.All(comparison.Rows, r => Assert.Null(r.Kept!.NewDiePaysAfterThousandBalls));
    }

    [Fact]
    public void A_kept_die_has_what_the_offers_own_trims_leave_it_however_it_was_laid()
    {
        // Three rows of 50 need 150 mm. Laid without trims, the die has 140 mm of an offer of 160 trimmed by 10 on each side: two rows; of
        // 170 it has 150: three.
        RollLayout kept = ByHand(50, 25, 75, 125);
        CompareCase[] cases =
        [
            CompareCase.Of(Offer("A", 160, 3m) with { EdgeMm = 10 }, EdgeTrims.Both(0)),
            CompareCase.Of(Offer("B", 170, 3m) with { EdgeMm = 10 }, EdgeTrims.Both(0)),
        ];
        Comparison comparison =
            CompareStudy.Run(
                new CompareRequest(Lay, cases, false, Costs, kept), null, Boxes, TestContext.Current.CancellationToken);

        Assert.Equal([2, 3], comparison.Rows.Select(r => r.Kept!.Rows));
        Assert.All(comparison.Rows, r => Assert.Equal((double)r.Total!.Value, (double)r.Kept!.Total!.Value, 1e-6));
    }

    [Fact]
    public void A_kept_die_of_which_no_row_fits_is_not_used_and_that_is_said()
    {
        // Squares of 50 fit 95 mm of usable width, the kept die's of 100 do not.
        Outline large = Outline.From([new(-50, -50), new(50, -50), new(50, 50), new(-50, 50)]);
        LayoutRequest other = Shapes.Request(large, 300, gap: 0, edge: 0) with { Rules = new LayoutRules(0, 0, RowRule.Same, false) };
        RollLayout kept = BoxRows.Of(other, TestContext.Current.CancellationToken);
        Comparison comparison = CompareStudy.Run(
            new CompareRequest(Lay, [CompareCase.Of(115, EdgeTrims.Both(10))], false, null, kept), null,
            Boxes, TestContext.Current.CancellationToken);

        Assert.Null(Assert.Single(comparison.Rows).Kept);
        Assert.Contains(
            "115 mm: the kept die cannot be used: none of its rows fits the usable width of 95 mm.",
            CompareReport.Text(comparison).ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_die_has_one_price_in_sheet_gang_and_payback()
    {
        // Squares on 150 mm: the die cuts two repeats of three, 6 cavities at 10 on top of 1000.
        CostInputs costs =
            Costs with { PerStrike = 1, Gang = new GangOptions { Cavities = [6], Plies = [1], PricePerCavity = 10, PricePerExtraPly = 0 } };
        RollLayout kept = ByHand(75, 25, 75, 125);
        CompareRequest question = new(Lay, [CompareCase.Of(Offer("A", 150, 2m), EdgeTrims.Both(0))], false, costs, kept);
        Comparison comparison = CompareStudy.Run(question, null, Boxes, TestContext.Current.CancellationToken);
        CompareRow row = Assert.Single(comparison.Rows);

        Assert.Equal(1060m, row.Sheet!.Die!.Price);
        Assert.Equal(1060m, Assert.Single(comparison.Gang).DiePrice);
        Assert.Equal(row.Total, Assert.Single(comparison.Gang).Total);
        Assert.Equal(1060m / (row.Kept!.Total - row.Total), row.Kept.NewDiePaysAfterThousandBalls);
    }

    [Fact]
    public void A_new_die_pays_after_its_price_over_what_it_saves()
    {
        // The kept die steps 75 mm for squares of 50: 75 m at 2 for a thousand balls on 100 mm; a die of its own 50 m. Wear of the die is
        // next to nothing.
        RollLayout kept = ByHand(75, 25, 75);
        CompareRequest question = new(Lay, [Bare(100)], false, Costs with { Felt = new FeltPrice(2m, PriceUnit.Metre, "XTS") }, kept);
        CompareRow row = Assert.Single(CompareStudy.Run(question, null, Boxes, TestContext.Current.CancellationToken).Rows);

        Assert.Equal(50m, Math.Round(row.Kept!.Total!.Value - row.Total!.Value, 2));
        Assert.Equal(20m, Math.Round(row.Kept.NewDiePaysAfterThousandBalls!.Value, 2));
    }

    [Fact]
    public void A_scan_of_widths_gives_checked_lays_that_the_search_does_not_fall_behind()
    {
        LayoutRequest bone = Shapes.Request(Shapes.DogBone(2.3, 0.7, 24, 25), 420, gap: 3, edge: 10);
        CompareCase[] cases = [.. Enumerable.Range(0, 6).Select(i => CompareCase.Of(320 + (20 * i), EdgeTrims.Both(10)))];
        Comparison comparison =
            CompareStudy.Run(new CompareRequest(bone, cases, true, null, null), null, TestContext.Current.CancellationToken);

        Assert.All(comparison.Rows, r => Assert.Empty(LayoutCheck.Verify(r.Layout).Violations));
        Assert.Equal(6, comparison.Sweep.Count);
        Assert.NotEmpty(comparison.Crossovers);
        RollLayout searched = LayoutSearch.Run(bone with { RollWidthMm = 360 }, null, TestContext.Current.CancellationToken);
        Assert.True(comparison.Rows[2].Yield.PanelsPerMetre <= searched.PanelsPerMetre * 1.0001);
        Assert.True(comparison.Rows[2].Yield.PanelsPerMetre >= searched.PanelsPerMetre * 0.99);
    }

    [Fact]
    public void A_millimetre_of_gap_is_worth_the_felt_that_it_takes()
    {
        // Squares in one row, 4 mm apart: 54 mm a panel of 50 mm cloth; 2,000,000 panels at 1 mm more are 2000 m of 0.05 m.
        LayoutRequest row = Lay with { GapMm = 4 };
        Comparison comparison =
            CompareStudy.Run(new CompareRequest(row, [Bare(50)], false, null, null), null, TestContext.Current.CancellationToken);

        Assert.Equal(
            -100, comparison.Values.Single(v => v.Change.StartsWith("gap 3", StringComparison.Ordinal)).SquareMetresPerMillionBalls, 0.1);
        Assert.Equal(
            100, comparison.Values.Single(v => v.Change.StartsWith("gap 5", StringComparison.Ordinal)).SquareMetresPerMillionBalls, 0.1);
        Assert.Equal(
            108, comparison.Values.Single(v => v.Change.StartsWith("width 51", StringComparison.Ordinal)).SquareMetresPerMillionBalls, 0.1);
    }

    [Fact]
    public void A_width_too_narrow_is_named_beside_the_others_and_alone_has_no_answer()
    {
        Comparison comparison = Compare(null, Bare(40), Bare(50));

        Assert.Equal("40 mm", Assert.Single(comparison.Unanswered).Name);
        Assert.Single(comparison.Rows);
        Assert.Throws<NoAnswerException>(() => Compare(null, Bare(40)));
    }

    [Fact]
    public void Stopped_after_a_row_it_keeps_that_row_and_says_so()
    {
        using CancellationTokenSource stop = new();
        Comparison comparison =
            CompareStudy.Run(new CompareRequest(Lay, [Bare(100), Bare(150)], false, null, null), new After(stop), Boxes, stop.Token);

        Assert.True(comparison.CutShort);
        Assert.Equal("100 mm", Assert.Single(comparison.Rows).Case.Name);
        Assert.Throws<OperationCanceledException>(() =>
            CompareStudy.Run(new CompareRequest(Lay, [Bare(100)], false, null, null), null, Boxes, new CancellationToken(true)));
    }

    [Fact]
    public void Without_losses_a_row_has_the_yield_of_its_lay()
    {
        CompareRow row = Assert.Single(Compare(null, Bare(125)).Rows);
        FeltUsage lay = YieldAccount.Of(row.Layout).PerThousandBalls;
        Assert.Equal(lay.SquareMetres, row.Account.PerThousandBalls.SquareMetres, 1e-9);
    }

    private static RollLayout ByHand(double pitch, params double[] rows) => new()
    {
        Parts = [Lay.Part],
        RollWidthMm = 160,
        Trims = EdgeTrims.Both(0),
        GapMm = 0,
        Rules = Lay.Rules,
        Bands = [new LayoutBand
        {
            YFromMm = 0,
            YToMm = 160,
            Repeat = new LayoutRepeat(pitch, [.. rows.Select(y => new PlacedPanel { Part = 0, XMm = 25, YMm = y, AngleDeg = 0 })]),
        }],
        Search = Shapes.ByHand(leastGapMm: 0),
    };

    private static IReadOnlyList<RollLayout> Boxes(LayoutRequest request, CancellationToken stop) => [BoxRows.Of(request, stop)];

    private static CompareCase Bare(double width) => CompareCase.Of(width, EdgeTrims.Both(0));

    private static FeltOffer Offer(string name, double width, decimal price) =>
        new()
        {
            Name = name,
            Felt = "felt",
            WidthMm = width,
            LengthM = 9.001,
            Price = new FeltPrice(price, PriceUnit.Metre, "XTS"),
            LeastWidthMm = null,
            EdgeMm = null,
            MassPerAreaGsm = null,
            MassBasis = null,
            FaultPercent = null,
            MinimumM = null,
            Lot = null,
        };

    private static Comparison Compare(CostInputs? costs, params CompareCase[] cases) =>
        CompareStudy.Run(new CompareRequest(Lay, cases, false, costs, null), null, Boxes, TestContext.Current.CancellationToken);

    private sealed class After(CancellationTokenSource stop) : IProgress<CompareRow>
    {
        public void Report(CompareRow value) => stop.Cancel();
    }
}
