using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Tests.Files;
using FeltNest.Tests.Rolls;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class OrdersCommandTests : IDisposable
{
    private const string Press = """
        { "schema": "feltnest/press/1", "name": "P1", "ratedForceKn": 200, "bed": { "lengthMm": 400, "widthMm": 400, "marginMm": 10 },
          "strokesPerMinute": 10, "changeOverMinutes": 30, "hours": 40,
          "feedToleranceMm": 0.5, "guideToleranceMm": 0.5 }
        """;

    private const string MeasuredStock = "roll,felt,lot,widthMm,lengthM,price,priceUnit,currency,available,measured\n"
        + "R1,woven,L1,20,50,1.5,m,EUR,yes,measured.json\n";

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Orders_are_planned_written_and_checked()
    {
        CommandRun run = await Planned("K1,T2,0.05,2026-03-04", "--json");

        Assert.Equal(0, run.Code);
        Assert.Equal(
            ["dies-after.csv", "orders-after.csv", "orders.csv", "orders.html", "orders.json", "stock-after.csv", "tickets.html",
                "tickets.pdf"],
            Directory.GetFiles(folder.Path("out")).Select(Path.GetFileName).Order());
        JsonElement plan = JsonDocument.Parse(run.Out).RootElement;

        // One square a strike is half a ball, so 50 balls are 100 strikes: 99 x 12 + 10 + 2 mm.
        Assert.Equal(
            (100, 50),
            (plan
                .GetProperty("assignments")[0]
                .GetProperty("strikes")
                .GetInt32(), plan.GetProperty("assignments")[0].GetProperty("goodBalls").GetInt32()));
        Assert.Equal(1.2, plan.GetProperty("assignments")[0].GetProperty("metres").GetDouble(), 9);
        Assert.Contains("<a href=\"tickets.html#t1\">1</a>", File.ReadAllText(folder.Path("out/orders.html")), StringComparison.Ordinal);
        Assert.Contains("id=\"t1\"", File.ReadAllText(folder.Path("out/tickets.html")), StringComparison.Ordinal);
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("out/orders.json"))).Code);
    }

    [Fact]
    public async Task The_answer_fits_eighty_columns_and_begins_with_the_cost()
    {
        CommandRun run = await Planned("K1,T2,0.05,2026-03-04");

        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.StartsWith("cost of the plan", run.Out.Split('\n')[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_short_order_is_said_and_the_rest_is_planned()
    {
        CommandRun run = await Planned("K1,T2,0.05,2026-03-04\nK2,T2,9,2026-03-04");

        Assert.Equal(0, run.Code);
        Assert.Contains(
            run.Messages,
            line => line.Contains("warning: order K2 is ", StringComparison.Ordinal)
                && line.Contains("balls short", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("cost", "cost: ")]
    [InlineData("strikes", "assignment 1: states 50 good balls")]
    [InlineData("from", "assignment 1: begins at ")]
    [InlineData("hour", "assignment 1: hours ")]
    [InlineData("remnant", "roll R1: ")]
    [InlineData("left", "die D1: 100 strikes, of 7")]
    [InlineData("hours", "press P1: busy for ")]
    [InlineData("over", "order K1: 50 balls are cut where 20 are wanted")]
    [InlineData("gap", "gapPercent: 5 stated")]
    [InlineData("badly", "badlyShort: true stated, 0 of 50 balls are missing")]
    [InlineData("bound", "bound: -7 is below nothing")]
    [InlineData("arrives", "assignment 1: cuts roll R1 on 2026-03-02, before it arrives on 2026-03-20")]
    public async Task A_plan_that_was_changed_is_a_violation(string change, string told)
    {
        await Planned("K1,T2,0.05,2026-03-04", "--quiet");
        JsonNode root = JsonNode.Parse(File.ReadAllText(folder.Path("out/orders.json")))!;
        JsonNode first = root["assignments"]![0]!;
        switch (change)
        {
            case "cost": root["cost"] = 1; break;
            case "strikes": first["strikes"] = 90; break;
            case "from": first["fromM"] = -1; break;
            case "hour": first["startHour"] = 0; break;
            case "remnant": root["remnants"]![0]!["lengthM"] = 49; break;
            case "over": root["orders"]![0]!["balls"] = 20; break;
            case "badly": root["badlyShort"] = true; break;
            case "gap": root["gapPercent"] = 5; break;
            case "bound": root["bound"] = -7; break;
            case "arrives": root["stock"]![0]!["received"] = "2026-03-20"; break;
            case "left": root["rack"]![0]!["strikesLeft"] = 7; break;
            default: root["presses"]![0]!["hours"] = 0.1; break;
        }

        CommandRun run = await CommandRun.Of("check", folder.Write("changed.json", root.ToJsonString()), "--json");

        Assert.Equal(4, run.Code);
        Assert.Contains(
            JsonDocument.Parse(run.Out).RootElement.GetProperty("violations").EnumerateArray(),
            v => v.GetString()!.StartsWith(told, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_bad_day_is_one_line_and_exit_code_two()
    {
        CommandRun run = await Planned("K1,T2,0.05,4.3.2026");

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains("line 2, due: '4.3.2026' is not a day", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_roll_measured_narrower_than_the_die_everywhere_is_not_cut_and_that_is_told()
    {
        // The stock says 20 mm, which the die needs; measured are 19.9 and 19.95.
        File.WriteAllText(folder.Path("measured.json"), """
            { "schema": "feltnest/roll/1", "name": "R1", "lengthM": 50,
              "widths": [ { "xM": 0, "widthMm": 19.9 }, { "xM": 9, "widthMm": 19.95 } ] }
            """);
        CommandRun run = await PlannedFrom(
            MeasuredStock,
            "K1,T2,0.05,2026-03-04", "--quiet");

        Assert.Equal((3, string.Empty), (run.Code, run.Out));
        Assert.Contains("is 20 mm wide or more", Assert.Single(run.Messages), StringComparison.Ordinal);
        Assert.Contains("the widest is 19.95 mm", run.Messages[0], StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("out")));
    }

    [Fact]
    public async Task A_roll_against_the_feed_is_turned_for_a_one_way_die_and_that_is_told_everywhere()
    {
        File.WriteAllText(folder.Path("measured.json"), """
            { "schema": "feltnest/roll/1", "name": "R1", "lengthM": 50, "widths": [ { "xM": 0, "widthMm": 20 } ],
              "napToward": "-x", "faults": [ { "xMm": 49900, "yMm": 8, "radiusMm": 2 } ] }
            """);
        CommandRun run = await PlannedFrom(oneWay: true, MeasuredStock, "K1,T2,0.05,2026-03-04");

        Assert.Equal(0, run.Code);
        Assert.Contains("TURN END FOR END before cutting: R1", run.Out, StringComparison.Ordinal);
        Assert.Contains(run.Messages, line => line.Contains("TURN END FOR END before cutting: R1", StringComparison.Ordinal));
        JsonNode plan = JsonNode.Parse(File.ReadAllText(folder.Path("out/orders.json")))!;
        Assert.True(plan["stock"]![0]!["turned"]!.GetValue<bool>());
        Assert.Equal(("-x", "turn"), (plan["stock"]![0]!["napToward"]!.GetValue<string>(), plan["rules"]!["nap"]!.GetValue<string>()));

        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("out/orders.json"))).Code);
    }

    [Fact]
    public async Task A_nap_unlike_the_measured_one_is_refused()
    {
        File.WriteAllText(folder.Path("measured.json"), """
            { "schema": "feltnest/roll/1", "name": "R1", "lengthM": 50, "widths": [ { "xM": 0, "widthMm": 20 } ], "napToward": "-x" }
            """);
        CommandRun run = await PlannedFrom(
            MeasuredStock.Replace("measured\n", "measured,napToward\n", StringComparison.Ordinal)
                .Replace("measured.json\n", "measured.json,+x\n", StringComparison.Ordinal),
            "K1,T2,0.05,2026-03-04");

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains("line 2, napToward: +x is not the way of the nap in", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    private Task<CommandRun> Planned(string orders, params string[] options) => PlannedFrom(
        "roll,felt,lot,widthMm,lengthM,price,priceUnit,currency,available\nR1,woven,L1,20,50,1.5,m,EUR,yes\n", orders, options);

    private Task<CommandRun> PlannedFrom(string stock, string orders, params string[] options) =>
        PlannedFrom(oneWay: false, stock, orders, options);

    private async Task<CommandRun> PlannedFrom(bool oneWay, string stock, string orders, params string[] options)
    {
        RollLayout lay = RollCases.Squares with { Rules = RollCases.Squares.Rules with { OneWay = oneWay } };
        File.WriteAllBytes(folder.Path("layout.json"), LayoutWriter.Write(lay, YieldAccount.Of(lay)));
        return await CommandRun.Of([
            "orders", folder.Write("orders.csv", "order,ball,thousandBalls,due\n" + orders + "\n"), "--stock",
            folder.Write("stock.csv", stock), "--dies",
            folder.Write("dies.csv", "die,ball,layout,strikesLeft\nD1,T2,layout.json,5000\n"), "--press", folder.Write("press.json", Press),
            "--start", "2026-03-02", "--out", folder.Path("out"), .. options]);
    }
}
