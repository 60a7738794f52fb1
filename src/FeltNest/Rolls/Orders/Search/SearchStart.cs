using FeltNest.Rolls.Orders.Model;
using FeltNest.Rolls.Orders.Model.Mixed;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Search;

/// <summary>Hands a plan to the model as the place where its search begins.</summary>
internal static class SearchStart
{
    /// <summary>Values of the whole numbers that a plan settles: strikes, lots, dies and purchases; the solver finds the rest.</summary>
    public static IReadOnlyList<(Unknown Variable, double Value)> Of(OrderPlan plan, FeltRows felt, OrderRows orders, PressRows presses)
    {
        List<(Unknown Variable, double Value)> start = [];
        foreach (IGrouping<int, RollUnit> alike in Alike(plan.Question, felt.Units))
        {
            // Of rolls that are alike the model begins the first ones first.
            Queue<int[]> cuts = new(
                alike
                    .SelectMany(unit => unit.Rolls.Select(roll => CutsOf(plan, unit, roll)))
                    .OrderByDescending(cut => cut.Any(n => n > 0)));
            foreach (RollUnit unit in alike)
            {
                start.AddRange(unit.At([.. unit.Rolls.Select(_ => cuts.Dequeue())]));
            }
        }

        foreach (DieRun run in presses.Runs)
        {
            DieWork? work = plan.Dies.FirstOrDefault(d => d.Die == run.Die);
            start.AddRange(run.On.Select((on, p) => (on, run.Presses[p] == work?.Press ? 1.0 : 0)));
            int made = work is null ? 0 : 1;
            start.AddRange(run.Make is { } make ? [(make, made)] : []);
            start.AddRange(run.ReRules is { } rules ? [(rules, work?.ReRules ?? 0)] : []);
        }

        start.AddRange(orders.Lots.Select(l => (l.Taken, IsTaken(plan, l.Order, l.Felt, l.Lot) ? 1.0 : 0)));
        start.AddRange(felt.Bought.Select(b => (b.Count, (double)plan.Purchases.Where(p => p.Offer == b.Offer).Sum(p => p.Rolls))));
        return start;
    }

    private static IEnumerable<IGrouping<int, RollUnit>> Alike(OrderRequest question, IReadOnlyList<RollUnit> units)
    {
        int group = 0;
        return units
            .Select((unit, i) => (Unit: unit, Group: group += i > 0 && question.AreAlike(unit.Kind, units[i - 1].Kind) ? 0 : 1))
            .GroupBy(u => u.Group, u => u.Unit);
    }

    private static int[] CutsOf(OrderPlan plan, RollUnit unit, StockRoll roll)
    {
        OrderCut[] own = [.. plan.Cuts.Where(c => c.Roll == roll)];
        return [.. unit.Choices.Select(choice => own.Where(c => c.Order == choice.Order && c.Die == choice.Die).Sum(c => c.Strikes))];
    }

    private static bool IsTaken(OrderPlan plan, CoverOrder order, string felt, string lot) =>
        plan.Cuts.Any(c => c.Order == order && c.Roll.Felt == felt && c.Roll.Lot == lot)
        || plan.Remnants.Any(r => r.Roll.Felt == felt && r.Roll.Lot == lot && r.Reserved.Any(x => x.Order == order));
}
