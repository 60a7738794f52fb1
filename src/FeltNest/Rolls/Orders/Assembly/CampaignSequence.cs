using FeltNest.Rolls.Presses;

namespace FeltNest.Rolls.Orders.Model;

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
    public static DieRun[] Best(IReadOnlyList<DieRun> runs, Func<DieRun, IReadOnlyList<(CoverOrder Order, int Strikes)>> work, PressSpec press, OrderRules rules)
    {
        Dictionary<DieRun, IReadOnlyList<(CoverOrder Order, int Strikes)>> all = runs.ToDictionary(run => run, work);
        DieRun[] byDay = [.. runs.OrderBy(run => all[run].Min(w => w.Order.Due))];
        (int Late, DieRun[] Sequence) best = (Late(byDay), byDay);
        if (best.Late > 0 && byDay.Length <= MostTried)
        {
            Try([], [.. byDay]);
        }

        return best.Sequence;

        void Try(List<DieRun> taken, List<DieRun> left)
        {
            if (left.Count == 0 && Late(taken) is var late && late < best.Late)
            {
                best = (late, [.. taken]);
            }

            foreach (DieRun next in left)
            {
                Try([.. taken, next], [.. left.Where(run => run != next)]);
            }
        }

        int Late(IEnumerable<DieRun> sequence)
        {
            double hour = 0;
            HashSet<CoverOrder> late = [];
            foreach (DieRun run in sequence)
            {
                hour += press.ChangeOverMinutes / 60;
                foreach ((CoverOrder order, int strikes) in all[run])
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
}
