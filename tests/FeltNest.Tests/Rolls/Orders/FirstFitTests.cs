using CsCheck;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Planned;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

public sealed class FirstFitTests
{
    private static readonly CutDie Plain = OrderCases.Die("D", "ball", 20, 200, 250, 5);

    [Fact]
    public void A_first_fit_plan_keeps_every_rule_and_cuts_no_more_than_one_strike_of_each_run_over() =>
        Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                OrderPlan plan = FirstFitPlanner.Run(OrderCases.Random(seed));

                Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
                Assert.All(
                    plan.Results,
                    r => Assert.True(
                        r.GoodBalls <= r.Order.Balls + MostOver(plan, r.Order),
                        $"seed {seed}, order {r.Order.Name}: {r.GoodBalls} of {r.Order.Balls}"));
            },
            iter: Runs.Count(300), threads: 1);

    [Fact]
    public void Where_anything_can_be_cut_something_is() =>
        Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                OrderRequest q = OrderCases.Random(seed);
                bool can = (from o in q.Orders
                            from r in q.Rolls.Concat(q.Offers.Select(x => x.Roll))
                            from d in q.Dies
                            where q.Fits(o, r, d)
                            from p in q.Presses
                            where OrderRequest.Takes(p, d)
                            let hours = (p.Hours ?? 1000) - (p.ChangeOverMinutes / 60)
                            let most = (int)Math.Min(
                                Math.Min(d.MostStrikes, d.Shape.StrikesIn(q.ClearM(r))), (60 * p.StrokesPerMinute * hours) + 1e-9)
                            where most >= q.LeastStrikes(o, r, d) && d.Shape.BallsOf(most, q.GoodShare(r, d)) > 0
                            select o).Any();

                Assert.Equal((seed, can), (seed, FirstFitPlanner.Run(q).Cuts.Count > 0));
            },
            iter: Runs.Count(300), threads: 1);

    [Fact]
    public void A_hundred_orders_find_their_felt_on_two_hundred_rolls_of_plenty()
    {
        OrderRequest question = OrderCases.Workshop(1, 100, 200);
        question = question with
        {
            Presses = [.. question.Presses.Select(p => p with { Hours = null })],
            Dies = [.. question.Dies.Select(d => d with { StrikesLeft = 50_000 })],
        };
        OrderPlan plan = FirstFitPlanner.Run(question);

        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        Assert.Equal(0, plan.Results.Sum(r => r.ShortBalls));
    }

    [Fact]
    public void An_order_of_one_lot_takes_the_lot_that_holds_it_all()
    {
        StockRoll[] rolls = [OrderCases.Roll("R1", 1.5, 1, "L1"), OrderCases.Roll("R2", 1.5, 1, "L2"), OrderCases.Roll("R3", 4, 3, "L3")];

        Assert.Equal(["R3"], Planned([OrderCases.Order("O", "ball", 100, oneLot: true)], rolls).Begun.Select(r => r.Name));
        Assert.Equal(["R1", "R2"], Planned([OrderCases.Order("O", "ball", 100)], rolls[..2]).Begun.Select(r => r.Name));
    }

    [Fact]
    public void A_second_piece_that_may_not_be_short_takes_its_length_from_the_first()
    {
        // 100 balls want 10 strikes; R1 holds 9, and a piece of 1 m is 5 strikes at the least: R2 gives 5, so R1 gives no more than 5.
        OrderRequest question =
            Question([OrderCases.Order("O", "ball", 100)], [OrderCases.Roll("R1", 1.9, 1), OrderCases.Roll("R2", 1.2, 1)]);
        OrderPlan plan = Sound(FirstFitPlanner.Run(question with { Rules = question.Rules with { LeastCutM = 1 } }));

        Assert.Equal(100, plan.Results[0].GoodBalls);
        Assert.All(plan.Cuts, cut => Assert.True(cut.Metres >= 1));
    }

    [Fact]
    public void A_roll_that_arrives_later_is_not_cut_before_its_day()
    {
        StockRoll late = OrderCases.Roll("R1", 4, 1) with { Received = OrderCases.Monday.AddDays(18) };

        Assert.All(
            FirstFitPlanner.Run(Question([OrderCases.Order("O", "ball", 100)], [late])).Cuts,
            cut => Assert.True(cut.StartHour >= 18 * 24));
    }

    [Fact]
    public void Felt_is_bought_only_where_stock_does_not_do()
    {
        OrderRequest question = Question([OrderCases.Order("O", "ball", 300)], [OrderCases.Roll("R1", 2.5, 1)]) with
        {
            Offers = [new FeltPurchase(OrderCases.Roll("Offer", 5, 2, "new") with { Offer = "Offer" }, 14)],
        };

        Assert.Equal(
            ("Offer", 3),
            (Sound(FirstFitPlanner.Run(question)).Purchases[0].Offer.Roll.Name, FirstFitPlanner.Run(question).Purchases[0].Rolls));
        Assert.Empty(Sound(FirstFitPlanner.Run(question with { Rolls = [OrderCases.Roll("R1", 9, 1)] })).Purchases);
    }

    [Fact]
    public void A_die_gives_no_more_strikes_and_a_press_no_more_hours_than_it_has()
    {
        CutDie few = Plain with { StrikesLeft = 7 };
        PressSpec brief = OrderCases.Press("P1", 1, 6, 0.15);

        Assert.Equal(70, Planned([OrderCases.Order("O", "ball", 100)], [OrderCases.Roll("R1", 9, 1)], few).Results[0].GoodBalls);

        // Six minutes of change-over leave three strikes of a minute each.
        Assert.Equal(
            30,
            Sound(
                FirstFitPlanner.Run(
                    Question([OrderCases.Order("O", "ball", 100)], [OrderCases.Roll("R1", 9, 1)]) with { Presses = [brief] })).Results[
                0].GoodBalls);
    }

    [Fact]
    public void What_is_left_and_could_serve_is_not_said_to_be_used_up()
    {
        // Two strikes fit on R1 and no more; R2 has felt in plenty but was not taken by the plan at hand.
        OrderRequest question =
            Question([OrderCases.Order("O", "ball", 100)], [OrderCases.Roll("R1", 0.5, 1), OrderCases.Roll("R2", 9, 1)]);
        OrderPlan alone = FirstFitPlanner.Run(question with { Rolls = [question.Rolls[0]] });

        Assert.False(Leftover.CouldServe(alone, question.Orders[0]));
        Assert.True(Leftover.CouldServe(alone with { Question = question }, question.Orders[0]));
    }

    private static long MostOver(OrderPlan plan, CoverOrder order) => plan.Cuts.Where(c => c.Order == order).Sum(c =>
        c.Metres - (c.Die.Shape.FeedMm / 1000) < plan.Question.Rules.LeastCutM || c.Strikes == 1
            ? c.GoodBalls
            : c.Die.Shape.ClassPanels.Sum(panels => (long)Math.Ceiling(panels / 2.0)));

    private static OrderPlan Planned(CoverOrder[] orders, StockRoll[] rolls, params CutDie[] dies) =>
        Sound(FirstFitPlanner.Run(Question(orders, rolls, dies)));

    private static OrderRequest Question(CoverOrder[] orders, StockRoll[] rolls, params CutDie[] dies) =>
        new()
        {
            Orders = orders,
            Rolls = rolls,
            Offers = [],
            Dies = dies.Length == 0 ? [Plain] : dies,
            Presses = [OrderCases.FreePress],
            Rules = OrderCases.Bare,
        };

    private static OrderPlan Sound(OrderPlan plan)
    {
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        return plan;
    }
}
