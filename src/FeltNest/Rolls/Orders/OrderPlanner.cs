using FeltNest.Rolls.Orders.Model;
using FeltNest.Rolls.Orders.Model.Mixed;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders;

/// <summary>Plans orders against stock: a mixed-integer model solved for three aims, one after the other.</summary>
public static class OrderPlanner
{
    /// <summary>Most effort.</summary>
    public const int MostEffort = 1000;

    /// <summary>The plan of a question.</summary>
    /// <param name="question">The question.</param>
    /// <param name="effort">Counted work, 1 to 1000: nodes of the search tree, never time.</param>
    /// <param name="progress">Told each aim as it is done; may be null.</param>
    /// <param name="stop">Ends the search with the best plan so far.</param>
    /// <exception cref="NoAnswerException">Nothing can be cut for any order; the message names the first one's reason.</exception>
    /// <exception cref="OperationCanceledException">Stopped before there was any plan.</exception>
    public static OrderPlan Run(OrderQuestion question, int effort = 5, IProgress<string>? progress = null, CancellationToken stop = default)
    {
        using MixedModel model = new(effort);
        FeltRows felt = new(model, question);
        OrderRows orders = new(model, question, felt);
        PressRows presses = new(model, question, felt);
        LinearSum cost = new LinearSum().Add(felt.Cost).Add(presses.Cost);

        // A ball short, be it of a reserve, is dear enough that few plans leave one out; where none is short, this plan is the best, and the search was led by cost from the start.
        LinearSum dear = new LinearSum().Add(cost).Add(orders.Wanting, Dear(question));
        OrderNeighbours neighbours = new(model, question, felt, orders);
        ModelReach first = Reached(dear) ?? throw Unsolved(effort, stop), least = first, lacking = new(0, 0, true);
        if (model.ValueOf(orders.Wanting) > NoBall)
        {
            lacking = model.Minimise(orders.Short, stop)!.Value;
            progress?.Report(FormattableString.Invariant($"balls short: {Math.Round(lacking.Value):0}, at least {Math.Max(0, Math.Ceiling(lacking.Bound - Rounding)):0}"));
            model.AtMost(orders.Short, lacking.Value + Rounding);
            least = Reached(cost)!.Value;
        }

        // Without days the model is far lighter, and whatever it finds in time is the best with days too.
        OrderPlan free = Read(least, lacking, 0);
        if (free.Late > 0)
        {
            model.AtMost(orders.Short, lacking.Value + NoBall);
            presses.AddDays();
            if (model.Minimise(presses.Late, stop) is { } late)
            {
                progress?.Report(FormattableString.Invariant($"orders late: {late.Value:0}, at least {Math.Max(0, Math.Ceiling(late.Bound - Rounding)):0}"));
                model.AtMost(presses.Late, late.Value + Rounding);
                least = Reached(cost)!.Value;
                free = Read(least, lacking, Math.Max(0, late.Proved ? late.Value : late.Bound));
            }
        }

        return free.Cuts.Count > 0 ? Told(free) : throw Nothing(free);

        // A short search of the whole, a few orders at a time where that does not settle it, and the rest of the search from there.
        ModelReach? Reached(LinearSum aim)
        {
            if (model.Minimise(aim, FirstShare, stop) is not { } begun)
            {
                return null;
            }

            if (begun.Proved)
            {
                return begun;
            }

            double better = neighbours.Improve(aim, begun.Bound, effort, stop);
            ModelReach last = model.Minimise(aim, FirstShare, stop) ?? begun;
            return last with { Value = Math.Min(last.Value, better), Bound = Math.Max(last.Bound, begun.Bound) };
        }

        OrderPlan Told(OrderPlan plan)
        {
            progress?.Report(FormattableString.Invariant($"cost {plan.Cost.Total:0.00} {question.Rules.Currency}, gap {plan.GapPercent:0.####} %"));
            return plan;
        }

        OrderPlan Read(ModelReach reach, ModelReach lacking, double leastLate)
        {
            // A plan that lacks no more than this one lacks at most so many balls and reserves together.
            double bound = Math.Max(reach.Bound, first.Bound - (Dear(question) * model.ValueOf(orders.Short) / orders.ReserveWeight));
            PlanProof proof = new(Money(bound), Math.Max(0, lacking.Proved ? lacking.Value : lacking.Bound), leastLate, stop.IsCancellationRequested, effort);
            OrderPlan plan = PlanReading.Read(model, question, felt, orders, presses, proof);

            // The model counts balls safely, so a plan may turn out less short than its bound.
            return plan with { Proof = proof with { LeastShort = Math.Min(proof.LeastShort, plan.Results.Sum(r => r.ShortBalls)) } };
        }
    }

    // Less than this of a ball is none: what whole numbers are rounded by, over all rolls of an order.
    private const double NoBall = 1e-3;

    // Share of the nodes for a look at the whole before and after a few orders at a time are bettered: longer looks gain less than those.
    private const double FirstShare = 0.2;

    // What an aim may grow by while the next one is sought: rounding of the solver.
    private const double Rounding = 1e-6;

    // Felt of a strike at the dearest price, ten times over: no strike is saved by a ball that is left out.
    private static double Dear(OrderQuestion question)
    {
        double most = 1;
        foreach (StockRoll roll in question.Rolls.Concat(question.Offers.Select(o => o.Roll)))
        {
            foreach (CutDie die in question.Dies)
            {
                most = Math.Max(most, 10 * (double)roll.PricePerMetre * die.Shape.FeedMm / 1000);
            }
        }

        return most;
    }

    // Bounds that are not there are no money.
    private static decimal Money(double bound) => double.IsFinite(bound) && Math.Abs(bound) < 1e15 ? (decimal)bound : 0;

    private static Exception Unsolved(int effort, CancellationToken stop) => stop.IsCancellationRequested
        ? new OperationCanceledException(stop) : new NoAnswerException($"the solver found no plan within effort {effort}: give a higher --effort, or fewer orders at a time");

    private static NoAnswerException Nothing(OrderPlan plan) => new($"nothing can be cut for any order; order {plan.Results[0].Order.Name}: {plan.Results[0].Reason}");
}
