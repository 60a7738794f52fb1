namespace FeltNest.Rolls.Orders.Planned;

/// <summary>Whether what a plan leaves could still serve an order: only where it could not, all is used up.</summary>
internal static class Leftover
{
    /// <summary>True where felt, strikes and press hours are left that would give the order more balls than it has, in one lot where it
    /// is to be of one.</summary>
    public static bool CouldServe(OrderPlan plan, CoverOrder order)
    {
        OrderRequest q = plan.Question;
        (CutDie Die, long Strikes)[] dies =
        [
            .. q.Dies.Where(d => d.Ball == order.Ball).Select(d => (d, StrikesLeft(plan, d))).Where(d => d.Item2 > 0),
        ];
        Dictionary<string, double> cutTo = plan.Cuts.GroupBy(c => c.Roll.Name).ToDictionary(g => g.Key, g => g.Max(c => c.ToM));
        IEnumerable<(StockRoll Roll, double Metres)> felt = q.Rolls.Select(r =>
            (r, r.EndM - (q.Rules.EndLossMm / 1000) - cutTo.GetValueOrDefault(r.Name, r.BeginM + (q.Rules.EndLossMm / 1000))))
            .Concat(q.Offers.Select(o => (o.Roll, q.ClearM(o.Roll))));
        (string Lot, long Balls)[] served = [.. felt.Select(f => (Lot(f.Roll), Most(f.Roll, f.Metres))).Where(f => f.Item2 > 0)];
        if (!order.OneLot)
        {
            return served.Length > 0;
        }

        OrderCut[] own = [.. plan.Cuts.Where(c => c.Order == order)];
        long has = own.Sum(c => (long)c.GoodBalls);
        return served
            .GroupBy(f => f.Lot)
            .Any(lot => lot.Sum(f => f.Balls) + own.Where(c => Lot(c.Roll) == lot.Key).Sum(c => (long)c.GoodBalls) > has);

        long Most(StockRoll roll, double metres) => dies.Where(d => q.Fits(order, roll, d.Die))
            .Select(d => (d.Die, Strikes: (int)Math.Min(d.Strikes, d.Die.Shape.StrikesIn(metres))))
            .Where(d => d.Strikes >= q.LeastStrikes(order, roll, d.Die))
            .Select(d => (long)d.Die.Shape.BallsOf(d.Strikes, q.GoodShare(roll, d.Die))).DefaultIfEmpty(0).Max();
    }

    private static string Lot(StockRoll roll) => $"{roll.Felt}\n{roll.Lot}";

    // What the die can still strike on a press that takes it, mounted once more.
    private static long StrikesLeft(OrderPlan plan, CutDie die)
    {
        int struck = plan.Dies.FirstOrDefault(d => d.Die == die)?.Strikes ?? 0;
        double most = plan.Question.Presses.Where(press => OrderRequest.Takes(press, die))
            .Select(press => MostStrikes(plan, press)).DefaultIfEmpty(0).Max();
        return Math.Max(0, Math.Min(die.MostStrikes - struck, (long)Math.Min(most + 1e-6, long.MaxValue / 2)));
    }

    // What a press has time for after mounting the die and changing the roll.
    private static double MostStrikes(OrderPlan plan, PressSpec press)
    {
        double changes = (press.ChangeOverMinutes + press.RollChangeMinutes) / 60;
        return press.Hours is { } hours ? 60 * press.StrokesPerMinute * (hours - plan.BusyHours(press) - changes) : double.MaxValue;
    }
}
