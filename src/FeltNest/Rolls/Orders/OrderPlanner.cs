using FeltNest.Rolls.Orders.Assembly;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Clock;
using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Patterns;
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
    /// <param name="sound">Called when the first sound plan is there; may be null.</param>
    /// <param name="stop">Ends the search with the best plan so far, which is the one of first fit at the least.</param>
    /// <exception cref="NoAnswerException">Nothing can be cut for any order; the message names the first one's reason.</exception>
    public static OrderPlan Run(
        OrderRequest question, int effort = 5, IProgress<string>? progress = null, Action? sound = null,
        CancellationToken stop = default)
    {
        OrderPlan built = FirstFitPlanner.Run(question);
        if (OrderPlanCheck.Violations(StatedOrders.Of(built)) is [var wrong, ..])
        {
            throw new InvalidOperationException($"the plan of first fit breaks a rule: {wrong}");
        }

        if (built.Cuts.Count > 0)
        {
            sound?.Invoke();
        }

        BestPlan best = new(built, progress);
        best.Tell("first fit");
        if (!stop.IsCancellationRequested)
        {
            SearchThread.Run(() => SearchAll(question, best, effort, stop), stop);
        }

        OrderPlan found = best.Close(stop.IsCancellationRequested, effort);
        OrderPlan plan = ShortReason.Stated(found with { Question = question });
        return plan.Cuts.Count > 0
            ? plan
            : throw new NoAnswerException(
                $"nothing can be cut for any order; order {plan.Results[0].Order.Name}: {plan.Results[0].Reason}");
    }

    // Felt that comes after an order's day is left out first, and taken in where an order would stay short without it.
    private static void SearchAll(OrderRequest question, BestPlan best, int effort, CancellationToken stop)
    {
        LateBound least = LateBound.Of(question, best.Lacking);
        best.ProveLate(least.Orders);
        best.ProveDays(least.WeightedDays);
        bool late = question.Rolls.Any(roll => roll.Received is { } day && question.Orders.Any(order => order.Due < day));
        if (late)
        {
            OrderRequest inTime = question with { InTime = true };
            best.Offer(FirstFitPlanner.Run(inTime));
            Search(inTime, best, effort, stop);
        }

        if (!late || best.Lacking > 0)
        {
            Search(question, best, effort, stop);
        }

        // The best pieces are put in sequence with all the effort, and are chosen anew where that shows orders late.
        best.Offer(Timed(best.Plan, effort, stop));
        LateRepair.Run(question, best, effort, stop);
        best.Offer(Timed(best.Plan, effort, stop));
    }

    // A small question is settled in one model of every cut, a larger one by patterns of its rolls.
    private static void Search(OrderRequest question, BestPlan best, int effort, CancellationToken stop)
    {
        if (ModelSize.Of(question) <= ModelSize.Most)
        {
            OrderSearch.Run(question, best.Plan, best, effort, stop);
            if (!best.IsProved && !stop.IsCancellationRequested)
            {
                OrderSearch.Prove(question, best, effort, stop);
            }
        }
        else
        {
            PatternPlanner.Run(question, best, effort, OrderSearch.ShortPrice(question), stop);
        }
    }

    private static OrderPlan Timed(OrderPlan plan, int effort, CancellationToken stop) => PlanAssembly.Of(
        plan.Question, plan.Cuts.Select(c => new CutPiece(c.Order, c.Die, c.Roll, c.Strikes)), plan.Purchases,
        [.. plan.Remnants.SelectMany(r => r.Reserved.Select(held => (held.Order, r.Roll, held.Metres)))], effort, stop);
}
