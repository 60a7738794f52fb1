using FeltNest.Die.Bend;
using Google.OrTools.Sat;

namespace FeltNest.Die.Stock;

/// <summary>Cuts the pieces of rule from the fewest lengths of stock.</summary>
/// <remarks>The cutting-stock problem in one dimension (P. C. Gilmore, R. E. Gomory, "A linear programming approach to the cutting-stock
/// problem", <em>Operations Research</em> 9 (1961) 849-859; from memory). All ways to fill a length are listed, and a model of whole
/// numbers chooses among them, so its bound is that of the problem itself.</remarks>
internal static class StockCutter
{
    // Ways to fill a length that are listed at most; above it the first fit stands, and what it takes is only bounded by the length of all.
    private const int MostWays = 4_000;

    // Work units of the solver: far above what a die's handful of different pieces takes.
    private const double MostWork = 4;

    // Sums of lengths that differ by less are alike, mm.
    private const double Same = 1e-6;

    /// <summary>The plan, or null where no length of stock is stated or a piece is longer than it.</summary>
    /// <param name="strips">The pieces of one die.</param>
    /// <param name="dies">Dies of this kind.</param>
    /// <param name="stockMm">A length of stock, mm, or null.</param>
    /// <param name="lossMm">Lost at each cut, mm.</param>
    public static RuleStock? Of(IReadOnlyList<RuleStrip> strips, int dies, double? stockMm, double lossMm)
    {
        if (stockMm is not { } stock || strips.Count == 0 || strips.Any(s => s.BlankMm > stock + Same))
        {
            return null;
        }

        int[] order = [.. Enumerable.Range(0, strips.Count).OrderByDescending(i => strips[i].BlankMm)];
        Question question = new()
        {
            Lengths = [.. order.Select(i => strips[i].BlankMm + lossMm)],
            Wanted = [.. order.Select(i => strips[i].Count * dies)],
            Room = stock + lossMm,
        };
        (List<(int[] Way, int Times)> cuts, int bound) = Solve(question);
        return new RuleStock
        {
            LengthMm = stock,
            CutLossMm = lossMm,
            Bound = bound,
            Cuts = [.. cuts.Select(c => new StockCut
            {
                Times = c.Times,
                Pieces = [.. c.Way.Select((count, i) => (order[i], count)).Where(p => p.count > 0)],
                OffcutMm = Math.Max(0, stock - question.Used(c.Way)),
            })],
        };
    }

    private static (List<(int[] Way, int Times)> Cuts, int Bound) Solve(Question question)
    {
        // Where the first fit takes no more than the length of all pieces wants, nothing is left to prove.
        int least = (int)Math.Ceiling((question.Used(question.Wanted) / question.Room) - Same);
        List<(int[] Way, int Times)> fit = FirstFit(question);
        if (fit.Count == least || Ways(question) is not { Count: <= MostWays } ways)
        {
            return (question.Exact(fit), least);
        }

        CpModel model = new();
        IntVar[] times = [.. ways.Select(_ => model.NewIntVar(0, question.Wanted.Sum(), string.Empty))];
        for (int i = 0; i < question.Lengths.Length; i++)
        {
            int piece = i;
            model.Add(LinearExpr.WeightedSum(times, ways.Select(w => (long)w[piece])) >= question.Wanted[piece]);
        }

        model.Minimize(LinearExpr.Sum(times));
        CpSolver solver = new()
        {
            StringParameters = FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{MostWork}"),
        };
        if (solver.Solve(model) is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return (question.Exact(fit), least);
        }

        List<(int[] Way, int Times)> taken =
        [
            .. ways.Zip(times, (way, time) => (way, (int)solver.Value(time))).Where(w => w.Item2 > 0),
        ];
        return (question.Exact(taken), Math.Max(least, (int)Math.Ceiling(solver.BestObjectiveBound - Same)));
    }

    // Every way to fill a length into which no further piece goes, at most one more than are allowed.
    private static List<int[]> Ways(Question question)
    {
        List<int[]> ways = [];
        int[] way = new int[question.Lengths.Length];
        void Fill(int piece, double room)
        {
            if (ways.Count > MostWays)
            {
                return;
            }

            int most = Math.Min(question.Wanted[piece], (int)Math.Floor((room + Same) / question.Lengths[piece]));
            if (piece == question.Lengths.Length - 1)
            {
                way[piece] = most;
                ways.Add([.. way]);
                way[piece] = 0;
                return;
            }

            for (int count = most; count >= 0; count--)
            {
                way[piece] = count;
                Fill(piece + 1, room - (count * question.Lengths[piece]));
            }

            way[piece] = 0;
        }

        Fill(0, question.Room);
        return ways;
    }

    // Longest first, each into the first length that has room.
    private static List<(int[] Way, int Times)> FirstFit(Question question)
    {
        List<(int[] Way, double Left)> open = [];
        for (int piece = 0; piece < question.Lengths.Length; piece++)
        {
            for (int n = 0; n < question.Wanted[piece]; n++)
            {
                int at = open.FindIndex(o => o.Left >= question.Lengths[piece] - Same);
                if (at < 0)
                {
                    open.Add((new int[question.Lengths.Length], question.Room));
                    at = open.Count - 1;
                }

                open[at].Way[piece]++;
                open[at] = (open[at].Way, open[at].Left - question.Lengths[piece]);
            }
        }

        return [.. open.Select(o => (o.Way, 1))];
    }

    // Lengths with their cut, how many are wanted, and the room of a length of stock with one cut more.
    private sealed record Question
    {
        public required double[] Lengths { get; init; }

        public required int[] Wanted { get; init; }

        public required double Room { get; init; }

        public double Used(int[] way) => way.Select((count, i) => count * Lengths[i]).Sum();

        /// <summary>The cuts with nothing cut beyond what is wanted; lengths that are alike are counted together.</summary>
        public List<(int[] Way, int Times)> Exact(List<(int[] Way, int Times)> cuts)
        {
            int[] left = [.. Wanted];
            List<(int[] Way, int Times)> exact = [];
            foreach (int[] way in cuts.SelectMany(c => Enumerable.Repeat(c.Way, c.Times)))
            {
                int[] taken = [.. way.Select((count, i) => Math.Min(count, left[i]))];
                left = [.. left.Select((count, i) => count - taken[i])];
                int same = exact.FindIndex(e => e.Way.SequenceEqual(taken));
                if (same >= 0)
                {
                    exact[same] = (taken, exact[same].Times + 1);
                }
                else if (taken.Any(count => count > 0))
                {
                    exact.Add((taken, 1));
                }
            }

            return exact;
        }
    }
}
