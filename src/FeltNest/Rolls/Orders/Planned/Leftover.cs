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

    // What the die can still strike, and the press it stands on, or any that takes it where it stands on none.
    private static long StrikesLeft(OrderPlan plan, CutDie die)
    {
        DieWork? work = plan.Dies.FirstOrDefault(d => d.Die == die);
        IEnumerable<PressSpec> presses = work is null ? plan.Question.Presses.Where(p => OrderRequest.Takes(p, die)) : [work.Press];
        double most = presses.Select(press => MostStrikes(plan, press, isOn: work is not null)).DefaultIfEmpty(0).Max();
        return Math.Max(0, Math.Min(die.MostStrikes - (work?.Strikes ?? 0), (long)Math.Min(most + 1e-6, long.MaxValue / 2)));
    }

    // What a press has time for, after a change-over where the die does not stand on it yet.
    private static double MostStrikes(OrderPlan plan, PressSpec press, bool isOn)
    {
        double changeOver = isOn ? 0 : press.ChangeOverMinutes / 60;
        return press.Hours is { } hours ? 60 * press.StrokesPerMinute * (hours - Busy(plan, press) - changeOver) : double.MaxValue;
    }

    private static double Busy(OrderPlan plan, PressSpec press) =>
        plan.Cuts.Where(c => c.Press.Name == press.Name).Select(c => c.EndHour).DefaultIfEmpty(0).Max();
}
