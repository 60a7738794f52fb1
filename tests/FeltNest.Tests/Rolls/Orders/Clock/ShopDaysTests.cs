using FeltNest.Report;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Clock;
using FeltNest.Rolls.Orders.Planned;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders.Clock;

/// <summary>What a shop meets in its week: felt and dies that come later, one roll for two presses, dies mounted again, presses that are
/// down, rush orders.</summary>
public sealed class ShopDaysTests
{
    private static readonly CutDie Plain = OrderCases.Die("T", "type", 20, 200, 250, 5);

    [Fact]
    public void Felt_that_is_bought_is_not_cut_before_it_is_delivered()
    {
        StockRoll offer = OrderCases.Roll("Offer", 50, 2) with { Offer = "Offer", Received = OrderCases.Monday.AddDays(2) };
        OrderPlan plan = Planned(Question([Order("O", "type", 100, 1)], [OrderCases.Press("P", 10, 0, null)], Plain) with
        {
            Rolls = [OrderCases.Roll("short", 0.1, 1)],
            Offers = [new FeltPurchase(offer, 0)],
        });

        Assert.Equal((2 * 24) + 6, plan.Cuts[0].StartHour, 9);
        Assert.Equal((1, 1L, 1), (plan.Late, plan.WeightedDaysLate, (int)plan.Proof.LeastLate));
    }

    [Fact]
    public void A_die_that_must_be_made_is_not_mounted_before_it_is_made()
    {
        CutDie made = Plain with { StrikesLeft = 0, MakePrice = 100, LifeStrikes = 1000, MakeDays = 3 };
        OrderPlan plan = Planned(Question([Order("O", "type", 100, 5)], [OrderCases.Press("P", 10, 30, null)], made));

        Assert.Equal((3 * 24) + 6, plan.Mountings[0].StartHour, 9);
        Assert.Equal((3 * 24) + 6.5, plan.Cuts[0].StartHour, 9);
    }

    [Fact]
    public void Two_presses_never_cut_one_roll_at_once()
    {
        CutDie other = OrderCases.Die("W", "woven", 20, 200, 250, 5);
        OrderPlan plan = Planned(
            Question(
                [Order("a", "type", 1000, 0), Order("b", "woven", 1000, 0)],
                [OrderCases.Press("P1", 1, 0, null, "T"), OrderCases.Press("P2", 1, 0, null, "W")], Plain, other));

        Assert.Equal(2, plan.Cuts.Count);
        OrderCut[] inTime = [.. plan.Cuts.OrderBy(c => c.StartHour)];
        Assert.True(inTime[1].StartHour >= inTime[0].EndHour - 1e-9);
    }

    [Fact]
    public void A_die_is_mounted_again_rather_than_made_a_second_time_and_no_order_is_late()
    {
        // Seven hours of type due on Monday, of woven on Tuesday, of type on Friday; a change takes 35 minutes.
        CutDie woven = OrderCases.Die("W", "woven", 20, 200, 250, 5);
        CutDie second = Plain with { Name = "T2", StrikesLeft = 0, MakePrice = 1900, LifeStrikes = 60_000 };
        OrderPlan plan = Planned(
            Question(
                [Order("mon", "type", 4200, 0), Order("tue", "woven", 4200, 1), Order("fri", "type", 4200, 4)],
                [OrderCases.Press("P", 1, 35, null)], Plain, woven, second));

        Assert.Equal((0, 0m, 3), (plan.Late, plan.Cost.Dies, plan.Mountings.Count));
        Assert.Equal(2, plan.Dies.Single(d => d.Die.Name == "T").Mountings);
    }

    [Fact]
    public void A_press_that_is_down_for_two_days_cuts_after_them()
    {
        DateTime monday = OrderCases.Monday.ToDateTime(TimeOnly.MinValue);
        PressCalendar down = PressCalendar.Usual(8) with { Closed = [new ClosedSpan { From = monday, To = monday.AddDays(2) }] };
        OrderPlan plan = Planned(
            Question([Order("O", "type", 100, 0)], [OrderCases.Press("P", 10, 0, null) with { Calendar = down }], Plain));

        Assert.Equal((2 * 24) + 6, plan.Cuts[0].StartHour, 9);
        Assert.Equal((2L, 2.0), (plan.WeightedDaysLate, plan.Proof.LeastWeightedDays));
    }

    [Fact]
    public void The_die_that_stands_on_a_press_takes_no_time_at_first()
    {
        OrderPlan plan = Planned(
            Question([Order("O", "type", 100, 0)], [OrderCases.Press("P", 10, 30, null) with { MountedDie = "T" }], Plain));

        Assert.Equal(6, plan.Cuts[0].StartHour, 9);
        Assert.False(Assert.Single(plan.Mountings).Paid);
    }

    [Fact]
    public void A_rush_order_goes_first_and_what_it_pushes_aside_is_said()
    {
        // One strike a minute, ten balls each: 7 h of work and 1 h of mounting fill a day of 8 h. Both are due on the first.
        CutDie woven = OrderCases.Die("W", "woven", 20, 200, 250, 5);
        OrderPlan plan = Planned(
            Question(
                [Order("usual", "type", 4200, 0), Order("rush", "woven", 4200, 0) with { Priority = 5 }],
                [OrderCases.Press("P", 1, 60, null)], Plain, woven));

        Assert.Equal((0, 1), (plan.Results[1].DaysLate, plan.Results[0].DaysLate));
        RushDelay delay = Assert.Single(plan.Results[0].PushedBy);
        Assert.Equal(("rush", 1), (delay.Rush.Name, delay.Days));
        Assert.Contains(
            OrderReport.Warnings(plan), line => line.EndsWith("sooner without rush of priority 5 (by 1 day)", StringComparison.Ordinal));
    }

    private static CoverOrder Order(string name, string ball, int balls, int due) => OrderCases.Order(name, ball, balls, due);

    private static OrderRequest Question(CoverOrder[] orders, PressSpec[] presses, params CutDie[] dies) => new()
    {
        Orders = orders,
        Rolls = [OrderCases.Roll("R1", 1000, 1)],
        Offers = [],
        Dies = dies,
        Presses = presses,
        Rules = OrderCases.Bare,
    };

    private static OrderPlan Planned(OrderRequest question)
    {
        OrderPlan plan = OrderPlanner.Run(question, stop: TestContext.Current.CancellationToken);
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        return plan;
    }
}
