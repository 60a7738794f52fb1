using FeltNest.Rolls.Orders.Assembly;
using FeltNest.Rolls.Orders.Model.Mixed;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>Reads the plan out of a solved model.</summary>
internal static class PlanReading
{
    // Metres kept back below this are rounding.
    private const double LeastMetres = 1e-6;

    /// <summary>The plan.</summary>
    public static OrderPlan Read(MixedModel model, OrderRequest question, FeltRows felt, OrderRows orders)
    {
        List<CutPiece> pieces = [];
        foreach (RollUnit unit in felt.Units)
        {
            foreach ((int[] cut, int k) in unit.Cuts(model).Select((cut, k) => (cut, k)))
            {
                pieces.AddRange(
                    Enumerable.Range(0, cut.Length)
                        .Where(i => cut[i] > 0)
                        .Select(i => new CutPiece(unit.Choices[i].Order, unit.Choices[i].Die, unit.Rolls[k], cut[i])));
            }
        }

        List<RollPurchase> bought = [.. felt.Bought.Select(b => new RollPurchase(b.Offer, model.WholeOf(b.Count))).Where(p => p.Rolls > 0)];
        return PlanAssembly.Of(
            question, pieces, bought,
            [.. orders.Reserves.Select(r => (r.Order, r.Room.Roll, model.ValueOf(r.Metres))).Where(r => r.Item3 > LeastMetres)], 0,
            CancellationToken.None);
    }
}
