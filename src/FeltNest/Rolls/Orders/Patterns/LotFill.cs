namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Cuts portions of orders from the rolls of one lot, roll after roll: each time the roll and the pieces that give most for their
/// cost.</summary>
/// <remarks>What a strike is worth comes from the master, so that work which fills a roll to its end goes first; a factor for each order
/// moves it a little, and other factors give other plans.</remarks>
internal sealed class LotFill
{
    // About how long a step of the tables is, m: what is rounded away stays on the roll.
    private const double UsualStepM = 0.003;
    private readonly OrderRequest question;
    private readonly IReadOnlyList<(FeltKind[] Kinds, PatternValues Values)> groups;
    private readonly RollTable[] tables;

    /// <summary>A filler of one lot.</summary>
    /// <param name="question">The question.</param>
    /// <param name="groups">Kinds of the lot that are cut alike, with what their strikes are worth.</param>
    public LotFill(OrderRequest question, IReadOnlyList<(FeltKind[] Kinds, PatternValues Values)> groups)
    {
        (this.question, this.groups) = (question, groups);
        tables = [.. groups.Select(g => Table(question, g.Kinds))];
    }

    /// <summary>The cuts, the balls they leave short, and what they cost.</summary>
    /// <param name="portions">Portions of orders, each order once.</param>
    /// <param name="weights">Weights of orders and rolls.</param>
    public (IReadOnlyList<LotCut> Cuts, int Short, double Cost) Run(IReadOnlyList<LotPortion> portions, FillWeights weights)
    {
        Dictionary<int, int> wanted = portions.ToDictionary(p => p.Order, p => p.Balls);
        int[][] left = [.. groups.Select(g => g.Kinds.Select(k => k.Rolls.Count).ToArray())];
        bool[] filled = new bool[groups.Count];
        List<LotCut> cuts = [];
        double cost = 0;
        while (wanted.Values.Any(balls => balls > 0) && Next(filled, left, wanted, weights) is { } next)
        {
            FeltKind kind = groups[next.Group].Kinds[next.Kind];
            StockRoll roll = kind.Rolls[kind.Rolls.Count - left[next.Group][next.Kind]--];
            double cut = 0;
            foreach ((RollWish wish, int strikes) in next.Pieces)
            {
                int needed = Math.Min(strikes, MostOf(wanted[wish.Order], wish.Least, kind, wish.Die));
                wanted[wish.Order] -= question.Dies[wish.Die].Shape.BallsOf(needed, question.GoodShare(roll, question.Dies[wish.Die]));
                cuts.Add(new LotCut { Roll = roll, Order = wish.Order, Die = wish.Die, Strikes = needed });
                cut += question.Dies[wish.Die].Shape.MetresOf(needed);
                cost += needed * (double)question.Rules.PerStrike;
            }

            cost += FeltCost(kind, cut);
        }

        return (cuts, wanted.Values.Sum(balls => Math.Max(0, balls)), cost);
    }

    /// <summary>What so much felt cut from a roll costs, what goes back to stock taken off.</summary>
    public static double FeltCost(FeltKind kind, double cutM) =>
        cutM <= kind.KeepingM + 1e-9 ? Math.Min(kind.WholeCost, kind.BeginCost + (cutM * kind.MetreCost)) : kind.WholeCost;

    // The roll that gives most for its cost.
    private (int Group, int Kind, List<(RollWish Wish, int Strikes)> Pieces)? Next(
        bool[] filled, int[][] left, Dictionary<int, int> wanted, FillWeights weights)
    {
        (int Group, int Kind, List<(RollWish Wish, int Strikes)> Pieces)? best = null;
        double most = 0;
        for (int g = 0; g < groups.Count; g++)
        {
            bool fresh = !filled[g];
            for (int k = 0; k < left[g].Length; k++)
            {
                if (left[g][k] == 0)
                {
                    continue;
                }

                Ready(filled, g, wanted, weights);
                (List<(RollWish Wish, int Strikes)> pieces, double share) = Taken(tables[g], groups[g].Kinds[k]);
                share *= weights.Rolls(groups[g].Kinds[k].Index);
                if (share <= most)
                {
                    continue;
                }

                if (!fresh && pieces.Exists(p => p.Strikes > MostOf(wanted[p.Wish.Order], p.Wish.Least, groups[g].Kinds[k], p.Wish.Die)))
                {
                    // The orders want less by now: the table is made anew, and all of its kinds are looked at again.
                    (filled[g], fresh, k) = (false, true, -1);
                    best = best is { } had && had.Group == g ? null : best;
                    most = best is null ? 0 : most;
                    continue;
                }

                (best, most) = ((g, k, pieces), share);
            }
        }

        return best is { Pieces.Count: > 0 } ? best : null;
    }

    private void Ready(bool[] filled, int group, Dictionary<int, int> wanted, FillWeights weights)
    {
        if (!filled[group])
        {
            FillTable(group, wanted, weights);
            filled[group] = true;
        }
    }

    // The pieces worth most on a roll, and the metres of feed they give for its cost.
    private static (List<(RollWish Wish, int Strikes)> Pieces, double Share) Taken(RollTable table, FeltKind kind)
    {
        int at = table.At(kind.ClearM);
        double cost = kind.WholeCost;
        if (kind.KeepingM > 0)
        {
            int top = table.TopAt(table.At(kind.KeepingM), kind.MetreCost);
            double kept = kind.BeginCost + (table.MetresAt(top) * kind.MetreCost);
            if (table.GainAt(top) * cost >= table.GainAt(at) * kept)
            {
                (at, cost) = (top, kept);
            }
        }

        List<(RollWish Wish, int Strikes)> pieces = [.. table.Pieces(at)];
        return (pieces, pieces.Sum(p => p.Strikes * p.Wish.FeedM) / Math.Max(cost, 1e-9));
    }

    private void FillTable(int group, Dictionary<int, int> wanted, FillWeights weights)
    {
        (FeltKind[] kinds, PatternValues values) = groups[group];
        RollTable table = tables[group];
        table.Clear();
        StockRoll roll = kinds[0].Roll;
        double metre = kinds[0].WholeCost / kinds[0].ClearM;
        foreach ((int o, int balls) in wanted.Where(w => w.Value > 0).OrderBy(w => w.Key))
        {
            CoverOrder order = question.Orders[o];
            for (int i = 0; i < kinds[0].Dies.Count; i++)
            {
                CutDie die = question.Dies[kinds[0].Dies[i].Die];
                if (!question.Fits(order, roll, die))
                {
                    continue;
                }

                int least = question.LeastStrikes(order, roll, die);
                table.Add(new RollWish
                {
                    Order = o,
                    Die = kinds[0].Dies[i].Die,
                    FeedM = die.Shape.FeedMm / 1000,
                    OverM = die.Shape.OverMm / 1000,
                    Least = least,
                    Most = MostOf(balls, least, kinds[0], kinds[0].Dies[i].Die),
                    StrikeValue = values.Strike[i] * weights.Orders[o],
                    // Another piece would take its reach, and on average half a strike for balls that whole strikes leave.
                    WholeValue = weights.Whole * metre * (Math.Max(0, die.Shape.OverMm) + (die.Shape.FeedMm / 2)) / 1000,
                });
            }
        }
    }

    private static RollTable Table(OrderRequest question, FeltKind[] kinds)
    {
        double longest = kinds.Max(k => k.ClearM);
        double[] feeds = [.. kinds[0].Dies.Select(d => question.Dies[d.Die].Shape.FeedMm / 1000)];
        return new RollTable(longest, LengthStep.Of(feeds, longest, up: true, UsualStepM));
    }

    private int MostOf(int balls, int least, FeltKind kind, int die) =>
        balls <= 0 ? 0 : Math.Max(least, question.StrikesFor(balls, kind.Roll, question.Dies[die]));
}
