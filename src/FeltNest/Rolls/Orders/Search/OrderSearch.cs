using FeltNest.Rolls.Orders.Model;
using FeltNest.Rolls.Orders.Model.Mixed;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Search;

/// <summary>Looks for better plans with a mixed-integer model of every cut: fewest balls short, then least cost; what no plan costs less
/// than comes from a second one.</summary>
internal sealed class OrderSearch
{
    // Less than this of a ball is none: what whole numbers are rounded by, over all rolls of an order.
    private const double NoBall = 1e-3;

    // Share of the nodes for a look at the whole before and after a few orders at a time are bettered: longer looks gain less than those.
    private const double FirstShare = 0.2;

    // What an aim may grow by while the next one is sought: rounding of the solver.
    private const double Rounding = 1e-6;

    private readonly OrderRequest question;
    private readonly BestPlan best;
    private readonly int effort;
    private readonly CancellationToken stop;
    private readonly MixedModel model;
    private readonly FeltRows felt;
    private readonly OrderRows orders;
    private readonly PressRows presses;

    private OrderSearch(MixedModel model, OrderRequest question, BestPlan best, int effort, CancellationToken stop)
    {
        (this.model, this.question, this.best, this.effort, this.stop) = (model, question, best, effort, stop);
        felt = new FeltRows(model, question);
        orders = new OrderRows(model, question, felt);
        presses = new PressRows(model, question, felt);
    }

    /// <summary>Searches from a plan on, handing every better one and every proof over as it is found.</summary>
    public static void Run(OrderRequest question, OrderPlan begin, BestPlan best, int effort, CancellationToken stop)
    {
        using MixedModel model = new(effort, stop);
        try
        {
            OrderSearch search = new(model, question, best, effort, stop);
            model.BeginAt(SearchStart.Of(begin, search.felt, search.orders, search.presses));
            search.Run();
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            // All that was found is handed over already.
        }
    }

    /// <summary>Proves what no plan can cost less than, by a model that counts balls at the most: every plan is a solution of it.</summary>
    public static void Prove(OrderRequest question, BestPlan best, int effort, CancellationToken stop)
    {
        using MixedModel model = new(effort, stop);
        try
        {
            FeltRows felt = new(model, question);
            OrderRows orders = new(model, question, felt, safely: false);
            PressRows presses = new(model, question, felt);
            double price = ShortPrice(question);
            best.Tell("search: bound");
            LinearSum dear = new LinearSum().Add(felt.Cost).Add(presses.Cost).Add(orders.Wanting, price);
            if (model.Minimise(dear, stop) is { } reach)
            {
                // A plan that lacks no more than the best one lacks at most so many balls and reserves together.
                double lacking = best.Lacking + (orders.ReserveWeight * best.Plan.Rank.Reserve);
                best.ProveCost(lacking, question.InTime, reach.Bound - (price * lacking / orders.ReserveWeight));
            }
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            // Nothing more is proved.
        }
    }

    private void Run()
    {
        LinearSum cost = new LinearSum().Add(felt.Cost).Add(presses.Cost);

        // A ball short, be it of a reserve, is dear enough that few plans leave one out; where none is short, this plan is the best, and
        // the search was led by cost from the start.
        LinearSum dear = new LinearSum().Add(cost).Add(orders.Wanting, Dear());
        if (Reached(dear, "fewest balls short at least cost") is not { } first)
        {
            best.Tell(stop.IsCancellationRequested ? "search: stopped before it found a plan" : $"search: no plan within effort {effort}");
            return;
        }

        // A plan that lacks no more than this one lacks at most so many balls and reserves together.
        double lacking = model.ValueOf(orders.Short);
        Prove(lacking, first.Bound - (Dear() * lacking / orders.ReserveWeight));
        Read();
        if (model.ValueOf(orders.Wanting) > NoBall)
        {
            lacking = FewestShort();
            model.AtMost(orders.Short, lacking + Rounding);
            Prove(lacking, Reached(cost, "least cost")!.Value.Bound);
            Read();
        }
    }

    private double FewestShort()
    {
        best.Tell("search: fewest balls short");
        ModelReach least = model.Minimise(orders.Short, stop)!.Value;
        double fewest = Math.Max(0, (least.Proved ? least.Value : least.Bound) - felt.BallsCountedSafely);

        if (question.InTime)
        {
            return least.Value;
        }

        // All reserves together weigh less than a ball.
        best.ProveShort(orders.Reserves.Count > 0 ? Math.Floor(fewest + Rounding) : fewest);
        return least.Value;
    }

    private void Prove(double mostShort, double bound)
    {
        // With uneven pairing groups the model may count a ball too few in a piece, and a plan may cost less than it proves.
        if (felt.BallsCountedSafely == 0)
        {
            best.ProveCost(mostShort, question.InTime, bound);
            best.Tell("search: bound");
        }
    }

    // A short search of the whole, a few orders at a time where that does not settle it, and the rest of the search from there.
    private ModelReach? Reached(LinearSum aim, string name)
    {
        best.Tell($"search: {name}");
        if (model.Minimise(aim, FirstShare, stop) is not { } begun)
        {
            return null;
        }

        if (begun.Proved)
        {
            return begun;
        }

        Read();
        OrderNeighbours neighbours = new(model, question, felt, orders);
        double better = neighbours.Improve(aim, begun.Bound, effort, () => Read(), stop);
        ModelReach last = model.Minimise(aim, FirstShare, stop) ?? begun;
        return last with { Value = Math.Min(last.Value, better), Bound = Math.Max(last.Bound, begun.Bound) };
    }

    private OrderPlan Read()
    {
        OrderPlan plan = PlanReading.Read(model, question, felt, orders);
        if (best.Offer(plan))
        {
            best.Tell("search: better plan");
        }

        return plan;
    }

    private double Dear() => ShortPrice(question);

    /// <summary>Felt of a strike at the dearest price, ten times over: no strike is saved by a ball that is left out.</summary>
    internal static double ShortPrice(OrderRequest question)
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
}
