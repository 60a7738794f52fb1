using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Findings;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Limits;
using FeltNest.Tests.Layout;
using Xunit;

namespace FeltNest.Tests.Cost.Compare;

/// <summary>Of the layouts near the least felt the one with the least total is taken, and every figure that follows is of that
/// rule.</summary>
public sealed class LeastCostTests
{
    private static readonly Outline Square = Outline.From([new(-25, -25), new(25, -25), new(25, 25), new(-25, 25)]);
    private static readonly CostInputs Costs = CostInputs.Bare("XTS") with
    {
        Losses = FeltLosses.None with { RollLengthM = 40, MostPanelsPerStrike = 12 },
        PerStrike = 1,
        Die = new DieCost { Price = 1000, LifeStrikes = 10_000, ReRules = 0, ReRulePrice = 0 },
        Felt = new FeltPrice(2, PriceUnit.Metre, "XTS"),
    };

    private static LayoutRequest Lay { get; } =
        Shapes.Request(Square, 400, gap: 0, edge: 0) with { Rules = new LayoutRules(0, 0, RowRule.Same, false) };

    // Seven rows a pitch of 50, or six rows at 43.5: 1.5 % more felt, but two repeats a strike of at most 12 where seven rows allow one.
    private static IReadOnlyList<RollLayout> SevenOrSix(LayoutRequest request, CancellationToken stop) => [Rows(7, 50), Rows(6, 43.5)];

    [Fact]
    public void A_layout_with_a_little_more_felt_and_half_the_strikes_is_taken()
    {
        CompareRow row = Assert.Single(Compare(Costs).Rows);

        // A thousand balls of seven rows: 800 repeats of 7 on 40 m, so 2,800 balls; of six rows 919 repeats, of which two a strike are
        // 459 strikes, 5,508 panels, 2,754 balls.
        Assert.Equal(7, row.LeastFelt.Account.Cavities, 1e-9);
        Assert.Equal(40 / 2.8 * 2, (double)CostParts.Of(row.LeastFelt.Sheet!).Felt, 1e-9);
        Assert.Equal(800 / 2.8 * 1.1, (double)(row.LeastFelt.Sheet!.Total - CostParts.Of(row.LeastFelt.Sheet!).Felt), 1e-9);
        Assert.Equal(12, row.Account.Cavities, 1e-9);
        Assert.Equal((40 / 2.754 * 2) + (459 / 2.754 * 1.1), (double)row.Total!.Value, 1e-9);
        Assert.True(row.CostsLessThanLeastFelt);
    }

    [Fact]
    public void Where_strikes_cost_nothing_least_felt_is_least_cost()
    {
        CompareRow row = Assert.Single(Compare(Costs with { PerStrike = 0, Die = null }).Rows);

        Assert.Equal(7, row.Account.Cavities, 1e-9);
        Assert.False(row.CostsLessThanLeastFelt);
    }

    [Fact]
    public void A_layout_of_more_than_2_percent_above_the_least_felt_is_not_taken()
    {
        // Six rows at 44.2 take 3.1 % more felt: whatever they save, the rule leaves them out.
        CompareRow row = Assert.Single(Compare(Costs, (_, _) => [Rows(7, 50), Rows(6, 44.2)]).Rows);

        Assert.Equal(7, row.Account.Cavities, 1e-9);
    }

    [Fact]
    public void Felt_strikes_die_and_rest_add_to_the_total_with_overhead_on_all_but_felt()
    {
        CostInputs costs = Costs with { OverheadPercent = 10, HandlingPerThousandBalls = 5, BoardPerStrike = 0.5m };
        CostSheet sheet = Assert.Single(Compare(costs).Rows).Sheet!;
        CostParts parts = CostParts.Of(sheet);

        Assert.Equal((double)sheet.Total, (double)parts.Total, 1e-12);
        Assert.Equal(5.5, (double)parts.Rest, 1e-12);
        Assert.Equal(1.5 / 0.1, (double)(parts.Strikes / parts.Die), 1e-9);
    }

    [Fact]
    public void The_front_holds_no_way_that_another_beats_in_felt_strikes_and_cavities()
    {
        CompareRow row = Assert.Single(Compare(Costs).Rows);

        // Seven rows take the least felt, six rows cut one by one have the fewest cavities, two by two the fewest strikes.
        Assert.Equal([7, 6, 12], row.Front.Select(way => Math.Round(way.Account.Cavities, 9)));
        Assert.Contains(row.Front, way => way.Sheet!.Total == row.Total);
        Assert.All(row.Front, way => Assert.DoesNotContain(
            row.Front,
            other => other.SquareMetres < way.SquareMetres
                && other.Account.StrikesPerThousandBalls < way.Account.StrikesPerThousandBalls
                && other.Account.Cavities < way.Account.Cavities));
        Assert.True(row.Front.Zip(row.Front.Skip(1)).All(pair => pair.First.SquareMetres <= pair.Second.SquareMetres));
    }

    [Fact]
    public void An_offer_at_its_break_even_price_costs_what_the_other_does_though_another_layout_is_then_taken()
    {
        CompareCase[] cases = [Offer("A", 400, 2m), Offer("B", 400, 9m)];
        Comparison comparison = Compare(Costs, SevenOrSix, cases);
        FeltPrice even = comparison.BreakEvens.Single(e => e.Offer == "A" && e.Against == "B").Price;
        Comparison there = Compare(Costs, SevenOrSix, Offer("A", 400, even.Amount), cases[1]);

        Assert.Equal((double)there.Rows[1].Total!.Value, (double)there.Rows[0].Total!.Value, 1e-6);

        // The other way round many strikes go with dear felt: B takes seven rows, at the price of A six.
        FeltPrice back = comparison.BreakEvens.Single(e => e.Offer == "B" && e.Against == "A").Price;
        Comparison equal = Compare(Costs, SevenOrSix, cases[0], Offer("B", 400, back.Amount));
        Assert.Equal((double)equal.Rows[0].Total!.Value, (double)equal.Rows[1].Total!.Value, 1e-6);
    }

    [Fact]
    public void A_figure_beyond_its_flip_makes_the_other_one_the_cheapest_and_short_of_it_does_not()
    {
        // B has no seven rows: only A can save felt where strikes are cheap.
        IReadOnlyList<RollLayout> ByWidth(LayoutRequest request, CancellationToken stop) =>
            request.RollWidthMm > 399 ? SevenOrSix(request, stop) : [Rows(6, 43.5)];
        CompareCase[] cases = [Offer("A", 400, 2.02m), Offer("B", 398, 2m)];
        CostInputs work = Costs with { Die = null };
        Comparison comparison = Compare(work, ByWidth, cases);
        RankFlip flip = comparison.Flips.Single(f => f.Assumption == "labour and machine of a strike");
        Comparison Priced(double strike) => Compare(work with { PerStrike = (decimal)strike }, ByWidth, cases);

        Assert.NotEqual(comparison.Best.Case.Name, flip.Best);
        Assert.Equal(flip.Best, Priced(flip.At).Best.Case.Name);
        Assert.Equal(comparison.Best.Case.Name, Priced(flip.At + (0.001 * (flip.Now - flip.At))).Best.Case.Name);
    }

    [Fact]
    public void Layouts_of_one_search_pass_the_check_and_the_first_is_that_of_least_felt()
    {
        LayoutRequest bone = Shapes.Request(Shapes.DogBone(2.3, 0.7, 24, 25), 420, gap: 3, edge: 10);
        IReadOnlyList<RollLayout> front = LayoutSearch.Front(bone, 0.05, TestContext.Current.CancellationToken);

        Assert.Equal(LayoutSearch.Of(bone, TestContext.Current.CancellationToken).PanelsPerMetre, front[0].PanelsPerMetre);
        Assert.True(front.Count > 1);
        Assert.All(front, lay => Assert.Empty(LayoutCheck.Verify(lay).Violations));
        Assert.All(front, lay => Assert.InRange(lay.PanelsPerMetre, front[0].PanelsPerMetre / 1.05, front[0].PanelsPerMetre));
        Assert.Equal(front.Count, front.Select(lay => lay.Bands[0].Repeat.Panels.Count).Distinct().Count());
    }

    [Fact]
    public void Another_millimetre_of_trim_never_makes_a_total_cheaper()
    {
        LayoutRequest bone = Shapes.Request(Shapes.DogBone(2.3, 0.7, 24, 25), 420, gap: 3, edge: 10);
        CompareCase[] cases = [.. Enumerable.Range(0, 8).Select(i => CompareCase.Of(420, EdgeTrims.Both(8 + i)))];
        CostInputs costs = Costs with { Losses = Costs.Losses with { MostPanelsPerStrike = 20 } };
        decimal[] totals =
        [
            .. CompareStudy.Run(
                new CompareRequest(bone, cases, false, costs, null), null, TestContext.Current.CancellationToken)
                .Rows.Select(row => row.Total!.Value),
        ];

        Assert.Equal(totals.Order(), totals);
        Assert.NotEqual(totals[0], totals[^1]);
    }

    private static RollLayout Rows(int rows, double pitch) => new()
    {
        Parts = [Lay.Part],
        RollWidthMm = 400,
        Trims = EdgeTrims.Both(0),
        GapMm = 0,
        Rules = Lay.Rules,
        Bands = [new LayoutBand
        {
            YFromMm = 0,
            YToMm = 400,
            Repeat = new LayoutRepeat(
                pitch,
                [.. Enumerable.Range(0, rows).Select(i => new PlacedPanel { Part = 0, XMm = 25, YMm = 25 + (50 * i), AngleDeg = 0 })]),
        }],
        Search = Shapes.ByHand(leastGapMm: 0),
    };

    private static Comparison Compare(CostInputs costs) => Compare(costs, SevenOrSix);

    private static Comparison Compare(CostInputs costs, LayoutFrontSource source, params CompareCase[] cases) => CompareStudy.Run(
        new CompareRequest(Lay, cases.Length > 0 ? cases : [CompareCase.Of(400, EdgeTrims.Both(0))], false, costs, null), null, source,
        TestContext.Current.CancellationToken);

    private static CompareCase Offer(string name, double width, decimal price) => CompareCase.Of(
        new FeltOffer
        {
            Name = name,
            Felt = "felt",
            WidthMm = width,
            LengthM = 40,
            Price = new FeltPrice(price, PriceUnit.Metre, "XTS"),
            LeastWidthMm = null,
            EdgeMm = null,
            MassPerAreaGsm = null,
            MassBasis = null,
            FaultPercent = null,
            MinimumM = null,
            Lot = null,
        },
        EdgeTrims.Both(0));
}
