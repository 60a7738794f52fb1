using CsCheck;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Patterns;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Orders.Search;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders.Patterns;

public sealed class PatternPlannerTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public void The_bound_is_never_above_what_one_model_of_every_cut_reaches() =>
        Gen.Int[0, 1_000_000].Sample(BoundHolds, iter: Runs.Count(10), threads: 1);

    // A question whose felt costs more than a ball short counts: 26 balls short are reached, and felt must cost nothing in the proof.
    [Fact]
    public void Money_is_no_part_of_the_fewest_balls_short() => BoundHolds(144204);

    private static void BoundHolds(int seed)
    {
        OrderRequest question = Held(OrderCases.Random(seed), seed);
        OrderPlan built = FirstFitPlanner.Run(question);
        BestPlan best = new(built, null);
        PatternPlanner.Run(question, best, 1, OrderSearch.ShortPrice(question), Stop);
        OrderPlan byPatterns = best.Close(false, 1);
        BestPlan other = new(built, null);
        OrderSearch.Run(question, built, other, 1, Stop);
        OrderPlan byModel = other.Close(false, 1);

        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(byPatterns)));
        Assert.True(byPatterns.Proof.LeastShort <= byModel.Rank.Balls + 1e-6, $"seed {seed}: {byPatterns.Proof.LeastShort} balls");
        if (byPatterns.Rank.Balls == byModel.Rank.Balls && byPatterns.Proof.CostBound is { } bound)
        {
            Assert.True(bound <= byModel.Cost.Total + 1e-4m, $"seed {seed}: {bound} above {byModel.Cost.Total}");
        }
    }

    [Fact]
    public void Thirty_orders_come_within_a_fifth_of_a_per_cent_and_no_order_gets_too_much()
    {
        OrderRequest question = OrderFactory.Plenty(30, 60, 1);
        OrderPlan plan = OrderPlanner.Run(question, 1, null, stop: Stop);

        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        Assert.Equal(0, plan.Rank.Balls);
        Assert.True(plan.GapPercent < 0.3, $"gap {plan.GapPercent}");
        Assert.All(
            plan.Results, r => Assert.InRange(r.GoodBalls, r.Order.Balls, r.Order.Balls + (17 * plan.Cuts.Count(c => c.Order == r.Order))));
    }

    [Fact, Trait("tier", "long")]
    public void The_same_question_gives_the_same_plan_by_patterns()
    {
        OrderRequest question = OrderFactory.Plenty(30, 60, 2);

        Assert.True(ModelSize.Of(question) > ModelSize.Most);
        Assert.Equal(OrderPlanner.Run(question, 1, null, stop: Stop).Cuts, OrderPlanner.Run(question, 1, null, stop: Stop).Cuts);
    }

    [Fact]
    public void Felt_for_nine_tenths_of_the_balls_is_used_up_and_what_is_short_is_near_to_the_fewest()
    {
        OrderRequest question = OrderFactory.ShortOfFelt(OrderFactory.Plenty(20, 45, 3));
        OrderPlan plan = OrderPlanner.Run(question, 1, null, stop: Stop);

        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        Assert.True(plan.Rank.Balls > 0);
        Assert.InRange(plan.Proof.LeastShort, 0.5 * plan.Rank.Balls, plan.Rank.Balls);
    }

    [Fact, Trait("tier", "long")]
    public void Hours_for_half_of_the_balls_go_to_the_dies_that_give_most_in_an_hour()
    {
        OrderRequest question = OrderFactory.ShortOfHours(OrderFactory.Plenty(20, 45, 5));
        OrderPlan plan = OrderPlanner.Run(question, 1, null, stop: Stop);

        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        Assert.True(plan.Proof.LeastShort > 0.8 * plan.Rank.Balls, $"{plan.Proof.LeastShort} of {plan.Rank.Balls}");
    }

    [Fact]
    public void Felt_that_comes_after_an_orders_day_is_left_to_orders_due_later()
    {
        OrderRequest question = OrderFactory.Plenty(20, 45, 4);
        question = question with
        {
            Rolls =
            [
                .. question.Rolls.Select((r, i) =>
                    i % 2 == 0 ? r : r with { Received = question.Rules.Start.AddDays(20), PricePerMetre = 1 }),
            ],
        };
        OrderPlan plan = OrderPlanner.Run(question, 1, null, stop: Stop);

        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        Assert.Equal(0, plan.Late);
        Assert.Contains(plan.Cuts, c => c.Roll.Received is not null);
        Assert.DoesNotContain(plan.Cuts, c => c.Roll.Received > c.Order.Due);
    }

    [Fact]
    public void An_order_held_to_a_lot_holds_no_other_order_there()
    {
        // The first order of a ball and felt is held to one lot of two; each lot has felt for one of the two orders.
        CutDie die = OrderCases.Die("D", "ball", 20, 200, 250, 5);
        OrderRequest question = new()
        {
            Orders =
            [
                OrderCases.Order("held", "ball", 400) with { Pins = new OrderPins { Lots = ["L1"] } },
                OrderCases.Order("free", "ball", 400),
            ],
            Rolls = [OrderCases.Roll("R1", 9, 1, "L1"), OrderCases.Roll("R2", 9, 1, "L2")],
            Offers = [],
            Dies = [die],
            Presses = [OrderCases.FreePress],
            Rules = OrderCases.Bare with { RemnantValuePercent = 100 },
        };
        BestPlan best = new(FirstFitPlanner.Run(question), null);
        PatternPlanner.Run(question, best, 1, OrderSearch.ShortPrice(question), Stop);
        OrderPlan plan = best.Close(false, 1);

        Assert.Equal(0, plan.Rank.Balls);
        Assert.InRange((double)plan.Proof.CostBound!.Value, 0.9 * (double)plan.Cost.Total, (double)plan.Cost.Total);
    }

    // Of every second question the first order is held to a lot.
    private static OrderRequest Held(OrderRequest question, int seed) => seed % 2 == 0
        ? question
        : question with
        {
            Orders =
            [
                question.Orders[0] with { Pins = new OrderPins { Lots = [question.Rolls[0].Lot] } }, .. question.Orders.Skip(1),
            ],
        };
}
