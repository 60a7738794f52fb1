using System.Text.Json;
using FeltNest.Cost.Sheet;
using FeltNest.Files.Orders;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using Xunit;

namespace FeltNest.Tests.Cli;

/// <summary>The lists that a plan of orders leaves for the next one.</summary>
public sealed class AfterListTests : IDisposable
{
    private readonly OrdersDesk desk = new();

    public void Dispose() => desk.Dispose();

    // One square a strike is half a ball: 50 balls are 100 strikes, 99 x 12 + 10 + 2 mm. Nothing is lost at the ends.
    [Fact]
    public async Task Rolls_and_dies_are_listed_with_what_is_left_of_them()
    {
        await desk.Planned(
            "K1,T2,0.05,2026-03-04,woven,,\n",
            "R1,woven,L1,20,50,1.5,m,EUR,yes,,\nR2,needled,L2,20,30,40,m2,EUR,yes,,700\nR3,woven,L1,20,9,1,kg,EUR,no,,500\n");

        IReadOnlyList<StockEntry> rolls = Stock();
        Assert.Equal(["R1", "R2", "R3"], rolls.Select(r => r.Roll.Name));
        Assert.Equal([48.8, 30, 9], rolls.Select(r => r.Roll.LengthM));
        Assert.Equal([true, true, false], rolls.Select(r => r.Available));
        Assert.Equal([1.5m, 40, 1], rolls.Select(r => r.Price.Amount));
        Assert.Equal((700, 500), (rolls[1].MassPerAreaGsm, rolls[2].MassPerAreaGsm));
        Assert.Equal(4900, Assert.Single(DiesReader.Read(desk.Path("out/dies-after.csv"))).StrikesLeft);
        Assert.Single(File.ReadAllLines(desk.Path("out/orders-after.csv")));
    }

    [Fact]
    public async Task Orders_that_are_short_are_left_with_their_lot_and_the_next_run_reads_the_lists_as_they_are()
    {
        await desk.Planned(
            "K1,T2,0.05,2026-03-04,needled,,\nK2,T2,1,2026-03-05,woven,3,R1\n",
            "R1,woven,L1,20,3,1.5,m,EUR,yes,,\nR2,needled,L2,20,30,40,m2,EUR,yes,,\n");

        // 250 strikes on 3 m: 125 balls.
        string[] lines = File.ReadAllLines(desk.Path("out/orders-after.csv"));
        Assert.Equal(2, lines.Length);
        Assert.Equal("K2,T2,0.875,2026-03-05,one,woven,0,3,L1,R1,,,,,,,", lines[1]);
        Assert.Equal(("R1", false), (Stock()[0].Roll.Name, Stock()[0].Available));

        CommandRun next = await desk.Run("out/orders-after.csv", "out/stock-after.csv", "out/dies-after.csv", "next");
        Assert.Equal(3, next.Code);
        Assert.Contains("order K2", next.Messages[^1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_run_goes_on_where_the_first_ends()
    {
        await desk.Planned("K1,T2,1,2026-03-04,woven,,\n", "R1,woven,L1,20,3,1.5,m,EUR,yes,,\nR2,needled,L2,20,30,4,m,EUR,yes,,\n");
        File.AppendAllText(desk.Path("out/stock-after.csv"), "R9,woven,L1,20,50,1.5,m,EUR,yes,,,,,\n");
        CommandRun next = await desk.Run("out/orders-after.csv", "out/stock-after.csv", "out/dies-after.csv", "next");

        Assert.Equal(0, next.Code);
        JsonElement plan = JsonDocument.Parse(File.ReadAllText(desk.Path("next/orders.json"))).RootElement;
        Assert.Equal(875, plan.GetProperty("assignments")[0].GetProperty("goodBalls").GetInt32());
        Assert.Equal("R9", plan.GetProperty("assignments")[0].GetProperty("roll").GetString());
    }

    [Fact]
    public async Task A_measured_roll_begins_where_the_plan_ended()
    {
        File.WriteAllText(desk.Path("measured.json"), """
            { "schema": "feltnest/roll/1", "name": "R1", "lengthM": 50,
              "widths": [ { "xM": 0, "widthMm": 20.1 }, { "xM": 1, "widthMm": 20.1 },
                          { "xM": 1.1, "widthMm": 20 }, { "xM": 50, "widthMm": 20 } ] }
            """);
        await desk.Planned("K1,T2,0.05,2026-03-04,woven,,\n", "R1,woven,L1,20.1,50,1.5,m,EUR,yes,measured.json,\n");

        StockRoll rest = Stock()[0].Roll;
        Assert.Equal(1.2, rest.BeginM, 6);
        Assert.Equal((48.8, 20), (rest.LengthM, rest.WidthMm));
        Assert.Equal(50_000, rest.Measured!.LengthMm);
    }

    [Fact]
    public async Task A_roll_that_was_turned_is_listed_as_turned_and_not_measured_and_that_is_told()
    {
        File.WriteAllText(desk.Path("measured.json"), """
            { "schema": "feltnest/roll/1", "name": "R1", "lengthM": 50, "widths": [ { "xM": 0, "widthMm": 20 } ], "napToward": "-x" }
            """);
        CommandRun run = await desk.Planned(
            "K1,T2,0.05,2026-03-04,woven,,\n", "R1,woven,L1,20,50,1.5,m,EUR,yes,measured.json,\n", oneWay: true);

        StockEntry rest = Stock()[0];
        Assert.Equal((null, NapDirection.Forward), (rest.MeasuredFile, rest.Roll.Nap));
        Assert.Equal(48.8, rest.Roll.LengthM, 6);
        Assert.Contains(run.Messages, line => line.Contains("R1 is turned end for end: stock-after.csv", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_die_that_was_made_is_there_from_its_day_with_the_strikes_and_new_rules_that_are_left()
    {
        await desk.Planned(
            "K1,T2,0.05,2026-03-14,woven,,\n", "R1,woven,L1,20,50,1.5,m,EUR,yes,,\n", dies: "D1,T2,layout.json,0,90,70,3,20,4\n");

        // 100 strikes of a new die with 70 and one new rule of 70.
        CutDie die = Assert.Single(DiesReader.Read(desk.Path("out/dies-after.csv")));
        Assert.Equal((40, 2, 20, 70), (die.StrikesLeft, die.MostReRules, die.ReRulePrice, die.LifeStrikes));
        Assert.Equal((null, new DateOnly(2026, 3, 6)), (die.MakePrice, die.From));
    }

    [Fact]
    public async Task Rolls_bought_are_listed_with_the_day_they_come_and_a_name_of_their_own()
    {
        File.WriteAllText(
            desk.Path("offers.csv"),
            "name,felt,widthMm,lengthM,price,priceUnit,currency,deliveryDays\nmill,woven,20,5,2,m,EUR,3\n");
        await desk.Planned(
            "K1,T2,0.05,2026-03-14,woven,,\n",
            "R1,needled,L1,20,50,1.5,m,EUR,yes,,\nmill 2026-03-02 #1,needled,L1,20,50,1.5,m,EUR,yes,,\n",
            options: ["--offers", desk.Path("offers.csv")]);

        StockRoll bought = Stock()[2].Roll;
        Assert.Equal(("mill 2026-03-02 #2", "mill", new DateOnly(2026, 3, 5)), (bought.Name, bought.Lot, bought.Received));
        Assert.Equal((3.8, 2), (bought.LengthM, bought.PricePerMetre));
    }

    [Fact]
    public async Task A_name_that_a_spreadsheet_would_run_is_written_harmless_and_read_as_it_was()
    {
        await desk.Planned("K1,T2,0.05,2026-03-04,woven,,\n", "=1+1,woven,L1,20,50,1.5,m,EUR,yes,,\n");

        Assert.Contains("\n'=1+1,", File.ReadAllText(desk.Path("out/stock-after.csv")), StringComparison.Ordinal);
        Assert.Equal("=1+1", Stock()[0].Roll.Name);
    }

    private IReadOnlyList<StockEntry> Stock() =>
        new StockReader(CostInputs.Bare("EUR")).Entries(FeltNest.Files.InputText.OfFile(desk.Path("out/stock-after.csv")));
}
