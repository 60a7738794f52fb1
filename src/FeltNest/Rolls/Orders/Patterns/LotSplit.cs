namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Reads a master for the lots its orders are cut from: one for each order of one lot, portions for the others.</summary>
internal static class LotSplit
{
    // Lots chosen before the program is solved again, as a share of those still open.
    private const double AtOnce = 0.15;

    // Share of the rolls that is counted on: whole rolls and whole orders leave some felt that the program would use.
    private const double Usable = 0.98;

    // An order that the program makes less of has no lot: it is left for what remains at the end.
    private const double Kept = 0.1;

    // Share of a pool that rounding may leave without a lot.
    private const double Rounding = 0.02;

    // A choice this near to whole is whole.
    private const double Whole = 0.999;

    /// <summary>The portions.</summary>
    /// <remarks>Lots are chosen a few at a time, the clearest first, and the program solved again after each: R. Sadykov and others,
    /// "Primal heuristics for branch and price", INFORMS Journal on Computing 31 (2019).</remarks>
    public static List<LotPortion> Of(
        OrderRequest question, FeltKinds felt, PatternMaster master, MasterSolver solver, IReadOnlyList<double> values,
        CancellationToken stop)
    {
        values = Tightened(felt, master, solver) ?? values;
        Dictionary<int, (int Order, int Lot, int Column)> chosen = [];
        while (Open() is { Count: > 0 } open)
        {
            int some = (int)Math.Ceiling(AtOnce * open.Count);
            bool clear = true;
            foreach ((int order, int lot, int column) in open.Take(Math.Max(some, open.Count(l => values[l.Column] >= Whole))))
            {
                chosen[order] = (order, lot, column);
                clear &= values[column] >= Whole || values[column] < Kept;
                solver.Hold(column, values[column] < Kept ? 0 : 1, 1);
            }

            if (!clear && !stop.IsCancellationRequested && solver.Solve() is { } solved)
            {
                values = solved.Values;
            }
        }

        IEnumerable<LotPortion> whole = chosen.Values.Where(c => values[c.Column] >= Kept).OrderBy(c => c.Order)
            .Select(c => new LotPortion { Order = c.Order, Lot = c.Lot, Balls = question.Orders[c.Order].Balls });
        return [.. whole, .. Drawn(question, master, values)];

        // The clearest lot of each order that has none yet.
        List<(int Order, int Lot, int Column)> Open() =>
        [
            .. master.Lots.Where(l => !chosen.ContainsKey(l.Order))
                .GroupBy(l => l.Order)
                .Select(g => g.MaxBy(l => values[l.Column]))
                .OrderByDescending(l => values[l.Column]).ThenBy(l => l.Order),
        ];
    }

    // The program with less of every roll.
    private static double[]? Tightened(FeltKinds felt, PatternMaster master, MasterSolver solver)
    {
        for (int kind = 0; kind < felt.All.Count; kind++)
        {
            solver.Limit(master.Supply[kind], Usable * felt.All[kind].Rolls.Count);
        }

        return solver.Solve()?.Values;
    }

    // Orders of any lot take what their pool draws from each lot, the earliest first.
    private static IEnumerable<LotPortion> Drawn(OrderRequest question, PatternMaster master, IReadOnlyList<double> values)
    {
        foreach (var pool in master.Drawn.GroupBy(d => (d.Ball, d.Felt)))
        {
            (int Lot, double Balls)[] lots =
                [.. pool.Select(d => (d.Lot, values[d.Column])).Where(d => d.Item2 > 0.5).OrderByDescending(d => d.Item2)];
            if (lots.Length == 0)
            {
                continue;
            }

            // Where the program leaves balls of the pool short, no lot takes them.
            int all = question.Orders.Where(o => !o.OneLot && o.Felt == pool.Key.Felt && o.Ball == pool.Key.Ball).Sum(o => o.Balls);
            bool whole = lots.Sum(l => l.Balls) >= (1 - Rounding) * all;
            (int at, double left) = (0, lots[0].Balls);
            foreach (int order in Enumerable.Range(0, question.Orders.Count)
                .Where(o =>
                    !question.Orders[o].OneLot && question.Orders[o].Felt == pool.Key.Felt && question.Orders[o].Ball == pool.Key.Ball)
                .OrderBy(o => question.Orders[o].Due))
            {
                int balls = question.Orders[order].Balls;
                while (balls > 0 && (left >= 0.5 || whole))
                {
                    bool last = at == lots.Length - 1;
                    int taken = last && whole ? balls : Math.Min(balls, (int)Math.Round(left));
                    if (taken > 0)
                    {
                        yield return new LotPortion { Order = order, Lot = lots[at].Lot, Balls = taken };
                    }

                    (balls, left) = (balls - taken, left - taken);
                    if (left < 0.5 && !last)
                    {
                        at++;
                        left = lots[at].Balls;
                    }
                }
            }
        }
    }
}
