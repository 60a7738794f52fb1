namespace FeltNest.Rolls.Orders.Assembly;

/// <summary>Puts the dies of one press in sequence so that the fewest orders are late there.</summary>
internal static class CampaignSequence
{
    // Up to so many dies every sequence is tried (5040); more go by the earliest day of their orders.
    private const int MostTried = 7;

    /// <summary>The best sequence; of several as good the one nearest to the order of days.</summary>
    /// <param name="runs">Campaigns.</param>
    /// <param name="work">Orders of a campaign with their strikes, in turn.</param>
    /// <param name="press">The press.</param>
    /// <param name="rules">Its days.</param>
    public static CutDie[] Best(
        IReadOnlyList<CutDie> runs, Func<CutDie, IReadOnlyList<(CoverOrder Order, int Strikes)>> work, PressSpec press, OrderRules rules)
    {
        Dictionary<CutDie, IReadOnlyList<(CoverOrder Order, int Strikes)>> all = runs.ToDictionary(run => run, work);
        CutDie[] byDay = [.. runs.OrderBy(run => all[run].Min(w => w.Order.Due))];
        (int Late, CutDie[] Sequence) best = (Late(byDay), byDay);
        if (best.Late > 0 && byDay.Length <= MostTried)
        {
            Try([], [.. byDay]);
        }

        return best.Sequence;

        void Try(List<CutDie> taken, List<CutDie> left)
        {
            if (left.Count == 0 && Late(taken) is var late && late < best.Late)
            {
                best = (late, [.. taken]);
            }

            foreach (CutDie next in left)
            {
                Try([.. taken, next], [.. left.Where(run => run != next)]);
            }
        }

        int Late(IEnumerable<CutDie> sequence) => OrdersLate(sequence, all, press, rules);
    }

    private static int OrdersLate(
        IEnumerable<CutDie> sequence, Dictionary<CutDie, IReadOnlyList<(CoverOrder Order, int Strikes)>> work, PressSpec press,
        OrderRules rules)
    {
        double hour = 0;
        HashSet<CoverOrder> late = [];
        foreach (CutDie run in sequence)
        {
            hour += press.ChangeOverMinutes / 60;
            foreach ((CoverOrder order, int strikes) in work[run])
            {
                hour += strikes / press.StrokesPerMinute / 60;
                if (hour > rules.HoursUntil(order.Due) + 1e-6)
                {
                    late.Add(order);
                }
            }
        }

        return late.Count;
    }
}
