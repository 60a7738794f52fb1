using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Planned;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

public sealed class ShortReasonTests
{
    private static CutDie Plain { get; } = OrderCases.Die("D1", "ball", 20, 200, 250);

    [Fact]
    public void Used_up_is_said_where_a_proof_says_that_no_plan_is_less_short()
    {
        OrderPlan plan = Short([OrderCases.Order("O", "ball", 100)], [OrderCases.Roll("R1", 0.5, 1)]);

        Assert.Equal(80, plan.ShortBalls);
        Assert.StartsWith("felt is left; not proved", Reason(plan, 79.5 - 1)["no ".Length..], StringComparison.Ordinal);
        Assert.StartsWith(
            "felt is used up, proved: no plan is short of fewer balls, all orders together; 80 balls more", Reason(plan, 80),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Felt_that_another_order_took_is_said_to_be_taken_and_not_to_be_used_up()
    {
        // 25 strikes are on the roll; the first order takes 20 of them.
        OrderPlan plan = Short(
            [OrderCases.Order("first", "ball", 200, 1), OrderCases.Order("next", "ball", 190, 2)], [OrderCases.Roll("R1", 5.2, 1)]);

        Assert.True(plan.ShortBalls > 0);
        Assert.StartsWith(
            "no felt is left: other orders took it; not proved that no plan gives it more", Reason(plan, 0), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_left_and_could_serve_is_not_said_to_be_gone()
    {
        OrderRequest question =
            Question([OrderCases.Order("O", "ball", 100)], [OrderCases.Roll("R1", 0.5, 1), OrderCases.Roll("R2", 9, 1)]);
        OrderPlan plan = FirstFitPlanner.Run(question with { Rolls = [question.Rolls[0]] }) with { Question = question };

        Assert.StartsWith("not found within this effort: felt, strikes", Reason(plan, 0), StringComparison.Ordinal);
        Assert.StartsWith(
            "not found before the search was cut short: felt, strikes",
            Reason(plan with { Proof = plan.Proof with { CutShort = true } }, 0), StringComparison.Ordinal);
        Assert.StartsWith("proved: no plan is short of fewer balls", Reason(plan, 80), StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_list_of_orders_holds_an_order_to_is_named()
    {
        CoverOrder held = OrderCases.Order("O", "ball", 100) with
        {
            Pins = new OrderPins { Lots = ["L1", "L2"], NotRolls = ["R2"], Day = new DateOnly(2026, 3, 4) },
        };
        OrderPlan plan = Short([held], [OrderCases.Roll("R1", 0.5, 1), OrderCases.Roll("R2", 9, 1)]);

        Assert.EndsWith(
            "; the list of orders has it held to lot L1 or L2, day 2026-03-04 and kept from roll R2", Reason(plan, 0),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Strikes_that_are_gone_are_named_by_their_die()
    {
        OrderPlan plan = FirstFitPlanner.Run(
            Question([OrderCases.Order("O", "ball", 100)], [OrderCases.Roll("R1", 9, 1)]) with { Dies = [Plain with { StrikesLeft = 7 }] });

        Assert.StartsWith("no strikes of D1 are left; not proved", Reason(plan, 0), StringComparison.Ordinal);
    }

    [Fact]
    public void A_search_that_ends_by_itself_proves_what_it_says()
    {
        OrderPlan plan = OrderPlanner.Run(
            Question([OrderCases.Order("O", "ball", 100)], [OrderCases.Roll("R1", 0.5, 1)]), 1,
            stop: TestContext.Current.CancellationToken);

        Assert.Equal(80, plan.Proof.LeastShort);
        Assert.Contains("felt is used up, proved", plan.Results[0].Reason, StringComparison.Ordinal);
    }

    private static OrderPlan Short(CoverOrder[] orders, StockRoll[] rolls) => FirstFitPlanner.Run(Question(orders, rolls));

    private static string Reason(OrderPlan plan, double leastShort) =>
        ShortReason.Stated(plan with { Proof = plan.Proof with { LeastShort = leastShort } }).Results[^1].Reason!;

    private static OrderRequest Question(CoverOrder[] orders, StockRoll[] rolls) => new()
    {
        Orders = orders,
        Rolls = rolls,
        Offers = [],
        Dies = [Plain],
        Presses = [OrderCases.FreePress],
        Rules = OrderCases.Bare,
    };
}
