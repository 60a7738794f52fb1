using System.Text.Json.Nodes;
using FeltNest.Files.Layouts;
using FeltNest.Files.Orders;
using FeltNest.Layout;
using FeltNest.Report;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;
using FeltNest.Tests.Cli;
using FeltNest.Tests.Files;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>Dies whose layout has a second part, and dies that cut one band of a layout.</summary>
public sealed class SecondPartTests : IDisposable
{
    private const string Head = "die,ball,layout,strikesLeft,band\n";

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    // A strike is 36 mm: three squares and two plates. 7 balls of plates are 14 plates, 7 strikes; besides come 21 squares, 10 balls.
    [Fact]
    public void The_other_part_is_counted_besides_and_serves_no_order()
    {
        CutDie die = Assert.Single(Dies(18, "D1,plate,layout.json,1000,\n"));
        Assert.Equal((1, "test"), (die.Shape.Part, die.Shape.AlsoBall));
        Assert.Equal([2], die.Shape.ClassPanels);
        Assert.Equal([3], die.Shape.AlsoClasses);

        OrderPlan plan = Planned(die, OrderCases.Roll("R1", 10, 1, width: 32));

        OrderCut cut = Assert.Single(plan.Cuts);
        Assert.Equal((7, 7, 10), (cut.Strikes, cut.GoodBalls, cut.AlsoBalls));
        Assert.Contains(
            OrderReport.Warnings(plan),
            line => line.StartsWith("10 balls of test come besides, cut by D1: they serve no order", StringComparison.Ordinal));
    }

    // A fault on a plate and none on a square: a strike of 36 mm is lost to plates alone, and the share goes by plates.
    [Fact]
    public void On_a_measured_roll_the_ordered_part_alone_counts()
    {
        CutDie die = Assert.Single(Dies(18, "D1,plate,layout.json,1000,\n"));
        FeltRoll measured = RollCases.Roll(118, 32, RollFault.Disc(20, 22, 0.5));
        StockRoll roll = OrderCases.Roll("R1", 0.118, 1, width: 32) with { Measured = measured };
        (OrderPlan plan, IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> tickets) =
            MeasuredPlanner.Run(Question(die, roll), stop: TestContext.Current.CancellationToken);

        int good = tickets.Sum(t => t.Strikes.Yields.Single(y => y.Part == 1).GoodPanels);
        Assert.Equal(5, good);
        Assert.Equal(5 / 6.0, plan.Question.Rolls[0].MeasuredShares["D1"], 1e-12);
        Assert.Equal(good / 2, plan.Cuts.Sum(c => c.GoodBalls));
    }

    [Fact]
    public async Task The_check_finds_a_wrong_count_of_the_other_part()
    {
        OrderPlan plan = Planned(Assert.Single(Dies(18, "D1,plate,layout.json,1000,\n")), OrderCases.Roll("R1", 10, 1, width: 32));
        JsonNode file = JsonNode.Parse(OrderPlanWriter.Json(plan))!;
        Assert.Equal(0, (await CommandRun.Of("check", folder.Write("orders.json", file.ToJsonString()))).Code);

        file["assignments"]![0]!["alsoBalls"] = 11;
        CommandRun run = await CommandRun.Of("check", folder.Write("spoiled.json", file.ToJsonString()));

        Assert.Equal(4, run.Code);
        Assert.Contains("assignments[0].alsoBalls says 11, 10 was found", run.Out, StringComparison.Ordinal);
    }

    // Bands of 12 and 18.0137 mm have no common length: a die for the second band alone cuts one plate every 18.0137 mm.
    [Fact]
    public void A_die_cuts_one_band_where_the_list_says_so()
    {
        CutDie die = Assert.Single(Dies(18.0137, "D1,plate,layout.json,1000,2\n"));

        Assert.Equal((18.0137, 16), (die.Shape.FeedMm, die.Shape.LengthMm), Near);
        Assert.Equal([1], die.Shape.ClassPanels);
        Assert.Null(die.Shape.AlsoBall);
    }

    [Theory]
    [InlineData(
        "D1,T2,layout.json,1000,\n", "2 parts share the layout (test, plate): the ball of the die, 'T2', has to be the name of one")]
    [InlineData("D1,plate,layout.json,1000,3\n", "3 is not there: the layout has 2 bands, counted from 1")]
    public void A_die_that_cuts_nothing_of_its_ball_is_refused(string line, string told) => Assert.Contains(
        told, Assert.Throws<InputException>(() => Dies(18, line)).Message, StringComparison.Ordinal);

    private static bool Near((double, double) one, (double, double) other) =>
        Math.Abs(one.Item1 - other.Item1) < 1e-9 && Math.Abs(one.Item2 - other.Item2) < 1e-9;

    private IReadOnlyList<CutDie> Dies(double secondMm, string lines)
    {
        RollLayout layout = RollCases.TwoParts(secondMm);
        File.WriteAllBytes(folder.Path("layout.json"), LayoutWriter.Write(layout, YieldAccount.Of(layout)));
        return DiesReader.Read(folder.Write("dies.csv", Head + lines));
    }

    private static OrderRequest Question(CutDie die, StockRoll roll) => new()
    {
        Orders = [OrderCases.Order("K", "plate", 7)],
        Rolls = [roll],
        Offers = [],
        Dies = [die],
        Presses = [OrderCases.FreePress],
        Rules = OrderCases.Bare,
    };

    private static OrderPlan Planned(CutDie die, StockRoll roll) =>
        OrderPlanner.Run(Question(die, roll), stop: TestContext.Current.CancellationToken);
}
