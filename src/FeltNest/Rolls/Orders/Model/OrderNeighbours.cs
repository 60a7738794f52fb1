using FeltNest.Rolls.Orders.Model.Mixed;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>Betters a plan a few orders at a time: all cuts of the others stay, those of the few are solved anew.</summary>
/// <remarks>Large neighbourhood search after P. Shaw, "Using constraint programming and local search methods to solve vehicle routing
/// problems", CP 1998 (from memory); the few are orders that want the same felt, as those take rolls from each other.</remarks>
internal sealed class OrderNeighbours(MixedModel model, OrderRequest question, FeltRows felt, OrderRows orders)
{
    // Orders solved anew at a time; small models are solved in one piece.
    private const int Few = 7;
    private const int Least = 8;

    // Nodes of one try, and tries for one unit of effort.
    private const long NodesPerTry = 60;
    private const int TriesPerEffort = 5;

    /// <summary>Betters the solution of a model.</summary>
    /// <param name="aim">The sum to make small.</param>
    /// <param name="bound">What it cannot be below: where it is met the work ends.</param>
    /// <param name="effort">Counted work.</param>
    /// <param name="bettered">Told when the solution got better.</param>
    /// <param name="stop">Ends the work.</param>
    /// <returns>What was reached.</returns>
    public double Improve(LinearSum aim, double bound, int effort, Action bettered, CancellationToken stop)
    {
        double reached = model.ValueOf(aim);
        if (question.Orders.Count < Least)
        {
            return reached;
        }

        Random random = new(1);
        for (int i = 0; i < TriesPerEffort * effort
            && !stop.IsCancellationRequested
            && reached > bound + (MixedModel.RelativeGap * Math.Abs(bound)); i++)
        {
            double before = reached;
            reached = model.Improve(aim, Held(Chosen(random)), NodesPerTry, stop);
            if (reached < before - (MixedModel.RelativeGap * Math.Abs(before)))
            {
                bettered();
            }
        }

        return reached;
    }

    // One order at random and the few nearest to it in what rolls they can take, with chance among equals.
    private HashSet<CoverOrder> Chosen(Random random)
    {
        CoverOrder first = question.Orders[random.Next(question.Orders.Count)];
        HashSet<RollUnit> rolls = [.. felt.Units.Where(unit => unit.Choices.Any(c => c.Order == first))];
        return
        [
            .. question.Orders
                .OrderByDescending(order =>
                    order == first
                        ? double.MaxValue
                        : felt.Units.Count(unit => rolls.Contains(unit) && unit.Choices.Any(c => c.Order == order)) * (0.5
                            + random.NextDouble()))
                .Take(Few),
        ];
    }

    private List<Unknown> Held(HashSet<CoverOrder> chosen)
    {
        Dictionary<int, Unknown> held = [];
        foreach (RollUnit unit in felt.Units)
        {
            for (int i = 0; i < unit.Choices.Count; i++)
            {
                if (!chosen.Contains(unit.Choices[i].Order))
                {
                    foreach ((Unknown variable, _) in unit.Strikes[i].Terms.Concat(unit.Pieces[i].Terms))
                    {
                        held[variable.Index] = variable;
                    }
                }
            }
        }

        foreach ((CoverOrder order, _, _, Unknown taken) in orders.Lots)
        {
            if (!chosen.Contains(order))
            {
                held[taken.Index] = taken;
            }
        }

        return [.. held.Values];
    }
}
