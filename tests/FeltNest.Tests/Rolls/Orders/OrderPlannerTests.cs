using CsCheck;
using FeltNest.Report;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Planned;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

public sealed class OrderPlannerTests
{
    private static readonly CutDie Plain = OrderCases.Die("D", "ball", 20, 200, 250, 5);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public void Tiny_questions_are_answered_as_by_trying_every_plan() =>
        Gen.Int[0, 100_000].Sample(
            seed =>
            {
                OrderRequest question = Tiny(seed);
                (int lacking, double cost) = EveryPlan.Best(question);
                if (lacking == question.Orders.Sum(o => o.Balls))
                {
                    Assert.Throws<NoAnswerException>(() => OrderPlanner.Run(question, stop: Stop));
                    return;
                }

                OrderPlan plan = OrderPlanner.Run(question, stop: Stop);
                Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
                Assert.Equal((seed, lacking), (seed, plan.Results.Sum(r => r.ShortBalls)));
                Assert.True(
                    Math.Abs(cost - (double)plan.Cost.Total) <= (1e-4 * cost) + 1e-6,
                    $"seed {seed}: {plan.Cost.Total} where {cost} is the least");
                Assert.True((double)plan.Bound!.Value <= cost + 1e-6, $"seed {seed}: bound {plan.Bound} above {cost}");
            },
            iter: Runs.Count(40), threads: 1);

    [Fact]
    public void An_order_of_one_lot_leaves_cheaper_felt_of_two_lots_alone()
    {
        StockRoll[] rolls = [OrderCases.Roll("R1", 1.5, 1, "L1"), OrderCases.Roll("R2", 1.5, 1, "L2"), OrderCases.Roll("R3", 4, 3, "L3")];
        OrderPlan one = Planned([OrderCases.Order("O", "ball", 100, oneLot: true)], rolls);
        OrderPlan any = Planned([OrderCases.Order("O", "ball", 100)], rolls);

        Assert.Equal(["R3"], one.Begun.Select(r => r.Name));
        Assert.Equal(["R1", "R2"], any.Begun.Select(r => r.Name));
    }

    [Fact]
    public void Felt_for_later_rejects_stays_in_the_lot_of_its_order()
    {
        // 100 balls take 2.055 m; 100 more in reserve want 2 m of the same lot, which only L2 has beside them.
        StockRoll[] rolls = [OrderCases.Roll("R1", 2.5, 1, "L1"), OrderCases.Roll("R2", 2.5, 2, "L2"), OrderCases.Roll("R3", 2.5, 2, "L2")];
        OrderPlan plan = Planned([OrderCases.Order("O", "ball", 100, oneLot: true, reserve: 100)], rolls);

        Assert.All(plan.Cuts, cut => Assert.Equal("L2", cut.Roll.Lot));
        Assert.Equal(0, plan.Results[0].ReserveShortBalls);
        Assert.Equal(2, plan.Remnants.Sum(r => r.Reserved.Sum(x => x.Metres)), 6);
    }

    [Fact]
    public void Felt_is_bought_in_whole_rolls_and_at_least_the_least_that_is_sold()
    {
        OrderRequest question = Question([OrderCases.Order("O", "ball", 300)], [OrderCases.Roll("R1", 2.5, 1)]) with
        {
            Offers = [new FeltPurchase(OrderCases.Roll("Offer", 5, 2, "new") with { Offer = "Offer" }, 14)],
        };
        OrderPlan plan = Verified(OrderPlanner.Run(question, stop: Stop));

        Assert.Equal(("Offer", 3), (plan.Purchases[0].Offer.Roll.Name, plan.Purchases[0].Rolls));
        Assert.Equal(0, plan.Results[0].ShortBalls);
    }

    [Fact]
    public void What_cannot_be_made_is_named_with_its_shortfall_and_the_rest_is_planned()
    {
        OrderPlan plan = Planned(
            [OrderCases.Order("wide", "big", 50), OrderCases.Order("long", "ball", 5000), OrderCases.Order("no die", "other", 10)],
            [OrderCases.Roll("R1", 10, 1)], Plain, OrderCases.Die("B", "big", 20, 200, 250, width: 1400));

        Assert.Equal([50, 5000 - plan.Results[1].GoodBalls, 10], plan.Results.Select(r => r.ShortBalls));
        Assert.Contains("1400 mm wide", plan.Results[0].Reason, StringComparison.Ordinal);
        Assert.Contains("m of felt", plan.Results[1].Reason, StringComparison.Ordinal);
        Assert.Contains("no die cuts other", plan.Results[2].Reason, StringComparison.Ordinal);
        // 49 strikes take 9.855 m of the 10, 50 would take 10.055.
        Assert.Equal(490, plan.Results[1].GoodBalls);
    }

    [Fact]
    public void Late_orders_are_the_fewest_and_are_named()
    {
        // A press of one strike a minute and 8 h a day: 600 balls take an hour, change-overs an hour. Two dies, the day holds one of three
        // orders each.
        PressSpec slow = OrderCases.Press("P1", 1, 60, null);
        CoverOrder[] orders =
        [
            OrderCases.Order("a", "ball", 2000, 0), OrderCases.Order("b", "big", 2000, 0), OrderCases.Order("c", "big", 2000, 1),
        ];
        OrderPlan plan = Verified(
            OrderPlanner.Run(
                Question(orders, [OrderCases.Roll("R1", 500, 1)], Plain, OrderCases.Die("B", "big", 20, 200, 250)) with
                {
                    Presses = [slow],
                }, stop: Stop));

        Assert.Equal(1, plan.Late);
        Assert.Equal(1, plan.Proof.LeastLate, 6);
    }

    [Fact]
    public void A_die_is_made_or_ruled_again_when_its_strikes_run_out()
    {
        CutDie worn = Plain with { StrikesLeft = 3, LifeStrikes = 4, MostReRules = 2, ReRulePrice = 5 };
        CutDie fresh = Plain with { Name = "N", StrikesLeft = 0, MakePrice = 30, LifeStrikes = 100 };
        StockRoll[] rolls = [OrderCases.Roll("R1", 10, 1)];
        OrderPlan ruled = Planned([OrderCases.Order("O", "ball", 100)], rolls, worn, fresh);
        OrderPlan made = Planned([OrderCases.Order("O", "ball", 120)], rolls, worn with { MostReRules = 1 }, fresh);

        Assert.Equal(("D", 2, 10m), (ruled.Dies[0].Die.Name, ruled.Dies[0].ReRules, ruled.Cost.Dies));
        Assert.Contains(made.Dies, d => d.Die.Name == "N" && d.Make);
    }

    [Fact]
    public void A_smaller_die_finishes_a_roll_when_the_piece_is_worth_the_handling()
    {
        // Five strikes of the large die take 1.055 m and give 50 balls; three of the small one take 0.143 m and give the other 6.
        CutDie small = OrderCases.Die("S", "ball", 4, 44, 50, 5);
        OrderRequest question =
            Question([OrderCases.Order("O", "ball", 56)], [OrderCases.Roll("R1", 1.2, 1), OrderCases.Roll("R2", 3, 1)], Plain, small);

        Assert.Contains(Verified(OrderPlanner.Run(question, stop: Stop)).Cuts, cut => cut.Die.Name == "S");
        Assert.Equal(
            ["R2"],
            Verified(OrderPlanner.Run(question with { Rules = question.Rules with { LeastCutM = 0.7 } }, stop: Stop)).Begun
                .Select(r => r.Name));
    }

    [Fact]
    public void The_same_question_gives_the_same_plan()
    {
        OrderRequest question = OrderCases.Workshop(3, 6, 12);
        OrderPlan first = Verified(OrderPlanner.Run(question, 1, stop: Stop));
        OrderPlan second = OrderPlanner.Run(question, 1, stop: Stop);

        Assert.Equal(first.Cuts, second.Cuts);
        Assert.Equal(first.Bound, second.Bound);
    }

    [Fact, Trait("tier", "long")]
    public void The_search_is_never_worse_than_first_fit() =>
        Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                OrderRequest question = OrderCases.Random(seed);
                OrderPlan built = FirstFitPlanner.Run(question);
                if (built.Cuts.Count > 0)
                {
                    Assert.True(Verified(OrderPlanner.Run(question, 1, stop: Stop)).Rank.CompareTo(built.Rank) <= 0, $"seed {seed}");
                }
            },
            iter: Runs.Count(10), threads: 1);

    [Fact]
    public void A_roll_that_is_partly_cut_is_cut_from_where_its_rest_begins()
    {
        // 10 strikes take 2.055 m of the 3 m that are left behind the first 5 m.
        OrderPlan plan = Planned([OrderCases.Order("O", "ball", 100)], [OrderCases.Roll("R1", 3, 1) with { BeginM = 5 }]);

        Assert.Equal(5, Assert.Single(plan.Cuts).FromM, 9);
        Assert.Equal(3 - 2.055, Assert.Single(plan.Remnants).LengthM, 9);
    }

    [Fact]
    public void A_roll_that_arrives_later_is_named_and_cut_from_its_day_on()
    {
        // 10 strikes of a press of 600 a minute: the roll comes on Friday, 2026-03-20, and the press opens at six.
        StockRoll late = OrderCases.Roll("R1", 4, 1) with { Received = new DateOnly(2026, 3, 20) };
        OrderPlan plan = Planned([OrderCases.Order("O", "ball", 100)], [late]);

        Assert.Equal((18 * 24) + 6, Assert.Single(plan.Cuts).StartHour, 9);
        Assert.Contains(
            "roll R1 arrives on 2026-03-20: it is cut from 00:00 of that day on at the earliest", OrderReport.Warnings(plan));
    }

    // Told each step, and stops the search at one of them.
    private static OrderPlan Planned(CoverOrder[] orders, StockRoll[] rolls, params CutDie[] dies) =>
        Verified(OrderPlanner.Run(Question(orders, rolls, dies), stop: Stop));

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

    private static OrderPlan Verified(OrderPlan plan)
    {
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        return plan;
    }

    private static OrderRequest Tiny(int seed)
    {
        Random random = new(seed);
        CutDie[] dies =
        [
            OrderCases.Die("D1", "x", 8, 200, 200 + random.Next(100), random.Next(2) * 5, strikes: 3 + random.Next(4)) with
            {
                LifeStrikes = 3,
                MostReRules = random.Next(2),
                ReRulePrice = random.Next(3),
            },
            OrderCases.Die("D2", random.Next(2) == 0 ? "x" : "y", 4, 110, 150, 5, strikes: 0) with
            {
                MakePrice = random.Next(3),
                LifeStrikes = 6,
            },
        ];
        StockRoll[] rolls =
        [
            .. Enumerable.Range(0, 2)
                .Select(i =>
                    OrderCases.Roll($"R{i}", 0.4 + (random.Next(9) / 10.0), 1 + random.Next(5), random.Next(2) == 0 ? "L1" : "L2")),
        ];
        CoverOrder[] orders =
        [
            .. Enumerable.Range(0, 2)
                .Select(i => OrderCases.Order($"O{i}", i == 0 ? "x" : dies[1].Ball, 2 + random.Next(14), oneLot: random.Next(2) == 0)),
        ];
        OrderRules rules = new()
        {
            Currency = "EUR",
            Start = OrderCases.Monday,
            HoursPerDay = 8,
            EndLossMm = random.Next(2) * 30,
            RejectPercent = 0,
            UnpairedPercent = 0,
            RemnantValuePercent = random.Next(3) * 50,
            LeastRemnantM = random.Next(3) * 0.1,
            LeastCutM = 0,
            PerStrike = random.Next(2) * 0.05m,
            HourRate = random.Next(2) * 2m,
        };
        return new OrderRequest
        {
            Orders = orders,
            Rolls = rolls,
            Offers = [],
            Dies = dies,
            Presses = [OrderCases.Press("P", 1, 6, random.Next(3) == 0 ? 0.25 : 10)],
            Rules = rules,
        };
    }
}
