namespace FeltNest.Rolls.Orders.Planned;

/// <summary>Works out what goes back to stock and which of it is kept back for orders.</summary>
internal static class RemnantList
{
    /// <summary>The remnants of a plan.</summary>
    /// <param name="question">The question.</param>
    /// <param name="cuts">Its cuts, placed on their rolls.</param>
    /// <param name="bought">Rolls bought.</param>
    /// <param name="reserves">Metres to keep back for orders, of any rolls alike.</param>
    public static List<KeptRemnant> Of(
        OrderRequest question, IReadOnlyList<OrderCut> cuts, IReadOnlyList<RollPurchase> bought,
        IReadOnlyList<(CoverOrder Order, StockRoll Kind, double Metres)> reserves)
    {
        StockRoll[] purchased = [.. bought.SelectMany(p => Enumerable.Range(1, p.Rolls).Select(p.Offer.Copy))];
        List<KeptRemnant> kept = [];
        List<double> free = [];
        foreach (StockRoll roll in question.Rolls.Concat(purchased))
        {
            bool begun = cuts.Any(c => c.Roll == roll);
            double length = begun ? roll.EndM - cuts.Where(c => c.Roll == roll).Max(c => c.ToM) : roll.LengthM;
            if (!begun || length >= question.Rules.LeastRemnantM - 1e-9)
            {
                kept.Add(new KeptRemnant(roll, length, begun, []));
                free.Add(begun ? length : question.ClearM(roll));
            }
        }

        foreach ((CoverOrder order, StockRoll kind, double metres) in reserves)
        {
            double wanted = metres;
            for (int i = 0; i < kept.Count && wanted > 1e-9; i++)
            {
                double taken = kept[i].Roll == kind || question.AreAlike(kept[i].Roll, kind) ? Math.Min(wanted, free[i]) : 0;
                if (taken > 0)
                {
                    kept[i] = kept[i] with { Reserved = [.. kept[i].Reserved, (order, taken)] };
                    (free[i], wanted) = (free[i] - taken, wanted - taken);
                }
            }
        }

        // A roll in stock that nobody touches stays where it is and is no part of the plan.
        return [.. kept.Where(r => r.Begun || r.Roll.Offer is not null || r.Reserved.Count > 0)];
    }
}
