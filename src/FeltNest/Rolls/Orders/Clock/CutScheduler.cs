namespace FeltNest.Rolls.Orders.Clock;

/// <summary>Decides when each piece is cut, and on which press: a rule builds sequences, a search betters the best of them (where
/// they are few, all are tried), and overtime that gains no day is left out.</summary>
/// <remarks>Aims in order: pieces that find no press hours, days late weighed by priority, orders late, cost of mountings and overtime.
/// Deterministic: its work is counted.</remarks>
internal static class CutScheduler
{
    /// <summary>The work of the pieces.</summary>
    /// <param name="question">The question.</param>
    /// <param name="pieces">The pieces.</param>
    /// <param name="effort">Counted work of the search; 0 takes the best sequence of the rule.</param>
    /// <param name="stop">Ends the search with the best so far.</param>
    public static ClockResult Run(OrderRequest question, IReadOnlyList<CutPiece> pieces, int effort, CancellationToken stop = default)
    {
        ClockShop shop = new(question, pieces);
        if (pieces.Count == 0)
        {
            return new ClockResult(shop, [], new PieceTimes(0));
        }

        (int[] Sequence, int[] PressOf, ClockScore Score) first = ClockStart.Best(shop, stop);
        (int[] Sequence, int[] PressOf, ClockScore Score) best = effort > 0 && EverySequence.IsFew(shop)
            ? EverySequence.Best(shop, first)
            : ClockSearch.Run(shop, first, effort, stop);
        shop = LessOvertime(question, shop, best);
        PressClock clock = new(shop);
        clock.Run(best.Sequence, best.PressOf);
        return new ClockResult(shop, best.PressOf, clock.Times);
    }

    // The overtime that ends last is tried first: it is the least likely to be needed.
    private static ClockShop LessOvertime(
        OrderRequest question, ClockShop all, (int[] Sequence, int[] PressOf, ClockScore Score) best)
    {
        ClockShop shop = all;
        ClockScore score = best.Score;
        for (int press = 0; press < question.Presses.Count; press++)
        {
            IReadOnlyList<OvertimeSpan> overtime = question.CalendarOf(question.Presses[press]).Overtime;
            HashSet<int> used = [.. Enumerable.Range(0, overtime.Count)];
            foreach (int span in Enumerable.Range(0, overtime.Count).OrderByDescending(i => overtime[i].To))
            {
                ClockShop less = shop.WithOvertime(press, i => i != span && used.Contains(i));
                ClockScore other = new PressClock(less).Run(best.Sequence, best.PressOf);
                if (other.CompareTo(score) <= 0)
                {
                    used.Remove(span);
                    (shop, score) = (less, other);
                }
            }
        }

        return shop;
    }
}
