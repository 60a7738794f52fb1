using FeltNest.Cost.Offers;
using FeltNest.Cost.Usage;
using FeltNest.Files.Csv;
using FeltNest.Files.Usage;
using FeltNest.Tests.Rolls;
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
    [InlineData("roll,metres,goodPanels\nA,1,5\nA,1,5\n", "line 3, roll: 'A' stands in the list twice")]
    [InlineData("ticket,roll,metres,goodPanels\n7,A,1,5\n7,B,2,5\n", "line 3, ticket: '7' stands in the list twice")]
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

    [Fact]
    public void One_roll_with_two_orders_has_two_tickets()
    {
        IReadOnlyList<ActualRoll> tickets = Read("ticket,roll,metres,goodPanels\n7,A,10,1000\n8,A,20,2000\n");
        Assert.Equal([("A", 10.0, 1000), ("A", 20.0, 2000)], tickets.Select(t => (t.Roll, t.Metres, t.GoodPanels)));
        Assert.Equal(["ticket 7"], tickets[0].SignedBy);
    }

    [Fact]
    public void What_is_left_blank_is_not_counted_and_that_is_said()
    {
        ListReading reading = new();
        string path = folder.Write(
            "actuals.csv", "roll,metres,goodPanels,widthMm,rejectedPanels\nA,10,1000,1500,5\nB,10,,1500,5\nC,20,2000,1500,\n");
        IReadOnlyList<ActualRoll> rolls = ActualsReader.Read(reading.Open(path));

        Assert.Equal([("A", 1500.0, null), ("C", 1500.0, (int?)null)], rolls.Select(r => (r.Roll, r.WidthMm!.Value, r.RejectedPanels)));
        Assert.Equal(
            [
                $"{path}: line 3, roll B is not counted: blank is goodPanels",
                $"{path}: line 4, rejectedPanels is blank for roll C and so not counted, on no line",
            ], reading.Notes);
    }

    // The squares of 10 mm of the sample lie on a roll of 20 mm, 12 mm apart: 1000 / 12 in a metre.
    [Theory]
    [InlineData("A,10,916,20", null)]
    [InlineData("A,10,917,20", "line 2, goodPanels: roll A: 917 panels from 10 m can hardly be: the layout gives 833 there")]
    [InlineData("A,10,800,15.02", "line 2, widthMm: roll A: 15.02 mm can hardly be: the layout is for 20 mm")]
    [InlineData("A,19100,800,20", "line 2, metres: roll A: 19100 m can hardly be of one roll")]
    public void A_number_that_can_hardly_be_is_asked_about_until_somebody_insists(string line, string? question)
    {
        string path = folder.Write("actuals.csv", "roll,metres,goodPanels,widthMm\n" + line + "\n");
        IReadOnlyList<ActualRoll> Asked(bool insisted) => ActualsReader.Read(
            new ListReading { Insisted = insisted }.Open(path), new TicketDoubts(RollCases.Squares).Of);

        Assert.Single(Asked(insisted: true));
        if (question is null)
        {
            Assert.Single(Asked(insisted: false));
            return;
        }

        InputException fault = Assert.Throws<InputException>(() => Asked(insisted: false));
        Assert.Contains(question, fault.Message, StringComparison.Ordinal);
        Assert.Equal(AskedFor.Insisted, fault.Mend);
    }

    private IReadOnlyList<ActualRoll> Read(string text)
    {
        string path = folder.Path("actuals.csv");
        File.WriteAllText(path, text);
        return ActualsReader.Read(path);
    }
}
