using System.Text.Json;
using FeltNest.Files.Orders;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Assembly;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Clock;
using FeltNest.Rolls.Orders.Planned;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders.Clock;

/// <summary>Each rule of times, mountings and overtime broken once, and told by the check.</summary>
public sealed class SpoiledTimesTests
{
    private static DateTime Saturday { get; } = OrderCases.Monday.AddDays(5).ToDateTime(TimeOnly.MinValue);

    [Fact]
    public void The_plans_that_are_spoiled_here_are_sound_and_stay_so_in_a_file()
    {
        foreach (OrderPlan plan in new[] { Plan(), OvertimePlan() })
        {
            Assert.Empty(Violations(plan));
            using JsonDocument file = JsonDocument.Parse(OrderPlanWriter.Json(plan));
            Assert.Empty(OrderPlanCheck.Violations(OrderPlanReader.Read("orders.json", file.RootElement)));
        }

        Assert.Equal(6, Assert.Single(OvertimePlan().Overtime).Hours, 6);
        Assert.Equal(270, OvertimePlan().Cost.Overtime);
    }

    [Fact]
    public void Work_in_closed_hours_is_told() => Told(
        Plan(), plan => Moved(plan, 1, 12), "is open for");

    [Fact]
    public void Work_that_is_shorter_than_its_strikes_is_told() => Told(
        Plan(), plan => Cut(plan, 1, cut => cut with { EndHour = cut.EndHour - 0.2 }), "takes 1 h");

    [Fact]
    public void Two_things_at_once_on_a_press_are_told() => Told(
        Plan(), plan => Moved(plan, 2, -0.5), "which is free from");

    [Fact]
    public void A_roll_on_two_presses_at_once_is_told()
    {
        OrderPlan plan = Plan();
        OrderCut first = plan.Cuts[0];
        OrderCut other = plan.Cuts.First(c => c.Press.Name != first.Press.Name);
        Told(plan, p => Cut(p, other.Number, cut => cut with { Roll = first.Roll, FromM = 200 }), "cuts roll R1");
    }

    [Fact]
    public void A_die_that_is_not_mounted_is_told() => Told(
        Plan(), plan => plan with { Mountings = [.. plan.Mountings.Skip(1)] }, "is not mounted on press");

    [Fact]
    public void A_mounting_that_is_too_short_is_told() => Told(
        Plan(), plan => Mounted(plan, m => m with { StartHour = m.StartHour + 0.1 }), "takes 0.5 h");

    [Fact]
    public void A_die_mounted_while_it_works_elsewhere_is_told()
    {
        OrderPlan plan = Plan();
        Mounting second = plan.Mountings.Last(m => m.Paid);
        CutDie busy = plan.Cuts.First(c => c.Press.Name != second.Press.Name).Die;
        Told(plan, p => Mounted(p, m => m with { Die = busy, StartHour = 7, EndHour = 7.5 }), "the die is free from");
    }

    [Fact]
    public void A_die_that_does_not_stand_where_the_plan_says_is_told() => Told(
        Plan(), plan => Mounted(plan, m => m with { Paid = false, EndHour = m.StartHour }), "standing on press");

    [Fact]
    public void A_roll_change_that_is_left_out_or_not_needed_is_told()
    {
        Told(Plan(), plan => Cut(plan, 1, cut => cut with { RollChange = false }), "no roll change is stated");
        OrderPlan same = Plan(oneRoll: true);
        OrderCut stays = same.Cuts.First(c => !c.RollChange);
        Told(same, plan => Cut(plan, stays.Number, cut => cut with { RollChange = true }), "where it is already");
    }

    [Fact]
    public void A_roll_change_without_its_minutes_is_told() => Told(
        Plan(), plan => Moved(plan, 1, -0.05), "changing the roll takes");

    [Fact]
    public void A_roll_or_a_die_that_is_not_there_yet_is_told()
    {
        Told(
            Plan(), plan => Cut(plan, 1, cut => cut with { Roll = cut.Roll with { Received = OrderCases.Monday.AddDays(3) } }),
            "before it arrives");
        Told(
            Plan(), plan => Cut(plan, 1, cut => cut with { Die = cut.Die with { From = OrderCases.Monday.AddDays(3) } }),
            "is free from hour 72");
    }

    [Fact]
    public void A_press_that_works_more_than_its_hours_is_told() => Told(
        Plan(), plan => plan with
        {
            Question = plan.Question with { Presses = [.. plan.Question.Presses.Select(p => p with { Hours = 1 })] },
        }, "busy for");

    [Fact]
    public void Overtime_of_other_hours_and_of_no_calendar_is_told()
    {
        Told(OvertimePlan(), plan => plan with { Overtime = [plan.Overtime[0] with { Hours = 2 }] }, "stated with 2 h");
        Told(
            OvertimePlan(), plan => plan with
            {
                Overtime = [plan.Overtime[0] with { Span = plan.Overtime[0].Span with { PricePerHour = 1 } }],
            }, "no such overtime");
        Told(OvertimePlan(), plan => plan with { Overtime = [] }, "is open for");
    }

    [Fact]
    public void A_cost_without_mountings_or_overtime_is_told()
    {
        foreach (OrderPlan plan in new[] { Plan(), OvertimePlan() })
        {
            StatedOrders stated = StatedOrders.Of(plan);
            stated = stated with { Cost = stated.Cost - plan.Cost.ChangeOvers - plan.Cost.Overtime };
            Assert.Contains(OrderPlanCheck.Violations(stated), line => line.Contains("mountings and overtime", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_bound_of_late_orders_above_the_plan_is_told() => Told(
        Plan(), plan => plan with { Proof = plan.Proof with { LeastWeightedDays = 1 } }, "at least 0 orders late");

    [Fact]
    public void Days_late_that_are_not_so_are_told()
    {
        StatedOrders stated = StatedOrders.Of(Plan());
        Assert.Contains(
            OrderPlanCheck.Violations(stated with { Late = new Dictionary<string, int> { ["O1"] = 2 } }),
            line => line.Contains("2 days late stated", StringComparison.Ordinal));
    }

    private static void Told(OrderPlan plan, Func<OrderPlan, OrderPlan> spoil, string words)
    {
        IReadOnlyList<string> lines = Violations(spoil(plan));
        Assert.True(lines.Any(line => line.Contains(words, StringComparison.Ordinal)), $"'{words}' not in: {string.Join("; ", lines)}");
    }

    private static IReadOnlyList<string> Violations(OrderPlan plan) => OrderPlanCheck.Violations(StatedOrders.Of(plan));

    private static OrderPlan Cut(OrderPlan plan, int number, Func<OrderCut, OrderCut> spoil) =>
        plan with { Cuts = [.. plan.Cuts.Select(cut => cut.Number == number ? spoil(cut) : cut)] };

    private static OrderPlan Moved(OrderPlan plan, int number, double hours) =>
        Cut(plan, number, cut => cut with { StartHour = cut.StartHour + hours, EndHour = cut.EndHour + hours });

    // The last mounting that takes time.
    private static OrderPlan Mounted(OrderPlan plan, Func<Mounting, Mounting> spoil)
    {
        Mounting last = plan.Mountings.Last(m => m.Paid);
        return plan with { Mountings = [.. plan.Mountings.Select(m => m == last ? spoil(m) : m)] };
    }

    // Two presses of ten strikes a minute: P1 cuts two orders with A, which stands on it, then one with B; P2 cuts two with C.
    private static OrderPlan Plan(bool oneRoll = false)
    {
        CutPiece Piece(int order, string die, int roll) => new(
            ClockCases.Order($"O{order}", 1) with { Balls = 6000 }, ClockCases.Die(die),
            ClockCases.Roll(oneRoll && roll < 3 ? "R1" : $"R{roll}"),
            600);
        CutPiece[] pieces = [Piece(1, "A", 1), Piece(2, "A", 2), Piece(3, "B", 3), Piece(4, "C", 4), Piece(5, "C", 5)];
        PressSpec one = OrderCases.Press("P1", 10, 30, null, "A", "B") with { RollChangeMinutes = 6, MountedDie = "A" };
        PressSpec two = OrderCases.Press("P2", 10, 30, null, "C") with { RollChangeMinutes = 6 };
        OrderRequest question = ClockCases.Question(pieces, one, two);
        return PlanAssembly.Of(
            question with { Rules = question.Rules with { HourRate = 40 } }, pieces, [], [], 1, TestContext.Current.CancellationToken);
    }

    // 42 hours of work due on Saturday, 40 hours open until then and six of overtime on it.
    private static OrderPlan OvertimePlan()
    {
        PressCalendar calendar = PressCalendar.Usual(8) with
        {
            Overtime = [new OvertimeSpan { From = Saturday.AddHours(6), To = Saturday.AddHours(12), PricePerHour = 45 }],
        };
        CutPiece piece = new(
            ClockCases.Order("O1", 5) with { Balls = 460 }, ClockCases.Die("A"), ClockCases.Roll("R1"), 46);
        return PlanAssembly.Of(
            ClockCases.Question([piece], ClockCases.Press("P1", calendar)), [piece], [], [], 1, TestContext.Current.CancellationToken);
    }
}
