using FeltNest.Report;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Orders.Search;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

public sealed class OrderProofTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public void A_plan_cut_short_says_which_aims_are_not_proved()
    {
        OrderPlan plan = FirstFitPlanner.Run(Question(OrderCases.Order("long", "ball", 5000, 0), OrderCases.Order("O", "ball", 10)));
        OrderPlan Cut(double leastShort, decimal? bound) =>
            plan with { Proof = plan.Proof with { CutShort = true, LeastShort = leastShort, CostBound = bound } };

        Assert.True(plan.ShortBalls > 0);
        Assert.Contains("not proved: balls short, cost", OrderReport.Warnings(Cut(0, null)).First(), StringComparison.Ordinal);
        Assert.EndsWith("not proved: cost", OrderReport.Warnings(Cut(plan.ShortBalls, null)).First(), StringComparison.Ordinal);
        Assert.EndsWith(
            "after all of the plan was proved", OrderReport.Warnings(Cut(plan.ShortBalls, plan.Cost.Total)).First(),
            StringComparison.Ordinal);
        Assert.Contains("at least 7 in any plan", OrderReport.Text(Cut(7, null)), StringComparison.Ordinal);
        Assert.DoesNotContain("no plan costs less than", OrderReport.Text(Cut(7, null)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, "0 things")]
    [InlineData(1, "1 thing")]
    [InlineData(2, "2 things")]
    public void One_thing_has_no_s(int count, string words) => Assert.Equal(words, CountWords.Of(count, "thing"));

    [Fact]
    public void A_search_stopped_before_it_began_gives_the_plan_of_first_fit()
    {
        OrderRequest question = OrderCases.Workshop(1, 4, 8);
        OrderPlan plan = Verified(OrderPlanner.Run(question, 1, stop: new CancellationToken(canceled: true)));

        Assert.True(plan.Proof.CutShort);
        Assert.Equal(FirstFitPlanner.Run(question).Cuts, plan.Cuts);
        Assert.Null(plan.Bound);
        Assert.Null(plan.GapPercent);
    }

    [Fact]
    public void A_search_stopped_at_its_second_step_gives_its_best_plan()
    {
        using CancellationTokenSource stop = new();
        StopAfter steps = new(2, stop);
        OrderPlan plan = Verified(OrderPlanner.Run(OrderCases.Workshop(1, 30, 60), 1000, steps, stop: stop.Token));

        Assert.True(plan.Proof.CutShort);
        Assert.True(plan.Cuts.Count > 0);
        Assert.Matches(@"^first fit; best so far: \d+ balls? short, \d+ orders? late, cost \d+\.\d\d EUR, no bound yet$", steps.Lines[0]);
        Assert.StartsWith("patterns: 30 orders, 60 rolls", steps.Lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_search_that_does_not_end_when_it_is_told_to_is_left_behind()
    {
        using CancellationTokenSource stop = new();
        using ManualResetEventSlim never = new();
        bool ended = SearchThread.Run(
            () =>
            {
                stop.Cancel();
                never.Wait(Stop);
            },
            stop.Token);

        Assert.False(ended);
        never.Set();
    }

    [Theory]
    [InlineData(-3974124748.14, false)]
    [InlineData(0.1, false)]
    [InlineData(0.99, true)]
    [InlineData(1.2, false)]
    public void A_bound_that_means_nothing_is_not_stated(double shareOfCost, bool stated)
    {
        OrderPlan plan = FirstFitPlanner.Run(OrderCases.Workshop(3, 6, 12));
        plan = plan with { Proof = plan.Proof with { CostBound = plan.Cost.Total * (decimal)shareOfCost } };

        Assert.Equal(stated, plan.Bound is not null);
        Assert.Equal(stated, plan.GapPercent is not null);
        Assert.Equal(stated, OrderReport.Text(plan).Contains("no plan costs less than", StringComparison.Ordinal));
        Assert.Equal(stated, OrderReport.Text(plan).Contains("gap 1 %", StringComparison.Ordinal));
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
    }

    [Fact]
    public void A_plan_badly_short_says_so_in_its_first_line()
    {
        OrderPlan plan =
            OrderPlanner.Run(Question(OrderCases.Order("long", "ball", 5000), OrderCases.Order("no die", "other", 10)), 1, stop: Stop);

        Assert.StartsWith(
            "BADLY SHORT: 4520 of 5010 balls are missing (90.2 %), 2 of 2 orders", OrderReport.Text(plan), StringComparison.Ordinal);
        Assert.DoesNotContain(
            "BADLY", OrderReport.Text(OrderPlanner.Run(Question(OrderCases.Order("O", "ball", 100)), 1, stop: Stop)),
            StringComparison.Ordinal);
    }

    private sealed class StopAfter(int steps, CancellationTokenSource? stop) : IProgress<string>
    {
        public List<string> Lines { get; } = [];

        public void Report(string value)
        {
            Lines.Add(value);
            if (Lines.Count == steps)
            {
                stop?.Cancel();
            }
        }
    }

    private static OrderPlan Verified(OrderPlan plan)
    {
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        return plan;
    }

    private static OrderRequest Question(params CoverOrder[] orders) => new()
    {
        Orders = orders,
        Rolls = [OrderCases.Roll("R1", 10, 1)],
        Offers = [],
        Dies = [OrderCases.Die("D", "ball", 20, 200, 250, 5)],
        Presses = [OrderCases.FreePress],
        Rules = OrderCases.Bare,
    };
}
