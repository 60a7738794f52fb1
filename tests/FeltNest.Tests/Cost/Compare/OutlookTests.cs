using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Findings;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Numerics;
using FeltNest.Tests.Layout;
using Xunit;

namespace FeltNest.Tests.Cost.Compare;

/// <summary>All figures that may be off together, against closed forms: squares of 50, three rows on 150 mm, 60 panels a metre, so 100/3 m
/// a thousand balls.</summary>
public sealed class OutlookTests
{
    private static readonly Outline Square = Outline.From([new(-25, -25), new(25, -25), new(25, 25), new(-25, 25)]);

    private static LayoutRequest Lay { get; } =
        Shapes.Request(Square, 150, gap: 0, edge: 0) with { Rules = new LayoutRules(0, 0, RowRule.Same, false) };

    private static CostInputs Costs { get; } = CostInputs.Bare("XTS") with { Felt = new FeltPrice(0, PriceUnit.Metre, "XTS") };

    [Fact]
    public void Two_independent_triangles_have_the_mean_and_variance_of_their_sum()
    {
        // Mean (a + b + c)/3, variance (a2 + b2 + c2 - ab - ac - bc)/18: S. Kotz, J. R. van Dorp, Beyond Beta, 2004, chapter 1 (from
        // memory).
        CostInputs costs = Costs with
        {
            HandlingPerThousandBalls = 5,
            SetUp = new SetUpCost { Hours = 2, RatePerHour = 1, BatchThousandBalls = 1 },
            Ranges = [Range("handlingPerThousandBalls", 4, 9), Range("setUp.hours", 1, 8)],
        };
        RowOutlook row = Assert.Single(Outlook(costs).Rows);

        Assert.Equal((18 / 3.0) + (11 / 3.0), row.Mean, 0.01);
        Assert.Equal(Math.Sqrt((21 / 18.0) + (43 / 18.0)), row.Deviation, 0.01);
        Assert.Equal((5, 17), (row.Least, row.Most));
        IReadOnlyList<SpreadShare> shares = Outlook(costs).Shares;
        Assert.Equal(["hours of a set-up", "handling of a thousand balls"], shares.Select(s => s.Figure));
        Assert.Equal(43 / 64.0 * 100, shares[0].Percent, 0.8);
        Assert.Equal(21 / 64.0 * 100, shares[1].Percent, 0.8);
    }

    [Fact]
    public void One_triangle_has_the_quantiles_of_its_law()
    {
        // Below the mode F(x) = (x - a)2/((b - a)(c - a)), above it 1 - (b - x)2/((b - a)(b - c)): by hand for 4, 5, 9.
        CostInputs costs = Costs with { HandlingPerThousandBalls = 5, Ranges = [Range("handlingPerThousandBalls", 4, 9)] };
        RowOutlook row = Assert.Single(Outlook(costs).Rows);

        Assert.Equal(4 + Math.Sqrt(0.05 * 5 * 1), row.P5, 0.005);
        Assert.Equal(9 - Math.Sqrt(0.5 * 5 * 4), row.P50, 0.005);
        Assert.Equal(9 - Math.Sqrt(0.05 * 5 * 4), row.P95, 0.005);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.8)]
    [InlineData(-0.5)]
    public void Of_two_normal_prices_the_one_is_cheaper_as_often_as_the_law_of_their_difference_says(double correlation)
    {
        // A: 3 with a deviation of 0.2, B: 3.1 with 0.1; the difference is normal.
        CostInputs costs = CostInputs.Bare("XTS") with
        {
            Correlations = [new CostCorrelation { First = "price of A", Second = "price of B", R = correlation }],
        };
        CostOutlook outlook = Outlook(costs, Offer("A", 3m, 0.4m), Offer("B", 3.1m, 0.2m));
        double deviation = Math.Sqrt(0.04 + 0.01 - (2 * correlation * 0.02));

        Assert.Equal(100 * NormalDistribution.Below(0.1 / deviation), outlook.Rows[0].CheapestPercent, 1);
        Assert.Equal(100, outlook.Rows.Sum(row => row.CheapestPercent), 1e-9);
        Assert.Equal(100 / 3.0 * 0.2, outlook.Rows[0].Deviation, 0.02);
    }

    [Fact]
    public void The_plain_worst_case_is_the_worst_of_all_corners()
    {
        CostInputs costs = Costs with
        {
            Felt = new FeltPrice(2, PriceUnit.Metre, "XTS"),
            Losses = FeltLosses.None with { RollLengthM = 40, RejectPercent = 1, MostPanelsPerStrike = 6 },
            PerStrike = 0.1m,
            Die = new DieCost { Price = 1000, LifeStrikes = 50_000, ReRules = 0, ReRulePrice = 0 },
            OverheadPercent = 10,
            Ranges =
            [
                Range("roll.rejectPercent", 0, 4), Range("felt.price", 1, 3), Range("strike.price", 0.05m, 0.3m),
                Range("die.lifeStrikes", 20_000, 90_000), Range("overheadPercent", 5, 20),
            ],
        };
        RowOutlook row = Assert.Single(Outlook(costs).Rows);
        List<double> corners = [];
        for (int corner = 0; corner < 32; corner++)
        {
            decimal End(int bit, decimal low, decimal high) => (corner >> bit & 1) == 0 ? low : high;
            CostInputs there = costs with
            {
                Ranges = [],
                Losses = costs.Losses with { RejectPercent = (double)End(0, 0, 4) },
                Felt = costs.Felt! with { Amount = End(1, 1, 3) },
                PerStrike = End(2, 0.05m, 0.3m),
                Die = costs.Die! with { LifeStrikes = (int)End(3, 20_000, 90_000) },
                OverheadPercent = End(4, 5, 20),
            };
            corners.Add((double)Compare(there, CompareCase.Of(150, EdgeTrims.Both(0))).Rows[0].Total!.Value);
        }

        Assert.Equal((corners.Min(), corners.Max()), (row.Least, row.Most));
        Assert.InRange(row.P5, row.Least, row.P50);
        Assert.InRange(row.P95, row.P50, row.Most);
    }

    [Fact]
    public void Correlations_that_contradict_each_other_are_refused()
    {
        CostInputs costs = Costs with
        {
            HandlingPerThousandBalls = 5,
            OverheadPercent = 5,
            PerStrike = 1,
            Ranges = [Range("handlingPerThousandBalls", 4, 9), Range("overheadPercent", 4, 9), Range("strike.price", 0.5m, 2)],
            Correlations =
            [
                new CostCorrelation { First = "handlingPerThousandBalls", Second = "overheadPercent", R = 0.9 },
                new CostCorrelation { First = "handlingPerThousandBalls", Second = "strike.price", R = 0.9 },
                new CostCorrelation { First = "overheadPercent", Second = "strike.price", R = -0.9 },
            ],
        };

        Assert.Contains(
            "correlations: contradict each other", Assert.Throws<InputException>(() => Outlook(costs)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Points_fill_every_dimension_evenly_and_repeat()
    {
        HaltonPoints points = new(12, 1);
        double[][] all = [.. Enumerable.Range(0, 4096).Select(points.At)];

        for (int d = 0; d < 12; d++)
        {
            Assert.Equal(0.5, all.Average(p => p[d]), 0.01);
            Assert.Equal(1 / 12.0, all.Average(p => (p[d] - 0.5) * (p[d] - 0.5)), 0.002);
            Assert.Equal(0.25, all.Average(p => p[d] * p[(d + 1) % 12]), 0.01);
        }

        Assert.Equal(all[77], new HaltonPoints(12, 1).At(77));
    }

    [Fact]
    public void Savings_of_a_year_pay_back_and_are_worth_what_an_annuity_is()
    {
        // Kept: 75 mm for squares of 50 on 100 mm, 75 m at 2; a die of its own 50 m: 50 saved on a thousand balls, 100,000 a year, die
        // 1000. Three years at 10 %: 1/1.1 + 1/1.21 + 1/1.331.
        CostInputs costs = CostInputs.Bare("XTS") with
        {
            Losses = FeltLosses.None with { MostPanelsPerStrike = 6 },
            Felt = new FeltPrice(2m, PriceUnit.Metre, "XTS"),
            Die = new DieCost { Price = 1000, LifeStrikes = 10_000, ReRules = 0, ReRulePrice = 0 },
            AnnualBalls = 2_000_000,
            InterestPercent = 10,
            HorizonYears = 3,
        };
        RollLayout kept = BoxRows.Of(Lay with { RollWidthMm = 100 }, TestContext.Current.CancellationToken);
        kept = kept with { Bands = [kept.Bands[0] with { Repeat = kept.Bands[0].Repeat with { LengthMm = 75 } }] };
        Comparison comparison = CompareStudy.Run(
            new CompareRequest(Lay, [CompareCase.Of(100, EdgeTrims.Both(0))], false, costs, kept), null,
            (request, stop) => [BoxRows.Of(request, stop)], TestContext.Current.CancellationToken);

        YearChoice die = comparison.Years.Single(choice => choice.What == "a new die for 100 mm");
        Assert.Equal(50, (double)die.SavedPerThousandBalls, 1e-6);
        Assert.Equal(100_000, (double)die.SavedPerYear, 1e-3);
        Assert.Equal(0.12, die.PaybackMonths!.Value, 1e-9);
        Assert.Equal((100_000 * ((1 / 1.1) + (1 / 1.21) + (1 / 1.331))) - 1000, (double)die.NetPresentValue!.Value, 1e-3);
    }

    private static CostRange Range(string field, decimal low, decimal high) => new() { Field = field, Low = low, High = high };

    private static CostOutlook Outlook(CostInputs costs, params CompareCase[] cases) =>
        Compare(costs, cases.Length > 0 ? cases : [CompareCase.Of(150, EdgeTrims.Both(0))]).Outlook!;

    private static Comparison Compare(CostInputs costs, params CompareCase[] cases) => CompareStudy.Run(
        new CompareRequest(Lay, cases, false, costs, null), null, (request, stop) => [BoxRows.Of(request, stop)],
        TestContext.Current.CancellationToken);

    private static CompareCase Offer(string name, decimal price, decimal range) => CompareCase.Of(
        new FeltOffer
        {
            Name = name,
            Felt = "felt",
            WidthMm = 150,
            LengthM = 100_000,
            Price = new FeltPrice(price, PriceUnit.Metre, "XTS"),
            PriceRange = (price - range, price + range),
            PriceShape = SpreadShape.Normal,
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
