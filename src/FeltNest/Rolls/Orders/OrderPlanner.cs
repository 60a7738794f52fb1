using System.Globalization;
using FeltNest.Rolls.Orders.Assembly;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Clock;
using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Model;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Orders.Search;

namespace FeltNest.Rolls.Orders;

/// <summary>Plans orders against stock: a plan of first fit at once, and a search that may better it.</summary>
internal static class OrderPlanner
{
    /// <summary>Most effort.</summary>
    public const int MostEffort = 1000;

    /// <summary>The plan of a question.</summary>
    /// <param name="question">The question.</param>
    /// <param name="effort">Counted work, 1 to 1000: nodes of the search tree, never time.</param>
    /// <param name="progress">Told each step as it is done; may be null.</param>
    /// <param name="stop">Ends the search with the best plan so far, which is the one of first fit at the least.</param>
    /// <exception cref="NoAnswerException">Nothing can be cut for any order; the message names the first one's reason.</exception>
    public static OrderPlan Run(
        OrderRequest question, int effort = 5, IProgress<string>? progress = null, CancellationToken stop = default)
    {
        OrderPlan built = Timed(FirstFitPlanner.Run(question), effort, stop);
        if (OrderPlanCheck.Violations(StatedOrders.Of(built)) is [var wrong, ..])
        {
            throw new InvalidOperationException($"the plan of first fit breaks a rule: {wrong}");
        }

        BestPlan best = new(built, progress);
        best.Tell(
            string.Create(
                CultureInfo.InvariantCulture,
                $"first fit: balls short {built.Rank.Balls}, orders late {built.Late}, cost {built.Cost.Total:0.00} "
                    + $"{question.Rules.Currency}"));
        bool searched = ModelSize.Of(question) <= ModelSize.Most;
        LateBound least = LateBound.Of(question, built.Rank.Balls);
        best.ProveLate(least.Orders);
        best.ProveDays(least.WeightedDays);
        OrderPlan plan = best.Close(stop.IsCancellationRequested, effort, searched, OrderRows.WeightOfReserve(question));
        return plan.Cuts.Count > 0
            ? plan
            : throw new NoAnswerException(
                $"nothing can be cut for any order; order {plan.Results[0].Order.Name}: {plan.Results[0].Reason}");
    }

    // The pieces of a plan, put in sequence with all the effort.
    private static OrderPlan Timed(OrderPlan plan, int effort, CancellationToken stop) => PlanAssembly.Of(
        plan.Question, plan.Cuts.Select(c => new CutPiece(c.Order, c.Die, c.Roll, c.Strikes)), plan.Purchases,
        [.. plan.Remnants.SelectMany(r => r.Reserved.Select(held => (held.Order, r.Roll, held.Metres)))], effort, stop);
}
