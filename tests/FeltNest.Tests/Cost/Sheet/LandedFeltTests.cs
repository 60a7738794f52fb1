using CsCheck;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Cost.Sheet;

/// <summary>Landed cost of felt against plain arithmetic: 10 m of 1.5 m, 15 m2, 12 kg for a thousand balls.</summary>
public sealed class LandedFeltTests
{
    private static readonly CostInputs Costs = CostInputs.Bare("XTS");

    private static FeltAccount Account { get; } = FeltAccount.Of(ConstructedExample.Plan, ConstructedExample.Losses, 780) with
    {
        PerThousandBalls = new FeltUsage { Metres = 10, SquareMetres = 15, Kilograms = 12 },
    };

    private static FeltTerms Terms { get; } = FeltTerms.Of(new FeltPrice(20, PriceUnit.Metre, "XTS")) with { RollLengthM = 50 };

    [Fact]
    public void Freight_by_the_roll_and_duty_on_both_are_added()
    {
        // 10 m at 20 are 200; freight 30 a roll of 50 m is 6; duty 5 % of 206 is 10.30.
        CostSheet sheet = CostSheet.Of(Account, Terms with { FreightPerRoll = 30, DutyPercent = 5 }, Costs);

        Assert.Equal([200, 6, 10.3m, 0m], sheet.FeltParts.Take(4).Select(line => line.Amount!.Value));
        Assert.Equal(216.3m, sheet.AmountOf(10));
        Assert.Equal(216.3m, sheet.Total);
    }

    [Fact]
    public void Sixty_days_of_credit_at_7_3_percent_are_worth_1_2_percent_of_the_felt()
    {
        // 7.3 % x 60 / 365 = 1.2 %.
        CostSheet sheet = CostSheet.Of(Account, Terms with { CreditDays = 60 }, Costs with { InterestPercent = 7.3m });

        Assert.Equal(-2.4, (double)sheet.AmountOf(23), 1e-12);
        Assert.Equal(197.6, (double)sheet.Total, 1e-12);
        Assert.Null(CostSheet.Of(Account, Terms with { CreditDays = 60 }, Costs).Lines[22].Amount);
    }

    [Fact]
    public void Paid_is_the_invoiced_width_and_cut_the_guaranteed_one()
    {
        // 10 m x 1.53 m at 4 are 61.20 for 15 m2; a price by the kilogram grows as the width.
        FeltTerms wide = Terms with { Price = new FeltPrice(4, PriceUnit.SquareMetre, "XTS"), InvoicedWidthMm = 1530 };
        FeltTerms heavy = wide with { Price = new FeltPrice(5, PriceUnit.Kilogram, "XTS") };

        Assert.Equal(61.2, (double)CostSheet.Of(Account, wide, Costs).Total, 1e-9);
        Assert.Equal(15.3, CostSheet.Of(Account, wide, Costs).Lines[9].Quantity!.Value, 1e-9);
        Assert.Equal(5 * 12 * 1.02, (double)CostSheet.Of(Account, heavy, Costs).Total, 1e-9);
    }

    [Theory]
    [InlineData(12, 120, 150, 3)] // 120 m are three rolls of 50
    [InlineData(15, 150, 150, 3)] // exactly three
    [InlineData(15.1, 151, 200, 4)]
    [InlineData(2, 20, 300, 6)] // no less than 260 m, six rolls
    public void Whole_rolls_are_bought_and_no_less_than_the_least_length(double thousands, double needed, double bought, double rolls)
    {
        FeltTerms terms = thousands == 2 ? Terms with { MinimumM = 260 } : Terms;
        FeltBought purchase = CostSheet.Of(Account, terms, Costs, thousands).Purchase!;

        Assert.Equal((needed, bought, rolls), (Math.Round(purchase.NeededM, 9), purchase.BoughtM, purchase.Rolls!.Value));
    }

    [Fact]
    public void What_is_left_over_costs_what_it_cost_less_its_worth()
    {
        // 120 m needed, 150 bought: 30 / 120 of 200 are 50 more; worth 60 % they cost 20.
        Assert.Equal(250m, CostSheet.Of(Account, Terms, Costs, 12).Total);
        Assert.Equal(220m, CostSheet.Of(Account, Terms, Costs with { SurplusWorthPercent = 60 }, 12).Total);
    }

    [Theory]
    [InlineData(9, 20)] // 90 m: two rolls, 100 m, is short of the first tier
    [InlineData(11, 18)] // 150 m
    [InlineData(30, 17)] // 300 m is the second tier itself
    public void The_price_is_that_of_the_tier_that_is_bought(double thousands, decimal price)
    {
        FeltTerms terms = Terms with { Tiers = [new PriceTier(150, 18), new PriceTier(300, 17)] };

        Assert.Equal(price, CostSheet.Of(Account, terms, Costs, thousands).Price.Amount);
    }

    [Fact]
    public void Bare_felt_is_coated_and_coated_felt_is_not()
    {
        CostInputs costs = Costs with { CoatingPerSquareMetre = 0.5m };

        Assert.Equal(207.5m, CostSheet.Of(Account, Terms with { IsBare = true }, costs).Total);
        Assert.Equal(200m, CostSheet.Of(Account, Terms with { IsBare = false }, costs).Total);
        Assert.Null(CostSheet.Of(Account, Terms, costs).Lines[24].Amount);
    }

    [Fact]
    public void The_price_for_a_total_fed_back_gives_that_total_whatever_the_terms() =>
        Gen.Select(Gen.Double[1, 40], Gen.Int[0, 40], Gen.Int[0, 90], Gen.Double[0.5, 80], Gen.Double[100, 400]).Sample((
            price, duty, days, thousands, total) =>
        {
            FeltTerms terms = Terms with
            {
                Price = new FeltPrice((decimal)price, PriceUnit.SquareMetre, "XTS"),
                InvoicedWidthMm = 1520,
                FreightPerRoll = 12,
                DutyPercent = duty,
                CreditDays = days,
                IsBare = true,
            };
            CostInputs costs = Costs with { InterestPercent = 8, SurplusWorthPercent = 30, CoatingPerSquareMetre = 0.4m };
            decimal asked = CostSheet.Of(Account, terms, costs, thousands).PriceForTotal((decimal)total);
            CostSheet there = CostSheet.Of(
                Account, terms with { Price = terms.Price with { Amount = asked } }, costs, thousands);

            Assert.Equal(total, (double)there.Total, 1e-6);
        });
}
