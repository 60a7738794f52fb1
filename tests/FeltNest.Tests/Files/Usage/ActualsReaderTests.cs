using FeltNest.Cost.Offers;
using FeltNest.Cost.Usage;
using FeltNest.Files.Usage;
using Xunit;

namespace FeltNest.Tests.Files.Usage;

public sealed class ActualsReaderTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_actuals_of_the_demo_are_read()
    {
        IReadOnlyList<ActualRoll> rolls = ActualsReader.Read(RepositoryFile.PathOf("shapes", "demo", "actuals.csv"));

        Assert.Equal(["demo A17", "demo A18", "demo B04"], rolls.Select(r => r.Roll));
        Assert.Equal(
            (48.2, 8402, 1476.0, 0.9, 170, 52, 10),
            (rolls[
                2].Metres, rolls[2].GoodPanels, rolls[2].WidthMm, rolls[2].EndsM, rolls[2].FaultPanels, rolls[2].RejectedPanels,
                rolls[2].UnpairedPanels));
        Assert.Equal(new FeltPrice(11.80m, PriceUnit.SquareMetre, "EUR"), rolls[2].Price);
        Assert.Equal(["2026-11-03", "op 2", "sup 1"], rolls[2].SignedBy);
    }

    [Fact]
    public void Columns_left_out_are_not_recorded_and_semicolons_take_decimal_commas()
    {
        ActualRoll roll = Assert.Single(Read("\uFEFFgoodPanels;roll;metres\r\n\r\n912;\"R;1\";12,6\r\n"));

        Assert.Equal(("R;1", 12.6, 912), (roll.Roll, roll.Metres, roll.GoodPanels));
        Assert.Equal(
            (null, null, null, null, null, null),
            (roll.WidthMm, roll.EndsM, roll.FaultPanels, roll.RejectedPanels, roll.UnpairedPanels, roll.Price));
    }

    [Theory]
    [InlineData("roll,metres,goodPanels\nA,1,5.5\n", "line 2, goodPanels: 5.5 is not a whole number")]
    [InlineData("roll,metres,goodPanels\nA,1,-5\n", "line 2, goodPanels: -5 is outside 0 to 10000000")]
    [InlineData("roll,metres,goodPanels,endsM\nA,1,5,\n", "line 2, endsM: is blank: a number is wanted")]
    [InlineData("roll,metres,goodPanels\nA,1,5\nA,2,5\n", "line 3, roll: 'A' stands in the list twice")]
    [InlineData("roll,metres,good\nA,1,5\n", "line 1: the column 'good' is not known; did you mean 'goodPanels'?")]
    [InlineData("roll,metres,goodPanels,price\nA,1,5,3\n", "has the column price and not priceUnit")]
    [InlineData("roll,metres,goodPanels,price,priceUnit,currency\nA,1,5,3,yd,EUR\n", "line 2, priceUnit: 'yd' is not allowed: m, m2, kg")]
    [InlineData("roll,metres,goodPanels\nA,0,5\n", "line 2, metres: 0 is outside 0.1 to 100000 m")]
    public void A_bad_line_is_named_with_its_value(string text, string problem)
    {
        string message = Assert.Throws<InputException>(() => Read(text)).Message;
        Assert.Contains(problem, message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', message);
    }

    private IReadOnlyList<ActualRoll> Read(string text)
    {
        string path = folder.Path("actuals.csv");
        File.WriteAllText(path, text);
        return ActualsReader.Read(path);
    }
}
