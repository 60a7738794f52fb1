using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>Plans that are stopped.</summary>
public sealed class PlanStopTests
{
    // Who is told that a plan is there may stop at once, and has it.
    [Fact]
    public void From_the_first_sound_plan_on_a_stop_gives_a_plan()
    {
        using CancellationTokenSource stop = new();
        OrderPlan plan = OrderPlanner.Run(OrderFactory.Plenty(10, 20, 1), sound: stop.Cancel, stop: stop.Token);

        Assert.True(plan.Proof.CutShort);
        Assert.Equal(0, plan.ShortBalls);
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
    }

    // Faults at the beginning of the roll: the piece gives less than its roll on the whole, so the plan is made again. Stopped in between,
    // it keeps the pieces of the search, which took the cheap roll and not the short one that first fit takes, and says what they give.
    [Fact]
    public void A_plan_that_is_stopped_while_its_measured_rolls_are_looked_at_keeps_its_pieces()
    {
        using CancellationTokenSource stop = new();
        CutDie die = OrderCases.Die("D1", "b", 1, 12, 10, gap: 2, width: 20);
        FeltRoll measured = RollCases.Roll(1200, 20, [.. Enumerable.Range(0, 6).Select(i => RollFault.Disc(6 + (24 * i), 10, 1))]);
        OrderRequest question = new()
        {
            Orders = [OrderCases.Order("K", "b", 12)],
            Rolls =
            [
                OrderCases.Roll("short", 0.4, 100, width: 20), OrderCases.Roll("measured", 1.2, 1, width: 20) with { Measured = measured },
            ],
            Offers = [],
            Dies = [die with { Drawn = (RollCases.Squares, 1) }],
            Presses = [OrderCases.FreePress],
            Rules = OrderCases.Bare,
        };
        (OrderPlan plan, IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> tickets) = MeasuredPlanner.Run(
            question, progress: new StopAt("planned again", stop), stop: stop.Token);

        Assert.True(stop.IsCancellationRequested);
        (OrderCut cut, RollPlan strikes) = Assert.Single(tickets);
        Assert.True(plan.Proof.CutShort);
        Assert.Equal("measured", cut.Roll.Name);
        Assert.True(cut.GoodBalls <= strikes.Balls, $"{cut.GoodBalls} balls stated, {strikes.Balls} on the ticket");
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
    }

    private sealed class StopAt(string word, CancellationTokenSource stop) : IProgress<string>
    {
        public void Report(string value)
        {
            if (value.Contains(word, StringComparison.Ordinal))
            {
                stop.Cancel();
            }
        }
    }
}
