using System.Globalization;

namespace FeltNest.Rolls.Orders.Planned;

/// <summary>Says why an order is short and what would help. That something is used up is said only where it is proved.</summary>
internal static class ShortReason
{
    /// <summary>A plan with a reason for each order that is short, by what is proved of it.</summary>
    public static OrderPlan Stated(OrderPlan plan) => plan with
    {
        Results =
        [
            .. plan.Results.Select(r =>
                r.ShortBalls == 0 ? r : r with { Reason = $"{Of(plan, r.Order, r.ShortBalls)}{PinWords.Of(r.Order)}" }),
        ],
    };

    private static string Of(OrderPlan plan, CoverOrder order, int lacking)
    {
        OrderRequest q = plan.Question;
        CutDie[] dies = [.. q.Dies.Where(d => d.Ball == order.Ball)];
        CutDie[] placed = [.. dies.Where(d => q.Presses.Any(p => OrderRequest.Takes(p, d)))];
        if (placed.Length == 0)
        {
            return dies.Length == 0
                ? $"no die cuts {order.Ball}: add one to the dies, with a price to make it"
                : $"no press takes {string.Join(", ", dies.Select(d => d.Name))}: a longer or wider bed, or a smaller die, would work";
        }

        StockRoll[] all = [.. q.Rolls, .. q.Offers.Select(o => o.Roll)];
        StockRoll[] felt = [.. all.Where(r => order.Felt is null || r.Felt == order.Felt)];
        if (felt.Length == 0)
        {
            return $"no roll and no offer is of felt {order.Felt ?? "any kind"}";
        }

        StockRoll[] wide = [.. felt.Where(r => placed.Any(d => q.Fits(order, r, d)))];
        if (wide.Length == 0 && felt.FirstOrDefault(r => placed.Any(d => q.FitsButForNap(order, r, d))) is { } against)
        {
            return $"the nap of roll {against.Name} does not lie the way that its one-way die needs";
        }

        if (wide.Length == 0)
        {
            return string.Create(
                CultureInfo.InvariantCulture,
                $"no roll of its felt is {placed.Min(d => d.Shape.LeastWidthMm):0.#} mm wide or more and long enough for one strike; "
                    + $"the widest is {felt.Max(r => r.WidestMm):0.##} mm");
        }

        CutDie best = placed.Where(d => wide.Any(r => q.Fits(order, r, d))).MinBy(d => d.Shape.FeedMm / d.Shape.ClassPanels.Sum())!;
        StockRoll like = wide.First(r => q.Fits(order, r, best));
        int strikes = (int)Math.Ceiling(lacking / best.Shape.BallsPerStrike(q.GoodShare(like, best)));
        string help = FormattableString.Invariant(
            $"{lacking} balls more take about {best.Shape.MetresOf(strikes):0.#} m of felt and {strikes} strikes of {best.Name}");
        return $"{Bottleneck(plan, order, placed, wide)}; {help}";
    }

    private static string Bottleneck(OrderPlan plan, CoverOrder order, CutDie[] dies, StockRoll[] wide)
    {
        if (LotLimit(plan.Question, order, dies, wide) is not { } most)
        {
            return WhatIsLeft(plan, order, dies);
        }

        string lot = $"no lot alone gives more than {most} balls and the order is to be of one lot";
        long has = plan.Cuts.Where(c => c.Order == order).Sum(c => (long)c.GoodBalls);
        return has >= most ? lot : $"{lot}; {WhatIsLeft(plan, order, dies)}";
    }

    // Most balls that one lot can give an order of one lot; null where felt is on offer or a lot gives enough.
    private static long? LotLimit(OrderRequest q, CoverOrder order, CutDie[] dies, StockRoll[] wide)
    {
        if (!order.OneLot || q.Offers.Any(o => wide.Contains(o.Roll)))
        {
            return null;
        }

        long most = wide.GroupBy(r => (r.Felt, r.Lot)).Max(lot => lot.Sum(MostOf));
        return most < order.Balls ? most : null;

        // Pieces of several dies may share a roll: then its length over the least feed of a ball is the limit.
        long MostOf(StockRoll roll)
        {
            CutDie[] fitting = [.. dies.Where(d => q.Fits(order, roll, d))];
            return fitting.Length == 1
                ? fitting[0].Shape.BallsOf(fitting[0].Shape.StrikesIn(q.ClearM(roll)), q.GoodShare(roll, fitting[0]))
                : (long)Math.Floor(fitting.Select(d => BallsIn(roll, d)).DefaultIfEmpty(0).Max() + 1e-6);
        }

        double BallsIn(StockRoll roll, CutDie die) =>
            1000 * q.ClearM(roll) * die.Shape.BallsPerStrike(q.GoodShare(roll, die)) / die.Shape.FeedMm;
    }

    private static string WhatIsLeft(OrderPlan plan, CoverOrder order, CutDie[] dies)
    {
        bool could = Leftover.CouldServe(plan, order);
        (string gone, bool taken) = Gone(plan, order, dies);
        if (plan.ShortBalls <= PlanProof.Whole(plan.Proof.LeastShort))
        {
            string proved = "no plan is short of fewer balls, all orders together";
            return could ? $"proved: {proved}" : $"{gone} used up, proved: {proved}";
        }

        if (could)
        {
            string found = plan.Proof.CutShort ? "not found before the search was cut short" : "not found within this effort";
            return $"{found}: felt, strikes and press hours that could serve it are left";
        }

        return $"no {gone} left{(taken ? ": other orders took it" : string.Empty)}; not proved that no plan gives it more";
    }

    // What there is none of, and whether other orders have some of it.
    private static (string What, bool Taken) Gone(OrderPlan plan, CoverOrder order, CutDie[] dies)
    {
        OrderRequest q = plan.Question;
        OrderCut[] others = [.. plan.Cuts.Where(c => c.Order != order)];
        long left = dies.Sum(d => d.MostStrikes - (plan.Dies.FirstOrDefault(w => w.Die == d)?.Strikes ?? 0));
        if (left <= 0)
        {
            return ($"strikes of {string.Join(", ", dies.Select(d => d.Name))} are", others.Any(c => dies.Contains(c.Die)));
        }

        PressSpec[] presses = [.. q.Presses.Where(p => dies.Any(d => OrderRequest.Takes(p, d)))];
        return presses.All(p => p.Hours is { } hours && hours - plan.BusyHours(p) < (p.ChangeOverMinutes / 60) + (1 / p.StrokesPerMinute))
            ? ("hours of the presses that take its dies are", others.Any(c => presses.Contains(c.Press)))
            : (order.OneLot ? "felt of one lot is" : "felt is", others.Any(c => dies.Any(d => q.Fits(order, c.Roll, d))));
    }
}
