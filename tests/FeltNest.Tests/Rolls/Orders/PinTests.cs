using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Files.Orders;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Patterns;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Orders.Search;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>Orders held to a lot, a roll, a press, a die or a day, and kept from them.</summary>
public sealed class PinTests
{
    public static TheoryData<string> Kinds => ["lot", "roll", "press", "die", "notLot", "notRoll", "notPress", "notDie"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void An_order_is_cut_where_it_is_held_to_though_another_place_is_cheaper(string kind)
    {
        OrderPlan free = Planned(Question(null));
        OrderPlan held = Planned(Question(PinsOf(kind)));

        Assert.Equal("A P1 D1", Places(free));
        Assert.Equal(
            kind switch
            {
                "lot" or "roll" or "notLot" or "notRoll" => "B P1 D1",
                "press" or "notPress" => "A P2 D1",
                _ => "A P1 D2",
            }, Places(held));
        Assert.Equal(0, held.Rank.Balls);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_check_finds_an_order_that_is_cut_elsewhere(string kind)
    {
        OrderPlan plan = Planned(Question(null));
        OrderPlan spoiled = With(plan, PinsOf(kind));
        Assert.Contains(
            OrderPlanCheck.Violations(StatedOrders.Of(spoiled)), v => v.StartsWith("assignment 1: order K is ", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_of_an_order_is_cut_before_its_day_and_what_is_cut_later_is_late()
    {
        OrderPins thursday = new() { Day = OrderCases.Monday.AddDays(3) };
        OrderPlan plan = Planned(Question(thursday));

        Assert.Equal(OrderCases.Monday.AddDays(3), plan.Results[0].Done);
        Assert.Equal(0, plan.Results[0].DaysLate);
        OrderPlan early = With(Planned(Question(null)), thursday);
        Assert.Contains(
            OrderPlanCheck.Violations(StatedOrders.Of(early)),
            v => v.Contains("is not to be cut before 2026-03-05", StringComparison.Ordinal));

        // Saturday is no day of work: it is cut on Monday, two days late.
        OrderPlan late = Planned(Question(new OrderPins { Day = OrderCases.Monday.AddDays(5) }));
        Assert.Equal(2, late.Results[0].DaysLate);
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(late)));
    }

    [Fact]
    public void The_rest_of_a_job_that_is_begun_comes_first_on_its_press_though_another_order_is_late_by_it()
    {
        OrderRequest question = Question(new OrderPins { Presses = ["P1"], First = true });
        CoverOrder urgent = OrderCases.Order("U", "b", 4800, 0) with { Priority = 9, Pins = new OrderPins { Presses = ["P1"] } };
        OrderPlan plan = Planned(question with
        {
            Orders = [urgent, question.Orders[0] with { Balls = 4800 }],
            Presses = [OrderCases.Press("P1", 20, 30, null)],
            Rolls = [OrderCases.Roll("A", 2000, 1), OrderCases.Roll("B", 2000, 2)],
        });

        Assert.Equal(["K", "U"], plan.Cuts.OrderBy(c => c.StartHour).Select(c => c.Order.Name));
        Assert.Equal(1, plan.Late);
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        OrderPlan spoiled = plan with
        {
            Cuts =
            [
                .. plan.Cuts.Select(c => c with { Order = c.Order with { Pins = c.Order.Pins! with { First = c.Order.Name == "U" } } }),
            ],
        };
        Assert.Contains(
            OrderPlanCheck.Violations(StatedOrders.Of(spoiled)), v => v.Contains("that is begun", StringComparison.Ordinal));
    }

    // Of like rolls none can stand for one that an order is held to or kept from. 
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_plan_by_patterns_keeps_what_its_orders_are_held_to(int seed)
    {
        OrderRequest shop = OrderCases.Workshop(seed, 8, 24);
        Random random = new(seed);
        StockRoll[] rolls = [.. shop.Rolls.Select(r => r with { LengthM = 45, WidthMm = 1500, FaultPercent = 1, PricePerMetre = 18 })];
        CoverOrder Held(CoverOrder order)
        {
            StockRoll[] own = [.. rolls.Where(r => r.Felt == order.Felt)];
            OrderPins pins = random.Next(4) switch
            {
                0 => new OrderPins { Rolls = [own[^1].Name, own[0].Name] },
                1 => new OrderPins { NotRolls = [own[0].Name, own[1].Name] },
                2 => new OrderPins { NotLots = [own[0].Lot] },
                _ => new OrderPins { NotPresses = ["P2"] },
            };
            return order with { Pins = pins };
        }

        OrderRequest question = shop with { Rolls = rolls, Orders = [.. shop.Orders.Select(Held)] };
        BestPlan best = new(FirstFitPlanner.Run(question), null);
        PatternPlanner.Run(question, best, 1, OrderSearch.ShortPrice(question), TestContext.Current.CancellationToken);
        OrderPlan plan = best.Plan;

        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        Assert.All(plan.Cuts, c => Assert.True(c.Order.Pins!.Takes(c.Roll, c.Die) && c.Order.Pins.Takes(c.Press)));
    }

    [Fact]
    public void What_an_order_is_held_to_stays_in_the_file_and_is_checked_from_it()
    {
        OrderPins pins = PinsOf("roll") with { NotDies = ["D2"], Day = OrderCases.Monday };
        byte[] file = OrderPlanWriter.Json(Planned(Question(pins)));
        using JsonDocument sound = JsonDocument.Parse(file);
        OrderPins read = OrderPlanReader.Read("orders.json", sound.RootElement).Plan.Question.Orders[0].Pins!;
        Assert.Equal(("B", "D2", OrderCases.Monday), (read.Rolls[0], read.NotDies[0], read.Day));
        Assert.Empty(OrderPlanCheck.Violations(OrderPlanReader.Read("orders.json", sound.RootElement)));

        JsonNode root = JsonNode.Parse(file)!;
        root["orders"]![0]!["pins"]!["rolls"]![0] = "A";
        using JsonDocument spoiled = JsonDocument.Parse(root.ToJsonString());
        Assert.Contains(
            OrderPlanCheck.Violations(OrderPlanReader.Read("orders.json", spoiled.RootElement)),
            v => v.Contains("is held to roll A", StringComparison.Ordinal));
    }

    private static OrderPins PinsOf(string kind) => kind switch
    {
        "lot" => new OrderPins { Lots = ["L2"] },
        "roll" => new OrderPins { Rolls = ["B"] },
        "press" => new OrderPins { Presses = ["P2"] },
        "die" => new OrderPins { Dies = ["D2"] },
        "notLot" => new OrderPins { NotLots = ["L1"] },
        "notRoll" => new OrderPins { NotRolls = ["A"] },
        "notPress" => new OrderPins { NotPresses = ["P1"] },
        _ => new OrderPins { NotDies = ["D1"] },
    };

    // Roll A is cheaper, D1 takes less felt, and P1 has D1 and D2 mounted in less time.
    private static OrderRequest Question(OrderPins? pins) => new()
    {
        Orders = [OrderCases.Order("K", "b", 100) with { Pins = pins }],
        Rolls = [OrderCases.Roll("A", 50, 1), OrderCases.Roll("B", 50, 2, "L2")],
        Offers = [],
        Dies = [OrderCases.Die("D1", "b", 2, 100, 100), OrderCases.Die("D2", "b", 2, 120, 120)],
        Presses = [OrderCases.Press("P1", 60, 10, null), OrderCases.Press("P2", 60, 30, null)],
        Rules = OrderCases.Bare with { HourRate = 40 },
    };

    private static OrderPlan Planned(OrderRequest question) => OrderPlanner.Run(question, 1, stop: TestContext.Current.CancellationToken);

    private static OrderPlan With(OrderPlan plan, OrderPins pins)
    {
        CoverOrder order = plan.Question.Orders[0] with { Pins = pins };
        return plan with
        {
            Question = plan.Question with { Orders = [order] },
            Cuts = [.. plan.Cuts.Select(c => c with { Order = order })],
            Results = [.. plan.Results.Select(r => r with { Order = order })],
        };
    }

    private static string Places(OrderPlan plan)
    {
        OrderCut cut = Assert.Single(plan.Cuts);
        return $"{cut.Roll.Name} {cut.Press.Name} {cut.Die.Name}";
    }
}
