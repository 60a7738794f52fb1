using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Findings;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Tests.Layout;
using Xunit;

namespace FeltNest.Tests.Cost.Compare;

/// <summary>Figures that may be off, and dies to choose from, on squares of 50: three rows on 150 mm, 60 panels a metre, so 100/3 m a
/// thousand balls.</summary>
public sealed class CompareRiskTests
{
    private static readonly Outline Square = Outline.From([new(-25, -25), new(25, -25), new(25, 25), new(-25, 25)]);
    private static readonly CostInputs Bare = CostInputs.Bare("XTS");

    private static LayoutRequest Lay { get; } =
        Shapes.Request(Square, 100, gap: 0, edge: 0) with { Rules = new LayoutRules(0, 0, RowRule.Same, false) };

    [Theory]
    [InlineData(4, true)] // A at 3 costs 100 for a thousand balls, B 125: equal where A costs 3.75
    [InlineData(3.7, false)]
    public void A_price_that_may_be_off_flips_the_ranking_only_within_its_range(double high, bool flips)
    {
        FeltOffer a = Offer("A", 150, 3m) with { PriceRange = (2.5m, (decimal)high) };
        Comparison comparison = Compare(Bare, a, Offer("B", 100, 2.5m));

        CostSwing swing = Assert.Single(comparison.Swings);
        Assert.Equal(("price of A", 2.5, 3.0, high), (swing.Assumption, swing.Low, swing.Likely, swing.High));
        Assert.Equal(2.5 * 100 / 3, (double)swing.TotalAtLow, 1e-6);
        Assert.Equal(high * 100 / 3, (double)swing.TotalAtHigh, 1e-6);
        Assert.Equal(("A", flips ? "B" : "A"), (swing.BestAtLow, swing.BestAtHigh));
        RankFlip[] found = [.. comparison.Flips.Where(f => f.IsStated)];
        Assert.Equal(flips ? 1 : 0, found.Length);
        Assert.All(found, flip => Assert.Equal(("price of A", "B"), (flip.Assumption, flip.Best)));
        Assert.All(found, flip => Assert.Equal(3.75, flip.At, 1e-5));
    }

    // Rejects of r % make the felt 1/(1 - r): 3 % of it. The widest swing stands first.
    [Fact]
    public void Figures_of_the_costs_file_swing_the_total_as_plain_arithmetic_says()
    {
        CostInputs costs = Bare with
        {
            Losses = FeltLosses.None with { RejectPercent = 1 },
            HandlingPerThousandBalls = 5,
            Ranges =
            [
                new CostRange { Field = "handlingPerThousandBalls", Low = 4, High = 6 },
                new CostRange { Field = "roll.rejectPercent", Low = 0, High = 4 },
            ],
        };

        IReadOnlyList<CostSwing> swings = Compare(costs, Offer("A", 150, 3m)).Swings;

        Assert.Equal(["rejects, %", "handling of a thousand balls"], swings.Select(s => s.Assumption));
        Assert.Equal(105, (double)swings[0].TotalAtLow, 1e-6);
        Assert.Equal(5 + (100 / 0.96), (double)swings[0].TotalAtHigh, 1e-6);
        Assert.Equal(2, (double)swings[1].Span, 1e-6);
    }

    // 2000 panels of a thousand balls in strikes of 3 or 6 squares and one or two layers at 1 and 1.5: 666.7, 500, 333.3 and 250. Dies of
    // 130 and 160: of two with one die the dearer to run is never the cheapest, and the greater die has paid its 30 more after 30/250
    // thousand balls.
    [Fact]
    public void A_gang_die_pays_where_its_price_meets_the_strikes_it_saves()
    {
        CostInputs costs =
            Bare with
            {
                PerStrike = 1,
                Die = new DieCost
                {
                    Price = 100,
                    LifeStrikes = 1_000_000_000,
                    ReRules = 0,
                    ReRulePrice = 0,
                },
                Gang = new GangOptions
                {
                    Cavities = [3, 4, 6],
                    Plies = [1, 2],
                    PricePerCavity = 10,
                    PricePerExtraPly = 0.5m,
                }
            };

        IReadOnlyList<GangChoice> gang = Compare(costs, Offer("A", 150, 3m)).Gang;

        Assert.Equal([(3, 1), (3, 2), (6, 1), (6, 2)], gang.Select(c => (c.Cavities, c.Plies)));
        Assert.Equal([3d, 6, 6, 12], gang.Select(c => c.PanelsPerStrike));
        Assert.Equal([130m, 130m, 160m, 160m], gang.Select(c => c.DiePrice));
        Assert.Equal([766.667, 600, 433.333, 350], gang.Select(c => Math.Round((double)c.RunningCost, 3)));
        Assert.Equal([null, 0m, null, 0.12m], gang.Select(c => c.PaysFromThousandBalls is { } from ? Math.Round(from, 9) : (decimal?)null));
    }

    [Fact]
    public void A_panel_drawn_out_by_a_millimetre_is_longer_by_it_and_as_wide()
    {
        Outline rhomb = Outline.From([new(-80, 0), new(0, -25), new(80, 0), new(0, 25)]).Turned(0.3);
        LayoutPart part = Shapes.Part(rhomb);
        LayoutPart longer = LongerPart.Of(part, 1);

        Assert.Equal(161, LongerPart.LengthOf(longer), 1e-9);
        Assert.Equal(part.AreaMm2 * 161 / 160, longer.AreaMm2, 1e-9);
        Assert.Equal(25, (longer.Outline.Points[3] - longer.Outline.Points[1]).Length / 2, 1e-9);
    }

    // Rhombs of 160 x 50 tile the plane in rows along their length: panels a metre go as one over the length, whatever the width, so a
    // millimetre less saves its 160th part of the felt.
    [Fact, Trait("tier", "long")]
    public void A_panel_a_millimetre_shorter_saves_its_share_of_the_length()
    {
        Outline rhomb = Outline.From([new(-80, 0), new(0, -25), new(80, 0), new(0, 25)]);
        Comparison comparison = CompareStudy.Run(
            new CompareRequest(Lay with { Part = Shapes.Part(rhomb) }, [CompareCase.Of(150, EdgeTrims.Both(0.0))], false, null, null),
            null,
            TestContext.Current.CancellationToken);
        LengthValue value = comparison.Values.Single(v => v.Change == "panel 159.0 instead of 160.0 mm long");

        double felt = 1000 * comparison.Best.Account.PerThousandBalls.SquareMetres;
        Assert.Equal(2000 * 0.16 / 5 * 0.15 * 1000, felt, 1e-3 * felt);
        Assert.Equal(-felt / 160, value.SquareMetresPerMillionBalls, 1e-3 * felt / 160);
    }

    private static FeltOffer Offer(string name, double width, decimal price) =>
        new()
        {
            Name = name,
            Felt = "felt",
            WidthMm = width,
            LengthM = 100_000,
            Price = new FeltPrice(price, PriceUnit.Metre, "XTS"),
            LeastWidthMm = null,
            EdgeMm = 0,
            MassPerAreaGsm = null,
            MassBasis = null,
            FaultPercent = null,
            MinimumM = null,
            Lot = null,
        };

    private static Comparison Compare(CostInputs? costs, params FeltOffer[] offers) => CompareStudy.Run(
        new CompareRequest(Lay, [.. offers.Select(o => CompareCase.Of(o, EdgeTrims.Both(0.0)))], false, costs, null), null,
        (request, stop) => [BoxRows.Of(request, stop)], TestContext.Current.CancellationToken);
}
