using FeltNest.Rolls.Orders.Assembly;

namespace FeltNest.Rolls.Orders.FirstFit;

/// <summary>Fills one order from what is left: every lot is tried where it must be of one, and the one that leaves it least short at
/// least cost is taken.</summary>
internal static class OrderFill
{
    /// <summary>The shop after an order.</summary>
    public static ShopState Filled(ShopState before, CoverOrder order)
    {
        OrderRequest q = before.Question;
        int[] dies = [.. Enumerable.Range(0, q.Dies.Count)
            .Where(d => q.Dies[d].Ball == order.Ball && q.Presses.Any(p => OrderRequest.CutsOn(order, p, q.Dies[d])))
            .OrderBy(d => q.Dies[d].MakePrice is null || before.Struck(d) > 0 ? 0 : 1)
            .ThenBy(d => q.Dies[d].Shape.FeedMm / q.Dies[d].Shape.ClassPanels.Sum())];
        CutPiece[] own = [.. before.Pieces.Where(p => ReferenceEquals(p.Order, order))];
        int wanted = order.Balls - own.Sum(p => p.BallsIn(q));
        if (dies.Length == 0 || wanted <= 0)
        {
            return before;
        }

        IEnumerable<int> felt =
            Enumerable.Range(0, before.Rolls.Count).Where(i => Serves(before.Rolls[i]));
        IEnumerable<FeltPurchase> offers = q.Offers.Where(o => Serves(o.Roll));
        FeltChoice[] choices = order.OneLot
            ? [.. felt.Select(i => before.Rolls[i]).Concat(offers.Select(o => o.Roll)).Select(r => (r.Felt, r.Lot)).Distinct()
                .GroupJoin(
                    felt, lot => lot, i => (before.Rolls[i].Felt, before.Rolls[i].Lot), (lot, rolls) => new FeltChoice(lot, [.. rolls]))]
            : [new FeltChoice(null, [.. felt])];
        return choices
            .Select(choice => Tried(before, order, dies, choice, wanted))
            .Append((State: before, Short: wanted, Cost: 0m))
            .MinBy(t => (t.Short, t.Cost)).State;

        // An order of one lot that is cut already stays in its lot.
        bool Serves(StockRoll roll) => (order.Felt is null || roll.Felt == order.Felt)
            && (!order.OneLot || own.Length == 0 || (roll.Felt, roll.Lot) == (own[0].Roll.Felt, own[0].Roll.Lot));
    }

    private static (ShopState State, int Short, decimal Cost) Tried(
        ShopState before, CoverOrder order, int[] dies, FeltChoice choice, int lacking)
    {
        ShopState state = before.Copy();
        List<int> rolls = [.. choice.Rolls];
        int first = state.Pieces.Count;
        int wanted = lacking;
        foreach (bool buys in (bool[])[false, true])
        {
            foreach (int die in dies)
            {
                while (wanted > 0
                    && (Next(state, order, die, rolls, wanted) ?? (buys ? Bought(state, order, die, choice.Lot, wanted) : null)) is { } cut)
                {
                    wanted -= state.Cut(order, die, cut.Roll, cut.Press, cut.Strikes);
                    if (cut.Roll >= before.Rolls.Count && !rolls.Contains(cut.Roll))
                    {
                        rolls.Add(cut.Roll);
                    }
                }
            }
        }

        int[] kept = Overcut.Kept(state.Question, lacking, [.. state.Pieces.Skip(first)]);
        for (int i = kept.Length - 1; i >= 0; i--)
        {
            state.Shorten(first + i, kept[i]);
        }

        return (state, Math.Max(0, wanted), state.Cost(rolls) - before.Cost(choice.Rolls));
    }

    // The next run of strikes: a roll that holds all that is wanted, begun ones first, of these the shortest; else the one that gives
    // most, begun ones first.
    private static (int Roll, int Press, int Strikes)? Next(
        ShopState state, CoverOrder order, int die, IReadOnlyList<int> rolls, int wanted)
    {
        OrderRequest q = state.Question;
        CutDie tool = q.Dies[die];
        (int Roll, int Press, int Strikes)? best = null;
        (bool Part, bool Fresh, double Metres, decimal Price) rank = default;
        foreach (int i in rolls)
        {
            StockRoll roll = state.Rolls[i];
            int room = tool.Shape.StrikesIn(state.FreeM(i));
            if (!q.Fits(order, roll, tool) || room < q.LeastStrikes(order, roll, tool))
            {
                continue;
            }

            int least = q.LeastStrikes(order, roll, tool);
            int want = Math.Max(least, q.StrikesFor(wanted, roll, tool));
            (int press, int most) = state.PressFor(die, want);
            int strikes = Math.Min(want, Math.Min(room, most));
            if (strikes < least)
            {
                continue;
            }

            bool part = room < want;
            (bool Part, bool Fresh, double Metres, decimal Price) here =
                (part, state.FreeM(i) >= q.ClearM(roll) - 1e-9, part ? -state.FreeM(i) : state.FreeM(i), roll.PricePerMetre);
            if (best is null || here.CompareTo(rank) < 0)
            {
                (best, rank) = ((i, press, strikes), here);
            }
        }

        return best;
    }

    // One more roll of the first offer that serves the order and of which more may be bought.
    private static (int Roll, int Press, int Strikes)? Bought(
        ShopState state, CoverOrder order, int die, (string Felt, string Lot)? lot, int wanted)
    {
        OrderRequest q = state.Question;
        for (int o = 0; o < q.Offers.Count; o++)
        {
            StockRoll kind = q.Offers[o].Roll;
            if ((lot is { } only && (kind.Felt, kind.Lot) != only) || !q.Fits(order, kind, q.Dies[die]) || !state.MayBuy(o))
            {
                continue;
            }

            int least = q.LeastStrikes(order, kind, q.Dies[die]);
            int want = Math.Max(least, q.StrikesFor(wanted, kind, q.Dies[die]));
            (int press, int most) = state.PressFor(die, want);
            int strikes = Math.Min(want, Math.Min(q.Dies[die].Shape.StrikesIn(q.ClearM(kind)), most));
            if (strikes >= least)
            {
                return (state.Buy(o), press, strikes);
            }
        }

        return null;
    }

    // Rolls an order may take: those of one lot, or all of its felt.
    private sealed record FeltChoice((string Felt, string Lot)? Lot, IReadOnlyList<int> Rolls);
}
