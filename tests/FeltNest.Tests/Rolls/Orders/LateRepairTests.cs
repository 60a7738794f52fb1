using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Clock;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Tests.Rolls.Orders.Clock;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>Pieces that are chosen anew where their sequence makes orders late.</summary>
public sealed class LateRepairTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    // Ten strikes of an hour each, due on the day itself, of presses that run eight hours: by one die two would be left for the next day.
    // The second roll costs more, and one die is in one place at a time.
    [Fact]
    public void An_order_goes_to_two_presses_where_one_would_be_late()
    {
        OrderRequest question = new()
        {
            Orders = [ClockCases.Order("K", 0) with { Balls = 100 }],
            Rolls = [OrderCases.Roll("R1", 10, 1), OrderCases.Roll("R2", 10, 5)],
            Offers = [],
            Dies = [ClockCases.Die("D1"), ClockCases.Die("D2")],
            Presses = [ClockCases.Press("P1", PressCalendar.Usual(8)), ClockCases.Press("P2", PressCalendar.Usual(8))],
            Rules = OrderCases.Bare,
        };
        OrderPlan plan = OrderPlanner.Run(question, stop: Stop);

        Assert.Equal((0L, 0), (plan.ShortBalls, plan.Late));
        Assert.Equal(["P1", "P2"], plan.Cuts.Select(c => c.Press.Name).Order());
    }

    // Days and orders late are as few as they can be; what that costs may be more than the least.
    [Fact, Trait("tier", "long")]
    public void Tiny_plans_are_as_little_late_as_by_trying_every_choice_of_pieces_in_every_sequence()
    {
        int[] worse = [.. Enumerable.Range(0, (int)Runs.Count(12)).Where(IsWorse)];

        Assert.Empty(worse);
    }

    private static bool IsWorse(int seed)
    {
        OrderRequest question = EveryTimedPlan.Of(seed);
        (long days, int late, double cost) = EveryTimedPlan.Best(question);
        OrderPlan plan = OrderPlanner.Run(question, stop: Stop);
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        Assert.Equal(0, plan.ShortBalls);
        Assert.True(plan.Proof.LeastWeightedDays <= days, $"seed {seed}: {plan.Proof.LeastWeightedDays} proved, {days} reached");
        (long Days, int Late, double Cost) found = (plan.WeightedDaysLate, plan.Late, (double)plan.Cost.Total);
        Assert.True(
            found.CompareTo((days, late, cost - 1e-6)) >= 0,
            $"seed {seed}: {found} is better than the best of all, {(days, late, cost)}");
        return (found.Days, found.Late) != (days, late);
    }
}
