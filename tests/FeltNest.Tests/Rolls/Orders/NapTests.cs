using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Planned;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>One-way layouts and rolls whose nap lies against the feed.</summary>
public sealed class NapTests
{
    // From 20 of 100 mm on 80 are left. Widths are 21 at 20, 21.5 at 30 and at 70, 64/3 at 80.
    [Fact]
    public void A_roll_turned_end_for_end_is_mirrored_both_ways_from_where_it_is_whole()
    {
        FeltRoll roll = RollCases.Roll(100, 20, RollFault.Disc(30, 5, 2), RollFault.Box(70, 3, 10, 2), RollFault.Disc(10, 5, 2)) with
        {
            Widths =
            [
                new() { XMm = 0, WidthMm = 20 }, new() { XMm = 40, WidthMm = 22 }, new() { XMm = 100, WidthMm = 21 },
            ],
            Splices = [new() { XMm = 60, ClearMm = 3 }],
            Nap = NapDirection.Backward,
        };
        FeltRoll turned = NapTurn.EndForEnd(roll, 20);

        Assert.Equal((80, NapDirection.Forward), (turned.LengthMm, turned.Nap));
        Assert.Equal(new RollSplice { XMm = 40, ClearMm = 3 }, Assert.Single(turned.Splices));
        Assert.Equal([(0, 21), (60, 22), (80, 21)], turned.Widths.Select(w => (w.XMm, w.WidthMm)));
        Assert.Equal(RollFault.Disc(70, 16.5, 2), turned.Faults[0]);
        RollFault box = turned.Faults[1];
        Assert.Equal((20, 10), (box.XMm, box.LengthMm));
        Assert.Equal((64.0 / 3) - 5, box.YMm, 9);
        Assert.Equal(18.5, box.YMm + box.WidthMm, 9);
        Assert.Equal(2, turned.Faults.Count);
    }

    [Fact]
    public void A_roll_of_one_width_turned_twice_is_as_it_was()
    {
        FeltRoll roll = RollCases.Roll(100, 20, RollFault.Disc(30, 5, 2), RollFault.Box(70, 3, 10, 2));
        FeltRoll twice = NapTurn.EndForEnd(NapTurn.EndForEnd(roll, 0), 0);

        Assert.Equal(roll.Faults, twice.Faults);
        Assert.Equal((roll.LengthMm, roll.WidthAt(50)), (twice.LengthMm, twice.WidthAt(50)));
    }

    // A roll of 1.2 m gives 100 strikes of one panel, so 50 balls; 80 are wanted.
    [Theory]
    [InlineData(false, true, 80, "A,B", "B")]
    [InlineData(true, true, 50, "A", "")]
    [InlineData(false, false, 80, "A,B", "")]
    [InlineData(true, false, 80, "A,B", "")]
    public void Rolls_against_the_feed_are_turned_or_left_out_under_a_one_way_die(
        bool apart, bool oneWay, int balls, string rolls, string turned)
    {
        OrderPlan plan = Planned(HandledBy(apart), oneWay, 1.2, 1.2);

        Assert.Equal(balls, plan.BallsServed);
        Assert.Equal(rolls, string.Join(",", plan.Cuts.Select(c => c.Roll.Name).Distinct().Order()));
        Assert.Equal(turned, string.Join(",", plan.Cuts.Where(c => c.Roll.Turned).Select(c => c.Roll.Name).Distinct()));
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
    }

    [Fact]
    public void Kept_apart_an_order_takes_the_direction_that_gives_it_more()
    {
        OrderPlan plan = Planned(NapHandling.Apart, oneWay: true, 0.6, 1.2);

        Assert.Equal(("B", 50), (Assert.Single(plan.Cuts).Roll.Name, plan.BallsServed));
    }

    [Theory]
    [InlineData(false, ": the nap of roll B lies against the feed")]
    [InlineData(true, "order K: one-way dies cut it from rolls with the nap along the feed and against it")]
    public void The_check_finds_rolls_of_both_directions_under_a_one_way_die(bool apart, string told)
    {
        OrderPlan plan = Planned(NapHandling.Turn, oneWay: true, 1.2, 1.2);
        StockRoll Back(StockRoll roll) => roll with { Turned = false };
        OrderPlan mixed = plan with
        {
            Question = plan.Question with
            {
                Rolls = [.. plan.Question.Rolls.Select(Back)],
                Rules = plan.Question.Rules with { Nap = HandledBy(apart) },
            },
            Cuts = [.. plan.Cuts.Select(c => c with { Roll = Back(c.Roll) })],
        };

        Assert.Contains(
            OrderPlanCheck.Violations(StatedOrders.Of(mixed)), v => v.Contains(told, StringComparison.Ordinal));
    }

    // Turned, the stripe of the felt would lie at the other selvedge.
    [Fact]
    public void A_roll_whose_die_keeps_a_stripe_clear_is_not_turned_and_that_is_told()
    {
        CutDie die = OrderCases.Die("D1", "b", 1, 12, 10, gap: 2, width: 20);
        RollLayout layout = RollCases.Squares with
        {
            Rules = RollCases.Squares.Rules with { OneWay = true, Forbidden = [new ForbiddenStrip { YFromMm = 2, YToMm = 4 }] },
        };
        OrderRequest question = new()
        {
            Orders = [OrderCases.Order("K", "b", 80)],
            Rolls = [OrderCases.Roll("B", 1.2, 1, width: 20) with { Nap = NapDirection.Backward }],
            Offers = [],
            Dies = [die with { Shape = die.Shape with { OneWay = true }, Drawn = (layout, 1) }],
            Presses = [OrderCases.FreePress],
            Rules = OrderCases.Bare,
        };

        Assert.Contains(
            "the nap of roll B does not lie the way that its one-way die needs",
            Assert.Throws<NoAnswerException>(() => MeasuredPlanner.Run(question, stop: TestContext.Current.CancellationToken)).Message,
            StringComparison.Ordinal);
    }

    private static NapHandling HandledBy(bool apart) => apart ? NapHandling.Apart : NapHandling.Turn;

    private static OrderPlan Planned(NapHandling nap, bool oneWay, double forwardM, double backwardM)
    {
        CutDie die = OrderCases.Die("D1", "b", 1, 12, 10, gap: 2, width: 900);
        return MeasuredPlanner.Run(new OrderRequest
        {
            Orders = [OrderCases.Order("K", "b", 80)],
            Rolls =
            [
                OrderCases.Roll("A", forwardM, 1) with { Nap = NapDirection.Forward },
                OrderCases.Roll("B", backwardM, 1) with { Nap = NapDirection.Backward },
            ],
            Offers = [],
            Dies = [die with { Shape = die.Shape with { OneWay = oneWay } }],
            Presses = [OrderCases.FreePress],
            Rules = OrderCases.Bare with { Nap = nap },
        }, stop: TestContext.Current.CancellationToken).Plan;
    }
}
