using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using Xunit;

namespace FeltNest.Tests.Cost.Sheet;

public sealed class CostSheetTests
{
    private static FeltAccount Account { get; } = FeltAccount.Of(ConstructedExample.Plan, ConstructedExample.Losses, 780);

    private static CostSheet Sheet { get; } = CostSheet.Of(Account, FeltTerms.Of(ConstructedExample.Price), ConstructedExample.Costs);

    [Fact]
    public void The_constructed_example_costs_what_its_lines_say()
    {
        Assert.Equal(148.98m, Math.Round(Sheet.AmountOf(10), 2));
        Assert.Equal(-0.74m, Math.Round(Sheet.AmountOf(11), 2));
        Assert.Equal(0.70m, Math.Round(Sheet.AmountOf(13), 2));
        Assert.Equal(2.70m, Math.Round(Sheet.AmountOf(14), 2));
        Assert.Equal(1.08m, Math.Round(Sheet.AmountOf(15), 2));
        Assert.Equal(152.72m, Math.Round(Sheet.Total, 2));
        Assert.Equal(2.477, Sheet.Lines[10].Quantity!.Value, 0.0005);
        Assert.Equal(60.02, Sheet.Lines[13].Quantity!.Value, 0.005);
        Assert.Equal(["cutting board", "handling and inspection", "overhead"], Sheet.NotCounted);
    }

    [Fact]
    public void Lines_run_from_1_to_25_and_the_felt_lines_add_up()
    {
        Assert.Equal(Enumerable.Range(1, 25), Sheet.Lines.Select(l => l.Number));
        Assert.Equal(Sheet.AmountOf(10), Sheet.FeltParts.Sum(l => l.Amount ?? 0));
        Assert.Equal(Sheet.Lines[8].Quantity!.Value, Sheet.Lines.Take(8).Sum(l => l.Quantity!.Value), 1e-9);
        Assert.Equal(13.000, Sheet.Lines[0].Quantity!.Value, 0.0005);
    }

    [Theory]
    [InlineData(PriceUnit.Metre, 10.642)]
    [InlineData(PriceUnit.SquareMetre, 16.175)]
    [InlineData(PriceUnit.Kilogram, 12.617)]
    public void Felt_is_paid_for_by_the_unit_of_its_price(PriceUnit unit, double quantity) =>
        Assert.Equal(
            2 * quantity,
            (double)CostSheet.Of(Account, FeltTerms.Of(new FeltPrice(2m, unit, "XTS")), ConstructedExample.Costs).AmountOf(10), 0.001);

    [Fact]
    public void Overhead_is_a_share_of_what_is_spent_beside_the_felt()
    {
        CostInputs costs = ConstructedExample.Costs with { BoardPerStrike = 0.01m, HandlingPerThousandBalls = 4m, OverheadPercent = 50m };
        CostSheet sheet = CostSheet.Of(Account, FeltTerms.Of(ConstructedExample.Price), costs);

        // 0.70 + 2.70 + 1.08 + 60.019 x 0.01 + 4 = 9.08, half of it 4.54; by hand.
        Assert.Equal(4.54m, Math.Round(sheet.AmountOf(18), 2));
        Assert.Equal(sheet.AmountOf(12) + (1.5m * Enumerable.Range(13, 5).Sum(sheet.AmountOf)), sheet.Total);
        Assert.Empty(sheet.NotCounted);
    }

    [Fact]
    public void At_the_price_for_a_total_the_total_is_that_one()
    {
        decimal price = Sheet.PriceForTotal(140m);
        Assert.Equal(
            140m, CostSheet.Of(Account, FeltTerms.Of(ConstructedExample.Price with { Amount = price }), ConstructedExample.Costs).Total, 9);
        // (152.72 - 140) / 10.642 below 14; by hand.
        Assert.Equal(12.80m, Math.Round(price, 2));
    }

    [Fact]
    public void Another_currency_needs_its_rate()
    {
        FeltPrice foreign = ConstructedExample.Price with { Currency = "XXX" };
        InputException error = Assert.Throws<InputException>(() => CostSheet.Of(Account, FeltTerms.Of(foreign), ConstructedExample.Costs));
        Assert.Contains("XXX cannot be mixed with XTS", error.Message, StringComparison.Ordinal);

        CostSheet sheet =
            CostSheet.Of(Account, FeltTerms.Of(foreign), ConstructedExample.Costs with { Rates = [new CurrencyRate("XXX", 0.5m)] });
        Assert.Equal(Sheet.AmountOf(10) / 2, sheet.AmountOf(10));
    }

    [Fact]
    public void A_new_rule_shares_the_price_of_the_die_among_more_strikes() =>
        // (900 + 3 x 100) / (4 x 50,000); by hand.
        Assert.Equal(0.006m, new DieCost { Price = 900, LifeStrikes = 50_000, ReRules = 3, ReRulePrice = 100 }.PerStrike);

    [Fact]
    public void A_price_by_the_kilogram_needs_the_mass() => Assert.Throws<InputException>(
        () => CostSheet.Of(
            FeltAccount.Of(ConstructedExample.Plan, ConstructedExample.Losses, null),
            FeltTerms.Of(new FeltPrice(2m, PriceUnit.Kilogram, "XTS")),
            CostInputs.Bare("XTS")));
}
