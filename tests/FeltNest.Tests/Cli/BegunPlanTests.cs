using System.Text.Json.Nodes;
using Xunit;

namespace FeltNest.Tests.Cli;

/// <summary>A plan made again while some of the one before is cut.</summary>
public sealed class BegunPlanTests : IDisposable
{
    private const string TwoRolls = "R1,woven,L1,20,50,1.5,m,EUR,yes,,\nR2,needled,L2,20,50,4,m,EUR,yes,,\n";

    private readonly OrdersDesk desk = new();

    public void Dispose() => desk.Dispose();

    // 500 balls are 1,000 strikes, 12 m. Of 400 strikes 200 balls and 4.8 m are done.
    [Fact]
    public async Task What_is_cut_is_taken_off_and_the_job_that_is_begun_goes_on_where_it_was()
    {
        await desk.Planned("K1,T2,0.5,2026-03-04,woven,,\n", TwoRolls);
        JsonNode plan = await Again("1,400,,,\n");

        JsonNode order = Assert.Single(plan["orders"]!.AsArray())!;
        Assert.Equal((300, true), (order["balls"]!.GetValue<int>(), order["pins"]!["first"]!.GetValue<bool>()));
        Assert.Equal(("R1", "L1"), (order["pins"]!["rolls"]![0]!.GetValue<string>(), order["pins"]!["lots"]![0]!.GetValue<string>()));
        Assert.Equal(45.2, plan["stock"]![0]!["lengthM"]!.GetValue<double>(), 6);
        Assert.Equal(4600, plan["rack"]![0]!["strikesLeft"]!.GetValue<int>());
        Assert.Equal("D1", plan["presses"]![0]!["mountedDie"]!.GetValue<string>());
        Assert.False(plan["mountings"]![0]!["paid"]!.GetValue<bool>());
        Assert.Equal(600, plan["assignments"]![0]!["strikes"]!.GetValue<int>());
        Assert.Equal(0, (await CommandRun.Of("check", desk.Path("next/orders.json"))).Code);
        Assert.Equal(
            ["dies-after.csv", "dies-now.csv", "orders-after.csv", "orders-now.csv", "orders.csv", "orders.html", "orders.json",
                "stock-after.csv", "stock-now.csv", "tickets.html", "tickets.pdf"],
            Directory.GetFiles(desk.Path("next")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Contains("K1,T2,0.3,", File.ReadAllText(desk.Path("next/orders-now.csv")), StringComparison.Ordinal);
    }

    // R1 gives 125 balls, R2 the other 375 of 500: one of both is begun.
    [Fact]
    public async Task The_rest_of_a_begun_job_is_an_order_of_its_own_where_its_order_wants_more()
    {
        await desk.Planned("K1,T2,0.5,2026-03-04,woven,,\n", "R1,woven,L1,20,3,1.5,m,EUR,yes,,\nR2,woven,L1,20,50,4,m,EUR,yes,,\n");
        JsonNode first = JsonNode.Parse(File.ReadAllText(desk.Path("out/orders.json")))!["assignments"]!.AsArray()
            .Single(a => a!["roll"]!.GetValue<string>() == "R2")!;
        desk.Write("orders.csv", OrdersDesk.OrderHead + "U1,T2,0.1,2026-03-03,woven,9,\nK1,T2,0.5,2026-03-04,woven,,\n");
        JsonNode plan = await Again($"{first["number"]},100,50,,\n");

        Assert.Equal(["U1", "K1 begun", "K1"], plan["orders"]!.AsArray().Select(o => o!["order"]!.GetValue<string>()));
        JsonNode begun = plan["assignments"]![0]!;
        Assert.Equal(("K1 begun", "R2"), (begun["order"]!.GetValue<string>(), begun["roll"]!.GetValue<string>()));
        Assert.Equal(0, (await CommandRun.Of("check", desk.Path("next/orders.json"))).Code);
    }

    [Fact]
    public async Task An_order_of_one_lot_stays_in_the_lot_in_which_some_of_it_is_cut()
    {
        await desk.Planned("K1,T2,0.25,2026-03-04,woven,,\n", "R1,woven,L1,20,3,1.5,m,EUR,yes,,\nR2,woven,L1,20,3,1.5,m,EUR,yes,,\n");
        desk.Write(
            "stock.csv",
            OrdersDesk.StockHead
                + "R1,woven,L1,20,3,1.5,m,EUR,yes,,\nR2,woven,L1,20,3,1.5,m,EUR,yes,,\nR3,woven,L2,20,3,0.1,m,EUR,yes,,\n");
        JsonNode plan = await Again("1,250,,,\n");

        Assert.Equal("R2", Assert.Single(plan["assignments"]!.AsArray())!["roll"]!.GetValue<string>());
    }

    [Fact]
    public async Task What_is_changed_is_told_with_its_reason_and_checked()
    {
        await desk.Planned("K1,T2,0.05,2026-03-04,woven,,\n", TwoRolls);
        desk.Write("stock.csv", OrdersDesk.StockHead + "R7,woven,L1,20,50,1.5,m,EUR,yes,,\n");
        JsonNode plan = await Again("1,0,,,\n", "R7");

        JsonNode change = plan["changes"]!.AsArray().Single(c => c!["what"]!.GetValue<string>() == "roll")!;
        Assert.Equal(
            ("K1", "R1", "R7", "roll R1 is used up or gone"),
            (change["order"]!.GetValue<string>(), change["before"]!.GetValue<string>(), change["after"]!.GetValue<string>(),
                change["reason"]!.GetValue<string>()));
        Assert.Contains("K1, roll: R1 -> R7 (roll R1 is used up or gone)", desk.Last!.Out, StringComparison.Ordinal);
        Assert.Equal(0, (await CommandRun.Of("check", desk.Path("next/orders.json"))).Code);

        change["after"] = "R2";
        CommandRun check = await CommandRun.Of("check", desk.Write("spoiled.json", plan.ToJsonString()));
        Assert.Equal(4, check.Code);
        Assert.Contains(
            "changes: order K1 is stated with R2 after R1", check.Out + string.Join('\n', check.Messages), StringComparison.Ordinal);
    }

    // The press is closed on the day on which the plan before cut.
    [Fact]
    public async Task A_press_that_is_closed_is_told_as_the_reason()
    {
        await desk.Planned("K1,T2,0.05,2026-03-08,woven,,\n", TwoRolls);
        desk.Write("press.json", File.ReadAllText(desk.Path("press.json")).Replace(
            "\"feedToleranceMm\"",
            "\"calendar\": { \"shifts\": [{ \"day\": \"every-day\", \"from\": \"06:00\", \"to\": \"14:00\" }], "
                + "\"closed\": [{ \"from\": \"2026-03-02\", \"to\": \"2026-03-03\" }] }, \"feedToleranceMm\"", StringComparison.Ordinal));
        JsonNode plan = await Again("1,0,,,\n");

        Assert.Equal(("2026-03-02", "2026-03-04", "press P1 is closed then"), Changed(plan, "day"));
        Assert.Contains(
            "<td class=\"t\">press P1 is closed then</td>", File.ReadAllText(desk.Path("next/orders.html")), StringComparison.Ordinal);
    }

    // 600 strikes at 10 a minute are an hour; the urgent order takes the press for the whole of the next day.
    [Fact]
    public async Task An_urgent_order_that_came_is_told_as_the_reason()
    {
        await desk.Planned("K1,T2,0.05,2026-03-04,woven,,\n", TwoRolls);
        desk.Write("orders.csv", OrdersDesk.OrderHead + "K1,T2,0.05,2026-03-04,woven,,\nU1,T2,2,2026-03-03,woven,9,\n");
        JsonNode plan = await Again("1,0,,,\n");

        Assert.Equal("order U1 of higher priority came", Changed(plan, "day").Reason);
    }

    [Fact]
    public async Task A_die_that_is_worn_out_is_told_as_the_reason()
    {
        await desk.Planned("K1,T2,0.05,2026-03-04,woven,,\n", TwoRolls, "D1,T2,layout.json,5000,,,,,\nD2,T2,layout.json,5000,,,,,\n");
        string worn = JsonNode.Parse(File.ReadAllText(desk.Path("out/orders.json")))!["assignments"]![0]!["die"]!.GetValue<string>();
        string other = worn == "D1" ? "D2" : "D1";
        desk.Write(
            "dies.csv",
            File.ReadAllText(desk.Path("dies.csv"))
                .Replace($"{worn},T2,layout.json,5000", $"{worn},T2,layout.json,0", StringComparison.Ordinal));
        JsonNode plan = await Again("1,0,,,\n");

        Assert.Equal((worn, other, $"die {worn} is worn out or not there"), Changed(plan, "die"));
    }

    private static (string Before, string After, string Reason) Changed(JsonNode plan, string what)
    {
        JsonNode change = plan["changes"]!.AsArray()
            .Single(c => c!["what"]!.GetValue<string>() == what && c["order"]!.GetValue<string>() == "K1")!;
        return (change["before"]!.GetValue<string>(), change["after"]!.GetValue<string>(), change["reason"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("9,1,,,", "line 2, ticket: 9 is no ticket of the plan: it has 1")]
    [InlineData("1,10,,,\n1,20,,,", "line 3, ticket: 1 stands in the list twice")]
    [InlineData("1,1106,,,", "line 2, strikes: 1106 is far above the 1000 of ticket 1: at most 1105")]
    [InlineData("1,10,6,,", "line 2, balls: 6 is above the 5 that 10 strikes")]
    [InlineData("1,10,,R3,1", "line 2, roll: 'R3' is not in the stock list; did you mean 'R1'?")]
    [InlineData("1,10,,R2,", "line 2, usableFromM: is blank: roll R2 is not the one of the ticket")]
    [InlineData("1,10,,,51", "line 2, usableFromM: 51 is behind the end of roll R1 at 50 m")]
    public async Task A_list_of_what_is_done_that_contradicts_the_plan_is_refused(string lines, string told)
    {
        await desk.Planned("K1,T2,0.5,2026-03-04,woven,,\n", TwoRolls);
        CommandRun run = await desk.Again(lines + "\n");

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_roll_that_is_longer_than_before_is_refused()
    {
        await desk.Planned("K1,T2,0.5,2026-03-04,woven,,\n", TwoRolls);
        desk.Write("stock.csv", OrdersDesk.StockHead + TwoRolls.Replace(",50,1.5", ",52,1.5", StringComparison.Ordinal));
        CommandRun run = await desk.Again("1,10,,,\n");

        Assert.Equal(2, run.Code);
        Assert.Contains("lengthM: 52 of roll R1 is longer than in the plan before: 50 m", run.Messages[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_is_planned_where_all_is_done_and_a_done_list_needs_its_plan()
    {
        await desk.Planned("K1,T2,0.5,2026-03-04,woven,,\n", TwoRolls);

        Assert.Equal(3, (await desk.Again("1,1000,,,\n")).Code);
        CommandRun run = await desk.Run("orders.csv", "stock.csv", "dies.csv", "next", "--done", desk.Path("done.csv"));
        Assert.Equal(2, run.Code);
        Assert.Contains("--from-plan", run.Messages[0], StringComparison.Ordinal);
    }

    private async Task<JsonNode> Again(string done, string? roll = null)
    {
        CommandRun run = await desk.Again(done);
        Assert.Equal((0, string.Empty), (run.Code, run.Code == 0 ? string.Empty : run.Messages[0]));
        JsonNode plan = JsonNode.Parse(File.ReadAllText(desk.Path("next/orders.json")))!;
        Assert.True(roll is null || plan["assignments"]![0]!["roll"]!.GetValue<string>() == roll);
        return plan;
    }
}
