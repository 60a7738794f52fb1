using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Cost.Usage;
using FeltNest.Layout;
using FeltNest.Tests.Rolls;
using Xunit;

namespace FeltNest.Tests.Cost.Usage;

/// <summary>Two rolls against a standard of 1260 m for 41,040 balls, by hand: squares, 1000/12 a metre, of a roll of 12.6 m a thousand; 4 %
/// faulty, 5 % of the rest rejected, a tenth of the good alone.</summary>
public sealed class UsageRollsTests
{
    private static readonly CostInputs Costs = CostInputs.Bare("XTS") with
    {
        Losses = new FeltLosses
        {
            RollLengthM = 12.6,
            EndLossMm = 300,
            FaultPercent = 4,
            RejectPercent = 5,
            UnpairedPercent = 10,
            MostPanelsPerStrike = null,
        },
        Felt = new FeltPrice(2m, PriceUnit.Metre, "XTS"),
    };

    // The first is standard to the panel. Of the second 120 m are cut, 10,000 squares: 1000 faulty, 1000 rejected, 8000 good, 800 of them
    // alone.
    private static readonly ActualRoll First = new()
    {
        Roll = "A",
        Metres = 1260,
        GoodPanels = 91_200,
        WidthMm = 20,
        EndsM = 60,
        FaultPanels = 4000,
        RejectedPanels = 4800,
        UnpairedPanels = 9120,
        Price = null,
        SignedBy = [],
    };
    private static readonly ActualRoll Second = new()
    {
        Roll = "B",
        Metres = 126,
        GoodPanels = 8000,
        WidthMm = 20,
        EndsM = 6,
        FaultPanels = 1000,
        RejectedPanels = 1000,
        UnpairedPanels = 800,
        Price = null,
        SignedBy = [],
    };

    [Fact]
    public void Each_roll_stands_against_the_standard_of_its_own_balls()
    {
        UsageVariance variance = Run(Costs, First, Second);

        // 41,040 and (8000 - 800)/2 balls; 126 m for 3.6 thousand are 35 m a thousand, where the standard has 1260/41.04: 14 % more.
        Assert.Equal([41_040, 3600], variance.Rolls.Select(r => Math.Round(r.Balls, 9)));
        Assert.Equal([1260 / 41.04, 35], variance.Rolls.Select(r => r.PerThousandBalls.Metres), Near);
        Assert.Equal(35 * 0.02, variance.Rolls[1].PerThousandBalls.SquareMetres, 1e-9);
        Assert.Equal([0, 14], variance.Rolls.Select(r => Math.Round(r.MorePercent, 9)));
        Assert.Equal(44_640, variance.Balls, 1e-6);

        // Without a count of those alone the standard tenth is taken, which it was.
        Assert.Equal(
            [41_040, 3600],
            Run(Costs, First with { UnpairedPanels = null }, Second with { UnpairedPanels = null }).Rolls
                .Select(r => Math.Round(r.Balls, 9)));
    }

    [Fact]
    public void Losses_are_those_of_all_rolls_together()
    {
        IReadOnlyList<UsagePart> parts = Run(Costs, First, Second).Parts;

        // 66 of 1386 m at the ends, as by standard; of 110,000 cut 5000 faulty; of 105,000 5800 rejected; of 99,200 a tenth alone.
        Assert.Equal([600 / 126.0, 4, 5, 10], Lost(p => p.Standard), Near);
        Assert.Equal([6600 / 1386.0, 500 / 110.0, 580 / 105.0, 10], Lost(p => p.Actual), Near);

        // What the second roll took too much is in the faults and rejects; the logarithmic mean of 1386 and 1260 x 44,640/41,040 shares it
        // out.
        double standard = 1260 * 44_640 / 41_040.0;
        double mean = (1386 - standard) / Math.Log(1386 / standard);
        Assert.Equal(mean * Math.Log(0.96 / (105 / 110.0)), Of(UsageCause.Faults).Quantity, 1e-6);
        Assert.Equal(mean * Math.Log(0.95 / (99.2 / 105)), Of(UsageCause.Rejects).Quantity, 1e-6);
        Assert.Equal(
            [0, 0, 0, 0],
            new[] { UsageCause.Width, UsageCause.RollEnds, UsageCause.Unpaired, UsageCause.Price }
                .Select(c => Math.Round(Of(c).Quantity, 6)));
        Assert.Equal(2 * Of(UsageCause.Rejects).Quantity, (double)Of(UsageCause.Rejects).Money!.Value, 1e-6);

        UsagePart Of(UsageCause cause) => parts.Single(p => p.Cause == cause);

        IEnumerable<double> Lost(Func<UsagePart, double?> of) =>
            new[] { UsageCause.RollEnds, UsageCause.Faults, UsageCause.Rejects, UsageCause.Unpaired }.Select(c => of(Of(c))!.Value);
    }

    [Fact]
    public void More_alone_than_by_standard_costs_its_share()
    {
        // A fifth of the good panels of the second roll, alone, in the place of a tenth: 3200 balls.
        UsageVariance variance = Run(Costs, Second with { UnpairedPanels = 1600 });
        double standard = 1260 * 3200 / 41_040.0;
        double mean = (126 - standard) / Math.Log(126 / standard);
        Assert.Equal(mean * Math.Log(0.9 / 0.8), variance.Parts.Single(p => p.Cause == UsageCause.Unpaired).Quantity, 1e-6);
        Assert.Equal(100 * ((126 / standard) - 1), variance.Rolls[0].MorePercent, 1e-9);
    }

    [Fact]
    public void Prices_in_another_currency_are_brought_to_that_of_the_account()
    {
        // At 2 YTS a metre by standard and 2.5 YTS paid, 3 XTS for one YTS.
        CostInputs costs = Costs with { Rates = [new CurrencyRate("YTS", 3)], Felt = new FeltPrice(2m, PriceUnit.Metre, "YTS") };
        FeltPrice paid = new(2.5m, PriceUnit.Metre, "YTS");
        UsageVariance variance = Run(costs, First with { Price = paid }, Second with { Price = paid });
        Assert.Equal("XTS", variance.Currency);
        Assert.Equal(1386 * 2.5 * 3, (double)variance.ActualCost!.Value, 1e-6);
        Assert.Equal(1260 * 44_640 / 41_040.0 * 2 * 3, (double)variance.StandardCost!.Value, 1e-6);
        Assert.Equal(1386 * 0.5 * 3, (double)variance.Parts.Single(p => p.Cause == UsageCause.Price).Money!.Value, 1e-6);
    }

    [Theory]
    [InlineData(null, 800.0, 800.0)]
    [InlineData(700.0, 800.0, 700.0)]
    [InlineData(700.0, null, 700.0)]
    public void The_mass_of_the_costs_file_goes_before_that_of_the_part(double? costs, double? part, double taken)
    {
        RollLayout layout = RollCases.Squares with { Parts = [RollCases.Squares.Parts[0] with { MassPerAreaGsm = part }] };
        UsageVariance variance = UsageStudy.Run(new UsageRequest(layout, [First], Costs with { MassPerAreaGsm = costs }));
        Assert.Equal(1260 * 0.02 * taken / 1000, variance.Actual.Kilograms!.Value, 1e-9);
    }

    [Fact]
    public void A_layout_of_two_parts_is_refused()
    {
        RollLayout two = RollCases.Squares with { Parts = [RollCases.Squares.Parts[0], RollCases.Squares.Parts[0]] };
        Assert.Equal("panels", Assert.Throws<InputException>(() => UsageStudy.Run(new UsageRequest(two, [First], Costs))).Field);
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-9;

    private static UsageVariance Run(CostInputs costs, params ActualRoll[] rolls) =>
        UsageStudy.Run(new UsageRequest(RollCases.Squares, rolls, costs));
}
