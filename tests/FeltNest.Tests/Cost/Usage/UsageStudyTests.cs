using CsCheck;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Cost.Usage;
using FeltNest.Layout;
using FeltNest.Tests.Rolls;
using Xunit;

namespace FeltNest.Tests.Cost.Usage;

public sealed class UsageStudyTests
{
    // One square of 10 mm every 12 mm of a roll of 20 mm: 1000/12 panels a metre.
    private const double PerMetre = 1000.0 / 12;

    // A roll of 12.6 m less 0.3 m at each end is a thousand squares; 4 % of them faulty, 5 % of the rest rejected, a tenth of the good ones
    // alone: 820.8 pair.
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

    // The standard to the panel: of 1000 cut 40 are faulty, 48 rejected, 912 good, 91.2 alone; a hundred such rolls make whole numbers.
    private static ActualRoll Standard => new()
    {
        Roll = "R1",
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

    [Fact]
    public void What_is_used_by_standard_leaves_no_difference()
    {
        UsageVariance variance = Split(Standard);

        Assert.Equal(41_040, variance.Balls, 1e-6);
        Assert.Equal(1260, variance.Standard.Metres, 1e-6);
        Assert.All(variance.Parts, part => Assert.Equal(0, part.Quantity, 1e-6));
        Assert.Equal(0, (double)variance.MoreMoney!, 1e-6);
    }

    // Twice the faults: a thousand cut give 920 x 0.95 x 0.9 panels where 960 x 0.95 x 0.9 are standard, so felt grows by 960/920 and
    // nothing else moves.
    [Fact]
    public void One_cause_alone_takes_the_whole_difference()
    {
        UsageVariance variance =
            Split(Standard with { GoodPanels = 87_400, FaultPanels = 8000, RejectedPanels = 4600, UnpairedPanels = 8740 });

        Assert.Equal(1260 * (1 - (920.0 / 960)), Part(variance, UsageCause.Faults).Quantity, 1e-6);
        Assert.Equal(100 * ((960.0 / 920) - 1), variance.MorePercent, 1e-9);
        Assert.Equal(4, Part(variance, UsageCause.Faults).Standard!.Value, 1e-9);
        Assert.Equal(8, Part(variance, UsageCause.Faults).Actual!.Value, 1e-9);
        Assert.All(variance.Parts.Where(p => p.Cause != UsageCause.Faults), part => Assert.Equal(0, part.Quantity, 1e-6));
    }

    // Standard costing (common practice): the price's part is its difference on the quantity really used, the rest is quantity at the
    // standard price.
    [Fact]
    public void A_price_above_standard_is_counted_on_the_felt_really_used()
    {
        UsageVariance variance = Split(Standard with { Metres = 1323, EndsM = 63, Price = new FeltPrice(2.5m, PriceUnit.Metre, "XTS") });

        Assert.Equal(1323 * 0.5m, Part(variance, UsageCause.Price).Money);
        Assert.Equal((1323 * 2.5m) - 2520m, Math.Round(variance.MoreMoney!.Value, 6));
        Assert.Equal(126, (double)variance.Parts.Where(p => p.Cause != UsageCause.Price).Sum(p => p.Money!.Value), 1e-6);
    }

    [Theory]
    [InlineData(PriceUnit.Metre, 0)] // the metre costs the same however wide it is
    [InlineData(PriceUnit.SquareMetre, 10)]
    [InlineData(PriceUnit.Kilogram, 10)]
    public void A_wider_roll_costs_felt_only_where_width_is_paid_for(PriceUnit unit, double percent)
    {
        UsageVariance variance = UsageStudy.Run(
            new UsageRequest(
                RollCases.Squares, [Standard with { WidthMm = 22 }],
                Costs with { Felt = new FeltPrice(2m, unit, "XTS"), MassPerAreaGsm = 800 }));

        Assert.Equal(percent, variance.MorePercent, 1e-9);
        Assert.Equal(percent, Part(variance, UsageCause.Width).Percent, 1e-9);
    }

    // Two rows of a thousand: on a roll too narrow for both, half of the panels are lost to the width.
    [Fact]
    public void A_row_that_falls_off_a_narrow_roll_is_put_down_to_the_width()
    {
        RollLayout rows = RollCases.Squares with
        {
            RollWidthMm = 32,
            Bands = [new LayoutBand
            {
                YFromMm = 5,
                YToMm = 27,
                Repeat = new LayoutRepeat(
                    12,
                    [
                        new PlacedPanel { Part = 0, XMm = 0, YMm = 10, AngleDeg = 0 },
                        new PlacedPanel { Part = 0, XMm = 0, YMm = 22, AngleDeg = 0 },
                    ]),
            }],
        };
        ActualRoll actual = new()
        {
            Roll = "R",
            Metres = 12,
            GoodPanels = 1000,
            WidthMm = 31.5,
            EndsM = 0,
            FaultPanels = 0,
            RejectedPanels = 0,
            UnpairedPanels = 0,
            Price = null,
            SignedBy = [],
        };

        UsageVariance variance = UsageStudy.Run(new UsageRequest(rows, [actual], Costs with { Losses = FeltLosses.None }));

        Assert.Equal(100, variance.MorePercent, 1e-6);
        Assert.Equal(100, Part(variance, UsageCause.Width).Percent, 1e-6);
        Assert.Equal(50, Assert.Single(variance.Rolls).RowsPercent, 1e-9);
        Assert.Equal(0, Part(variance, UsageCause.Lay).Quantity, 1e-9);
    }

    [Fact]
    public void What_was_not_recorded_stands_under_the_lay_and_is_named()
    {
        UsageVariance variance = Split(new ActualRoll
        {
            Roll = "R",
            Metres = 1260,
            GoodPanels = 45_600,
            WidthMm = null,
            EndsM = null,
            FaultPanels = null,
            RejectedPanels = null,
            UnpairedPanels = null,
            Price = null,
            SignedBy = [],
        });

        Assert.Equal(
            [UsageCause.Width, UsageCause.RollEnds, UsageCause.Faults, UsageCause.Rejects, UsageCause.Unpaired, UsageCause.Price],
            variance.NotRecorded);
        Assert.Equal(100, Part(variance, UsageCause.Lay).Percent, 1e-6);
        Assert.Equal(50, Part(variance, UsageCause.Lay).Actual!.Value, 1e-6);
    }

    [Fact]
    public void The_parts_add_up_to_the_whole_whatever_was_recorded() => Gen.Select(
        Gen.Double[20, 500], Gen.Int[200, 40_000], Gen.Double[20.1, 40], Gen.Double[0, 9], Gen.Int[0, 5000], Gen.Int[0, 5000],
        Gen.Int[0, 190], Gen.Int[0, 63]).Sample(
        (metres, good, width, ends, faults, rejects, alone, recorded) =>
        {
            bool Has(int bit) => (recorded & (1 << bit)) != 0;
            ActualRoll roll = new()
            {
                Roll = "R",
                Metres = metres,
                GoodPanels = good,
                WidthMm = Has(0) ? width : null,
                EndsM = Has(1) ? ends : null,
                FaultPanels = Has(2) ? faults : null,
                RejectedPanels = Has(3) ? rejects : null,
                UnpairedPanels = Has(4) ? alone : null,
                Price = Has(5) ? new FeltPrice(1.9m, PriceUnit.SquareMetre, "XTS") : null,
                SignedBy = [],
            };
            UsageVariance variance = Split(roll, roll with { Roll = "S", Metres = metres / 2 });

            Assert.Equal(variance.MoreQuantity, variance.Parts.Sum(p => p.Quantity), 1e-9 * variance.Actual.Metres);
            Assert.Equal(variance.MoreMoney, variance.Parts.Sum(p => p.Money));
            Assert.Equal(1.5 * metres, variance.Actual.Metres, 1e-9 * metres);
        },
        iter: Runs.Count(300), threads: 1);

    [Fact]
    public void Cutting_what_the_metres_allow_leaves_nothing_for_the_lay()
    {
        UsageVariance variance = UsageStudy.Run(
            new UsageRequest(RollCases.Squares, [new ActualRoll
            {
                Roll = "R",
                Metres = 120,
                GoodPanels = (int)(120 * PerMetre),
                WidthMm = 20,
                EndsM = 0,
                FaultPanels = 0,
                RejectedPanels = 0,
                UnpairedPanels = 0,
                Price = null,
                SignedBy = [],
            }], null));

        Assert.Equal(0, Part(variance, UsageCause.Lay).Quantity, 1e-9);
        Assert.Null(variance.MoreMoney);
        Assert.Equal(PriceUnit.SquareMetre, variance.Unit);
    }

    [Theory]
    [InlineData("ends", "endsM: roll R1: 1260 m lost at its ends of 1260 m drawn")]
    [InlineData("alone", "unpairedPanels: roll R1: 91201 of 91200 good panels")]
    [InlineData("narrow", "widthMm: roll R1: no row of the layout fits 19 mm")]
    [InlineData("none", "goodPanels: all rolls together hold no pair")]
    [InlineData("price", "price: roll R1 has a price and no standard price is known")]
    [InlineData("rate", "currency: ABC cannot be mixed with XTS")]
    public void Actuals_that_cannot_be_are_refused(string what, string told)
    {
        ActualRoll roll = what switch
        {
            "ends" => Standard with { EndsM = 1260 },
            "alone" => Standard with { UnpairedPanels = 91_201 },
            "narrow" => Standard with { WidthMm = 19 },
            "none" => Standard with { UnpairedPanels = 91_199 },
            "price" => Standard with { Price = new FeltPrice(1, PriceUnit.Metre, "XTS") },
            _ => Standard with { Price = new FeltPrice(1, PriceUnit.Metre, "ABC") },
        };
        InputException error = Assert.Throws<InputException>(() =>
            UsageStudy.Run(new UsageRequest(RollCases.Squares, [roll], what == "price" ? null : Costs)));
        Assert.Contains(told, error.Message, StringComparison.Ordinal);
    }

    private static UsageVariance Split(params ActualRoll[] rolls) => UsageStudy.Run(new UsageRequest(RollCases.Squares, rolls, Costs));

    private static UsagePart Part(UsageVariance variance, UsageCause cause) => variance.Parts.Single(p => p.Cause == cause);
}
