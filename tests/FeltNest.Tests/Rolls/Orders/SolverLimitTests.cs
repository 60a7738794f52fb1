using FeltNest.Layout;
using FeltNest.Layout.Bands;
using FeltNest.Layout.Limits;
using FeltNest.Layout.Rows.Tables;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Model.Mixed;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Tests.Layout;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>Solvers that get nearly no work to do: they say that they proved nothing, and what was there before stays.</summary>
public sealed class SolverLimitTests
{
    // Market split: a few sums of many choices, each to be met exactly (G. Cornuejols and M. Dawande, IPCO 1998, from memory): branching is
    // all there is, and twenty nodes find nothing.
    [Fact]
    public void A_model_without_a_solution_in_time_says_so()
    {
        using MixedModel model = new(1);
        Random random = new(1);
        Unknown[] choices = [.. Enumerable.Range(0, 30).Select(_ => model.Choice())];
        LinearSum all = new();
        for (int row = 0; row < 4; row++)
        {
            LinearSum sum = new();
            double total = 0;
            foreach (Unknown choice in choices)
            {
                double factor = random.Next(1, 100);
                (sum, total) = (sum.Add(choice, factor), total + factor);
            }

            model.Equal(sum, Math.Floor(total / 2));
            all = all.Add(choices[row], 1);
        }

        Assert.Null(model.Minimise(all, 1e-9, TestContext.Current.CancellationToken));
    }

    [Fact, Trait("tier", "long")]
    public void A_plan_found_with_the_least_effort_states_how_far_it_may_be_from_the_best_and_keeps_every_rule()
    {
        OrderRequest question = OrderCases.Workshop(3, 12, 18);
        OrderPlan plan = OrderPlanner.Run(question, 1, null, stop: TestContext.Current.CancellationToken);

        Assert.True(plan.GapPercent > 0.01, $"gap {plan.GapPercent} %: the question is too easy for this test");
        Assert.True(plan.Bound < plan.Cost.Total);
        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
    }

    [Fact]
    public void Bands_that_the_solver_has_no_time_for_are_left_out_and_rows_stay()
    {
        LayoutRequest request = Shapes.Request(Shapes.DogBone(2.3, 0.7, 12, 25), 700, gap: 2);
        BandWidths widths =
            BandWidths.Of(BandWidths.Curves(new RowTables(request, TiltRange.Of(request.Rules), SearchEffort.Of(request))), 700, 400);

        Assert.NotEmpty(BandModel.Best(widths, 700, 2, 2, 1, 5));
        Assert.Empty(BandModel.Best(widths, 700, 2, 2, 1, 5, work: 1e-9));
    }
}
