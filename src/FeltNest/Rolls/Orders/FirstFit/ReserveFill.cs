using FeltNest.Rolls.Orders.Model;

namespace FeltNest.Rolls.Orders.FirstFit;

/// <summary>Keeps felt back for later rejects, of what the pieces of a plan leave: in the lot of the order where it is of one.</summary>
internal static class ReserveFill
{
    /// <summary>Metres to keep back.</summary>
    public static IReadOnlyList<(CoverOrder Order, StockRoll Kind, double Metres)> Of(ShopState state)
    {
        OrderRequest q = state.Question;
        double[] room = [.. Enumerable.Range(0, state.Rolls.Count).Select(i => Room(state, i))];
        List<(CoverOrder Order, StockRoll Kind, double Metres)> kept = [];
        foreach (CoverOrder order in q.Orders.Where(o => o.ReserveBalls > 0).OrderBy(o => o.Due))
        {
            double[] perMetre = [.. state.Rolls.Select(roll => OrderRows.BallsPerMetre(q, order, roll))];
            string? lot = order.OneLot ? LotOf(state, order, room, perMetre) : null;
            double wanted = order.ReserveBalls;
            for (int i = 0; i < room.Length && wanted > 0; i++)
            {
                if (perMetre[i] > 0 && room[i] > 0 && (lot is null || Name(state.Rolls[i]) == lot))
                {
                    double metres = Math.Min(room[i], wanted / perMetre[i]);
                    kept.Add((order, state.Rolls[i], metres));
                    (room[i], wanted) = (room[i] - metres, wanted - (metres * perMetre[i]));
                }
            }
        }

        return kept;
    }

    // What of a roll can be kept back: whole cloth of one that is not begun, the remnant of another where it is long enough to go back to
    // stock.
    private static double Room(ShopState state, int roll)
    {
        OrderRules rules = state.Question.Rules;
        StockRoll kind = state.Rolls[roll];
        CutPiece[] own = [.. state.Pieces.Where(p => p.Roll == kind)];
        if (own.Length == 0)
        {
            return kind.Offer is null ? state.Question.ClearM(kind) : 0;
        }

        double left = kind.LengthM - (rules.EndLossMm / 1000) - own.Sum(p => p.Die.Shape.MetresOf(p.Strikes));
        return left >= rules.LeastRemnantM ? left : 0;
    }

    // The lot it is cut from, else the one that has most.
    private static string LotOf(ShopState state, CoverOrder order, double[] room, double[] perMetre) =>
        state.Pieces.FirstOrDefault(p => p.Order == order) is { } cut ? Name(cut.Roll)
            : Enumerable.Range(0, room.Length)
                .GroupBy(i => Name(state.Rolls[i]))
                .Select(lot => (lot.Key, Balls: lot.Sum(i => room[i] * perMetre[i])))
                .OrderByDescending(lot => lot.Balls).Select(lot => lot.Key).FirstOrDefault(string.Empty);

    private static string Name(StockRoll roll) => $"{roll.Felt}\n{roll.Lot}";
}
