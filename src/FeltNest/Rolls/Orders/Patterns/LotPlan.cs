namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>The cuts of all lots, bettered one or two lots at a time: a lot is filled again by other weights, or an order goes from one lot
/// to another.</summary>
/// <remarks>Large neighbourhood search after P. Shaw, "Using constraint programming and local search methods to solve vehicle routing
/// problems", CP 1998 (from memory).</remarks>
internal sealed class LotPlan
{
    // What a ball short counts, as a multiple of what a ball costs on average: others may still find room for it at some cost.
    private const double ShortFactor = 2;

    // Money this near is equal.
    private const double Same = 1e-6;

    // Moves that are worked out side by side; more of them than cores, so that the number of cores changes nothing.
    private const int AtOnce = 4;
    private readonly OrderRequest question;
    private readonly FeltKinds felt;
    private readonly LotFill[] fills;
    private readonly LotState[] lots;
    private readonly LotMaster[] masters;
    private readonly Dictionary<string, FeltKind> kinds;
    private readonly int[][] reach;
    private readonly Random random = new(1);
    private readonly double ballPrice;
    private readonly double metrePrice;

    /// <summary>Fills every lot once.</summary>
    public LotPlan(
        OrderRequest question, FeltKinds felt, PatternMaster master, IReadOnlyList<double> duals, IEnumerable<LotPortion> portions)
    {
        (this.question, this.felt) = (question, felt);
        ILookup<int, FeltKind[]> alike = felt.CutAlike.ToLookup(k => k[0].Lot);
        fills = [.. felt.Lots.Select((_, lot) => new LotFill(question, [.. alike[lot].Select(kinds => (kinds, Worth(kinds[0])))]))];
        masters = [.. fills.Select(_ => new LotMaster(question))];
        kinds = felt.All.SelectMany(kind => kind.Rolls.Select(roll => (roll.Name, kind))).ToDictionary(r => r.Name, r => r.kind);
        reach =
        [
            .. question.Orders.Select(order => felt.All
                .Where(k => k.Dies.Any(d => question.Fits(order, k.Roll, question.Dies[d.Die]))).Select(k => k.Lot).Distinct().ToArray()),
        ];
        metrePrice = felt.All.Max(k => k.WholeCost / k.ClearM);
        ballPrice = ShortFactor * felt.All.Average(k => k.Dies.Average(d => k.WholeCost / k.ClearM
            * question.Dies[d.Die].Shape.FeedMm / 1000 / question.Dies[d.Die].Shape.BallsPerStrike(d.Share)));
        ILookup<int, LotPortion> byLot = portions.ToLookup(p => p.Lot);
        lots = new LotState[fills.Length];
        Parallel.For(0, lots.Length, lot => lots[lot] = Filled(lot, [.. byLot[lot]], null));

        PatternValues Worth(FeltKind kind)
        {
            PatternValues values = master.ValuesOf(kind, duals).Values;
            double metre = kind.WholeCost / kind.ClearM;
            // Where the master pays nothing for an order's balls, it pays no less than a share of their felt.
            return values with
            {
                Strike =
                [
                    .. values.Strike.Select((v, i) =>
                        Math.Max(v, (0.1 * metre * question.Dies[kind.Dies[i].Die].Shape.FeedMm / 1000) + 1e-6)),
                ],
            };
        }
    }

    /// <summary>All cuts.</summary>
    public IEnumerable<LotCut> Cuts => lots.SelectMany(l => l.Cuts);

    /// <summary>Tries so many moves, and keeps those that are better.</summary>
    /// <returns>Whether any was.</returns>
    public bool Improve(int moves, CancellationToken stop)
    {
        bool better = false;
        for (int done = 0; done < moves && !stop.IsCancellationRequested; done += AtOnce)
        {
            LotMove[] some = Drawn();
            (LotState First, LotState Second)[] made = new (LotState, LotState)[some.Length];
            Parallel.For(0, some.Length, i => made[i] = Tried(some[i]));
            for (int i = 0; i < some.Length; i++)
            {
                (int first, int second) = (some[i].First, some[i].Second);
                masters[first].Add(made[i].First.Cuts, kinds);
                masters[second].Add(made[i].Second.Cuts, kinds);
                double above = made[i].First.Above(lots[first], ballPrice, metrePrice);
                above += first == second ? 0 : made[i].Second.Above(lots[second], ballPrice, metrePrice);
                if (above < -Same)
                {
                    (lots[first], lots[second]) = made[i];
                    better = true;
                }
            }
        }

        return better;
    }

    /// <summary>Chooses anew among all cuts that were tried, lot by lot.</summary>
    /// <returns>Whether any lot got better.</returns>
    public bool Choose(CancellationToken stop)
    {
        LotState[] made = new LotState[lots.Length];
        Parallel.For(0, lots.Length, lot =>
        {
            LotState had = lots[lot];
            masters[lot].Add(had.Cuts, kinds);
            made[lot] = had.Portions.Count > 0 && masters[lot].Best(had.Portions, ballPrice, stop) is { } best
                ? new LotState
                {
                    Portions = had.Portions,
                    Cuts = best.Cuts,
                    Short = best.Short,
                    ReserveShortM = ReserveShort(lot, had.Portions, best.Cuts),
                    Cost = best.Cost,
                }
                : had;
        });
        bool better = false;
        for (int lot = 0; lot < lots.Length; lot++)
        {
            if (made[lot].Above(lots[lot], ballPrice, metrePrice) < -Same)
            {
                lots[lot] = made[lot];
                better = true;
            }
        }

        return better;
    }

    // Moves that share no lot.
    private LotMove[] Drawn()
    {
        HashSet<int> taken = [];
        List<LotMove> moves = [];
        for (int i = 0; i < AtOnce; i++)
        {
            LotMove? move = Next();
            if (move is not null && !taken.Contains(move.First) && !taken.Contains(move.Second))
            {
                moves.Add(move);
                taken.Add(move.First);
                taken.Add(move.Second);
            }
        }

        return [.. moves];
    }

    private LotMove? Next()
    {
        int[] used = [.. Enumerable.Range(0, lots.Length).Where(l => lots[l].Portions.Count > 0)];
        int[] lacking = [.. used.Where(l => lots[l].Short > 0)];
        int[] from = lacking.Length > 0 && random.Next(2) == 0 ? lacking : used;
        if (from.Length == 0)
        {
            return null;
        }

        int lot = from[random.Next(from.Length)];
        LotPortion portion = lots[lot].Portions[random.Next(lots[lot].Portions.Count)];
        int[] others = [.. reach[portion.Order].Where(l => l != lot)];
        int seed = random.Next();
        if (others.Length == 0 || random.Next(3) == 0)
        {
            return new LotMove(lot, lots[lot].Portions, lot, lots[lot].Portions, seed);
        }

        int to = others[random.Next(others.Length)];
        LotPortion moved = Part(portion, lots[lot].Short) with { Lot = to };
        // Some of the moves send an order back for it.
        LotPortion? back = moved.Balls == portion.Balls && random.Next(2) == 0 ? Back(to, lot) : null;
        return new LotMove(
            lot, Changed(lots[lot].Portions, portion.Order, -moved.Balls, lot, back),
            to, Changed(lots[to].Portions, portion.Order, moved.Balls, to, back), seed);
    }

    // An order of one lot goes as a whole; another one may leave as many balls behind as its lot has felt for, or half.
    private LotPortion Part(LotPortion portion, int lacking)
    {
        if (question.Orders[portion.Order].OneLot)
        {
            return portion;
        }

        int kind = random.Next(4);
        int part = kind == 0 ? (portion.Balls + 1) / 2 : portion.Balls;
        return portion with { Balls = lacking > 0 && kind > 0 ? Math.Min(portion.Balls, lacking + random.Next(1 + (lacking / 4))) : part };
    }

    private LotPortion? Back(int lot, int to)
    {
        LotPortion[] fitting = [.. lots[lot].Portions.Where(p => reach[p.Order].Contains(to))];
        return fitting.Length == 0 ? null : fitting[random.Next(fitting.Length)] with { Lot = to };
    }

    // Portions of a lot with more or fewer balls of an order, and with the order that comes back, or without it.
    private static List<LotPortion> Changed(IReadOnlyList<LotPortion> portions, int order, int balls, int lot, LotPortion? back)
    {
        Dictionary<int, int> wanted = portions.ToDictionary(p => p.Order, p => p.Balls);
        wanted[order] = wanted.GetValueOrDefault(order) + balls;
        if (back is { } other)
        {
            wanted[other.Order] = wanted.GetValueOrDefault(other.Order) + (other.Lot == lot ? other.Balls : -other.Balls);
        }

        return
        [
            .. wanted.Where(w => w.Value > 0).OrderBy(w => w.Key).Select(w => new LotPortion { Order = w.Key, Lot = lot, Balls = w.Value }),
        ];
    }

    private (LotState First, LotState Second) Tried(LotMove move)
    {
        Random weights = new(move.Seed);
        LotState first = Filled(move.First, move.FirstPortions, weights);
        return (first, move.First == move.Second ? first : Filled(move.Second, move.SecondPortions, weights));
    }

    private LotState Filled(int lot, IReadOnlyList<LotPortion> portions, Random? weights)
    {
        FillWeights own = weights is null ? FillWeights.Even(portions) : FillWeights.Drawn(portions, weights);
        (IReadOnlyList<LotCut> cuts, int lacking, double cost) = fills[lot].Run(portions, own);
        return new LotState
        {
            Portions = portions,
            Cuts = cuts,
            Short = lacking,
            ReserveShortM = ReserveShort(lot, portions, cuts),
            Cost = cost,
        };
    }

    // Felt that orders of this lot want kept back and that is not left, m.
    private double ReserveShort(int lot, IReadOnlyList<LotPortion> portions, IReadOnlyList<LotCut> cuts)
    {
        double wanted = portions.Where(p => question.Orders[p.Order].OneLot && question.Orders[p.Order].ReserveBalls > 0)
            .Sum(p => question.Orders[p.Order].ReserveBalls / Math.Max(1e-9, MostPerMetre(lot, question.Orders[p.Order])));
        if (wanted == 0)
        {
            return 0;
        }

        double left = felt.All.Where(k => k.Lot == lot).Sum(k => k.ClearM * k.Rolls.Count)
            - cuts.Sum(c => question.Dies[c.Die].Shape.MetresOf(c.Strikes));
        return Math.Max(0, wanted - left);
    }

    private double MostPerMetre(int lot, CoverOrder order) =>
        felt.All.Where(k => k.Lot == lot).Max(k => Model.OrderRows.BallsPerMetre(question, order, k.Roll));
}
