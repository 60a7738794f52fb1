using System.Globalization;

namespace FeltNest.Rolls.Orders.Planned;

/// <summary>Says why an order is short and what would help.</summary>
internal static class ShortReason
{
    /// <summary>The reason, one line.</summary>
    public static string Of(OrderPlan plan, CoverOrder order, int lacking)
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
        OrderRequest q = plan.Question;
        long left = dies.Sum(d => d.MostStrikes - (plan.Dies.FirstOrDefault(w => w.Die == d)?.Strikes ?? 0));
        if (left <= 0)
        {
            return $"no strikes are left in {string.Join(", ", dies.Select(d => d.Name))}";
        }

        if (q.Presses
            .Where(p => dies.Any(d => OrderRequest.Takes(p, d)))
            .All(p => p.Hours is { } hours && hours - plan.BusyHours(p) < (p.ChangeOverMinutes / 60) + (1 / p.StrokesPerMinute)))
        {
            return "the presses that take its dies have no hours left";
        }

        if (order.OneLot && q.Offers.All(o => !wide.Contains(o.Roll)))
        {
            int most = wide
                .GroupBy(r => (r.Felt, r.Lot))
                .Max(lot =>
                    lot.Sum(r =>
                        dies.Where(d => q.Fits(order, r, d)).Max(d => d.Shape.BallsOf(d.Shape.StrikesIn(q.ClearM(r)), q.GoodShare(r, d)))));
            if (most < order.Balls)
            {
                return $"no lot alone gives more than {most} balls and the order is to be of one lot";
            }
        }

        return Leftover.CouldServe(plan, order)
            ? "not found within this effort: felt, strikes and press hours that could serve it are left"
            : "its felt, strikes or press hours are used up by all orders together";
    }
}
