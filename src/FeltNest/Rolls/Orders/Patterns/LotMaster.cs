using FeltNest.Rolls.Orders.Model.Mixed;

namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Chooses among all cuts of a lot's rolls that were ever tried: a whole-number model over them.</summary>
/// <remarks>A restricted master: R. Sadykov and others, "Primal heuristics for branch and price", INFORMS Journal on Computing 31 (2019).
/// Its bound holds for these cuts alone and is not used.</remarks>
internal sealed class LotMaster(OrderRequest question)
{
    // Cuts kept of one lot: above it the search in whole numbers gains less than it costs.
    private const int MostCuts = 1500;

    // Share of the nodes that one unit of effort allows.
    private const double Share = 0.2;
    private readonly Dictionary<string, CutPattern> known = [];

    /// <summary>Takes the cuts of a fill.</summary>
    public void Add(IEnumerable<LotCut> cuts, IReadOnlyDictionary<string, FeltKind> kinds)
    {
        foreach (IGrouping<string, LotCut> roll in cuts.GroupBy(c => c.Roll.Name))
        {
            if (known.Count == MostCuts)
            {
                return;
            }

            FeltKind kind = kinds[roll.Key];
            double cut = roll.Sum(c => question.Dies[c.Die].Shape.MetresOf(c.Strikes));
            double cost = LotFill.FeltCost(kind, cut) + (roll.Sum(c => c.Strikes) * (double)question.Rules.PerStrike);
            CutPattern pattern = new(kind, [.. roll.Select(c => (c.Order, c.Die, c.Strikes)).Order()], cost);
            known.TryAdd(pattern.Key, pattern);
        }
    }

    /// <summary>The best choice for some portions; null where none was found.</summary>
    /// <param name="portions">Portions of orders.</param>
    /// <param name="ballPrice">What a ball short counts.</param>
    /// <param name="stop">Ends the search.</param>
    public (IReadOnlyList<LotCut> Cuts, int Short, double Cost)? Best(
        IReadOnlyList<LotPortion> portions, double ballPrice, CancellationToken stop)
    {
        HashSet<int> wanted = [.. portions.Select(p => p.Order)];
        CutPattern[] usable = [.. known.Values.Where(p => p.Pieces.All(piece => wanted.Contains(piece.Order)))];
        if (usable.Length == 0 || stop.IsCancellationRequested)
        {
            return null;
        }

        using MixedModel model = new(1);
        Unknown[] counts = [.. usable.Select(p => model.Whole(0, p.Kind.Rolls.Count))];
        LinearSum aim = new();
        foreach (LotPortion portion in portions)
        {
            Unknown lacking = model.Whole(0, portion.Balls);
            LinearSum balls = new LinearSum().Add(lacking);
            aim.Add(lacking, ballPrice);
            for (int i = 0; i < usable.Length; i++)
            {
                int given = usable[i].Pieces.Where(p => p.Order == portion.Order).Sum(p => Balls(usable[i].Kind, p.Die, p.Strikes));
                balls = given > 0 ? balls.Add(counts[i], given) : balls;
            }

            model.AtLeast(balls, portion.Balls);
        }

        Rolls(model, usable, counts, aim);
        return model.Minimise(aim, Share, stop) is null ? null : Read(portions, usable, [.. counts.Select(model.WholeOf)]);
    }

    // No more rolls of a kind than there are.
    private static void Rolls(MixedModel model, CutPattern[] usable, Unknown[] counts, LinearSum aim)
    {
        foreach (IGrouping<FeltKind, int> kind in Enumerable.Range(0, usable.Length).GroupBy(i => usable[i].Kind))
        {
            LinearSum rolls = new();
            foreach (int i in kind)
            {
                rolls.Add(counts[i]);
                aim.Add(counts[i], usable[i].Cost);
            }

            model.AtMost(rolls, kind.Key.Rolls.Count);
        }
    }

    private int Balls(FeltKind kind, int die, int strikes) =>
        question.Dies[die].Shape.BallsOf(strikes, question.GoodShare(kind.Roll, question.Dies[die]));

    private (IReadOnlyList<LotCut> Cuts, int Short, double Cost) Read(IReadOnlyList<LotPortion> portions, CutPattern[] usable, int[] counts)
    {
        List<LotCut> cuts = [];
        Dictionary<FeltKind, int> begun = [];
        Dictionary<int, int> left = portions.ToDictionary(p => p.Order, p => p.Balls);
        double cost = 0;
        for (int i = 0; i < usable.Length; i++)
        {
            for (int n = 0; n < counts[i]; n++)
            {
                FeltKind kind = usable[i].Kind;
                int roll = begun.GetValueOrDefault(kind);
                begun[kind] = roll + 1;
                cost += usable[i].Cost;
                foreach ((int order, int die, int strikes) in usable[i].Pieces)
                {
                    cuts.Add(new LotCut { Roll = kind.Rolls[roll], Order = order, Die = die, Strikes = strikes });
                    left[order] -= Balls(kind, die, strikes);
                }
            }
        }

        return (cuts, left.Values.Sum(balls => Math.Max(0, balls)), cost);
    }
}
