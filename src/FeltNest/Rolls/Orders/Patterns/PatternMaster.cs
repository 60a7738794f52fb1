namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>The orders against patterns of rolls, as a linear program that no plan can beat.</summary>
/// <remarks>
/// <para>Pieces of a ball in a lot are interchangeable, so patterns count strikes of a die and not of an order (P. Gilmore and R. Gomory,
/// Operations Research 9 (1961) 849-859, 11 (1963) 863-888). Of each ball and lot three rows say what its orders need there: balls; feed
/// of whole strikes; pieces. An order of one lot chooses one lot; the others draw from a pool of their ball and felt.</para>
/// <para>Every plan gives a solution of no greater cost, so what the program cannot beat no plan can. An order left short by at least a
/// ball needs no more than its share of feed; being short is a column between one ball and all of them.</para>
/// </remarks>
internal sealed class PatternMaster
{
    private readonly OrderRequest question;
    private readonly FeltKinds felt;
    private readonly double shortPrice;
    private readonly double costShare;
    private readonly string[] balls;
    private readonly Dictionary<(int Ball, int Lot), (int Balls, int Feed, int Pieces)> needs = [];
    private readonly Dictionary<(int Ball, int Lot), List<(DateOnly Before, int Row)>> early = [];
    private readonly Dictionary<(int Ball, string? Felt), (int Balls, int Feed, int Pieces)> pools = [];
    private readonly MasterDies dies;
    private readonly int[] supply;
    private readonly Dictionary<string, (int Row, int Rolls)> begun = [];
    private readonly List<(int Order, int Lot, int Column)> lots = [];
    private readonly List<(string Ball, string? Felt, int Lot, int Column)> drawn = [];
    private readonly List<(RollPattern Pattern, int Column)> patterns = [];

    /// <summary>The master without patterns.</summary>
    /// <param name="question">The question.</param>
    /// <param name="felt">Its felt.</param>
    /// <param name="shortPrice">What a ball short costs.</param>
    /// <param name="costShare">1 where money counts, 0 where balls short alone do.</param>
    public PatternMaster(OrderRequest question, FeltKinds felt, double shortPrice, double costShare)
    {
        (this.question, this.felt, this.shortPrice, this.costShare) = (question, felt, shortPrice, costShare);
        balls = [.. question.Orders.Select(o => o.Ball).Distinct()];
        supply = [.. felt.All.Select(kind => Rows.Row(double.NegativeInfinity, kind.Rolls.Count))];
        dies = new MasterDies(question, felt, Rows, costShare);
        AddLots();
        AddFelts();
        for (int o = 0; o < question.Orders.Count; o++)
        {
            Add(o);
        }
    }

    /// <summary>1 where money counts, 0 where balls short alone do.</summary>
    public double CostShare => costShare;

    /// <summary>Rows and columns.</summary>
    public MasterRows Rows { get; } = new();

    /// <summary>Patterns and their columns.</summary>
    public IReadOnlyList<(RollPattern Pattern, int Column)> Patterns => patterns;

    /// <summary>Rows that keep the rolls of each kind.</summary>
    public IReadOnlyList<int> Supply => supply;

    /// <summary>Columns that say which lot an order of one lot takes.</summary>
    public IReadOnlyList<(int Order, int Lot, int Column)> Lots => lots;

    /// <summary>Columns that say how many balls of a pool are drawn from a lot.</summary>
    public IReadOnlyList<(string Ball, string? Felt, int Lot, int Column)> Drawn => drawn;

    /// <summary>Adds a pattern.</summary>
    public void Add(RollPattern pattern)
    {
        FeltKind kind = pattern.Kind;
        List<(int Row, double Factor)> entries = [(supply[kind.Index], 1)];
        if (begun.TryGetValue(kind.Roll.Felt, out (int Row, int Rolls) felts))
        {
            entries.Add((felts.Row, 1));
        }

        foreach (IGrouping<int, int> ball in Enumerable.Range(0, kind.Dies.Count).Where(i => pattern.Strikes[i] > 0)
            .GroupBy(i => BallOf(kind.Dies[i].Die)))
        {
            (int ballsRow, int feedRow, int piecesRow) = needs[(ball.Key, kind.Lot)];
            double made = ball.Sum(i => pattern.Strikes[i] * PerStrike(kind, i));
            entries.Add((ballsRow, made));
            entries.Add((feedRow, ball.Sum(i => pattern.Strikes[i] * FeedM(kind.Dies[i].Die))));
            entries.Add((piecesRow, ball.Sum(i => pattern.Pieces[i])));
            entries.AddRange(EarlyRows(ball.Key, kind).Select(row => (row, made)));
        }

        entries.AddRange(dies.Entries(pattern));
        patterns.Add((pattern, Rows.Column(pattern.Cost * costShare, double.PositiveInfinity, [.. entries])));
    }

    /// <summary>What the master pays for patterns of a kind of roll.</summary>
    public (PatternValues Values, double RollPrice) ValuesOf(FeltKind kind, IReadOnlyList<double> duals)
    {
        double[] strike = new double[kind.Dies.Count];
        double[] piece = new double[kind.Dies.Count];
        for (int i = 0; i < strike.Length; i++)
        {
            int die = kind.Dies[i].Die;
            int ball = BallOf(die);
            (int ballsRow, int feedRow, int piecesRow) = needs[(ball, kind.Lot)];
            double perBall = duals[ballsRow] + EarlyRows(ball, kind).Sum(row => duals[row]);
            strike[i] = (perBall * PerStrike(kind, i)) + (duals[feedRow] * FeedM(die)) - ((double)question.Rules.PerStrike * costShare);
            strike[i] += dies.Price(die, duals);
            piece[i] = duals[piecesRow];
        }

        double roll = begun.TryGetValue(kind.Roll.Felt, out (int Row, int Rolls) felts) ? duals[felts.Row] : 0;
        return (new PatternValues { Strike = strike, Piece = piece }, -duals[supply[kind.Index]] - roll);
    }

    private int BallOf(int die) => Array.IndexOf(balls, question.Dies[die].Ball);

    private double FeedM(int die) => question.Dies[die].Shape.FeedMm / 1000;

    private double PerStrike(FeltKind kind, int i) => question.Dies[kind.Dies[i].Die].Shape.BallsPerStrike(kind.Dies[i].Share);

    private IEnumerable<int> EarlyRows(int ball, FeltKind kind) =>
        early[(ball, kind.Lot)].Where(e => kind.There < e.Before).Select(e => e.Row);

    private void AddLots()
    {
        foreach (FeltKind kind in felt.All)
        {
            foreach (int ball in kind.Dies.Select(d => BallOf(d.Die)).Distinct())
            {
                if (!needs.ContainsKey((ball, kind.Lot)))
                {
                    needs[(ball, kind.Lot)] = (AtLeast(0), AtLeast(0), AtLeast(0));
                    early[(ball, kind.Lot)] =
                    [
                        .. felt.All
                            .Where(k => question.InTime && k.Lot == kind.Lot && k.There > question.Rules.Start)
                            .Select(k => k.There)
                            .Distinct()
                            .Order().Select(day => (day, AtLeast(0))),
                    ];
                }
            }
        }

        int AtLeast(double low) => Rows.Row(low, double.PositiveInfinity);
    }

    // Orders that want one felt begin so many of its rolls at the least: the longest ones hold no more.
    private void AddFelts()
    {
        foreach (IGrouping<string?, CoverOrder> orders in question.Orders.GroupBy(o => o.Felt).Where(g => g.Key is not null))
        {
            double needed = orders.Sum(LeastM);
            int rolls = 0;
            foreach (double longest in felt.All
                .Where(k => k.Roll.Felt == orders.Key)
                .SelectMany(k => Enumerable.Repeat(k.ClearM, k.Rolls.Count))
                .OrderDescending())
            {
                if (needed <= 1e-9)
                {
                    break;
                }

                (needed, rolls) = (needed - longest, rolls + 1);
            }

            if (rolls > 0)
            {
                begun[orders.Key!] = (Rows.Row(rolls, double.PositiveInfinity), rolls);
            }
        }
    }

    // What its strikes and one piece take, by its best lot.
    private double LeastM(CoverOrder order)
    {
        int ball = Array.IndexOf(balls, order.Ball);
        int[] reach = [.. LotsOf(ball, order.Felt)];
        double over = question.Dies.Where(d => d.Ball == order.Ball).Select(d => d.Shape.OverMm / 1000).DefaultIfEmpty(0).Min();
        return reach.Length == 0 ? 0 : (Packed(ball) * Least(order, ball, reach).Feed) + Math.Max(0, over);
    }

    private IEnumerable<int> LotsOf(int ball, string? name) =>
        needs.Keys.Where(n => n.Ball == ball && (name ?? felt.Lots[n.Lot].Felt) == felt.Lots[n.Lot].Felt).Select(n => n.Lot);

    // Least share of its feed that a strike takes of a roll: strikes that are shorter than their feed leave felt behind the last one.
    private double Packed(int ball) => question.Dies.Where(d => d.Ball == balls[ball])
        .Min(d => Math.Min(1, (d.Shape.LengthMm + d.Shape.GapMm) / d.Shape.FeedMm));

    private void Add(int place)
    {
        CoverOrder order = question.Orders[place];
        int ball = Array.IndexOf(balls, order.Ball);
        if (order.Balls == 0)
        {
            return;
        }

        // A pool draws from every lot of its felt, whatever one of its orders is held to.
        (int ballsRow, int feedRow, int piecesRow) = Pool(ball, order.Felt);
        int[] reach = [.. LotsOf(ball, order.Felt).Where(lot => felt.Reaches(order, lot))];
        double loose = reach.Length == 0 ? 0 : Dies(ball, reach).Min(d => d.FeedM / d.Balls) * (order.Balls - 1);
        if (order.OneLot)
        {
            OneLot(place, ball, reach, (ballsRow, feedRow, loose));
            return;
        }

        (double whole, double pieces) = Least(order, ball, reach);
        Rows.Move(ballsRow, order.Balls);
        Rows.Move(feedRow, whole);
        Rows.Move(piecesRow, pieces);
        Lack(place, 1, (ballsRow, 1), (feedRow, whole - Math.Min(whole, loose)), (piecesRow, pieces));
        Lack(place, order.Balls, (ballsRow, order.Balls), (feedRow, whole), (piecesRow, pieces));
    }

    // An order of one lot chooses its lot, or is short and draws what it gets from the pool.
    private void OneLot(int place, int ball, int[] reach, (int Balls, int Feed, double Part) pool)
    {
        CoverOrder order = question.Orders[place];
        int one = Rows.Row(1, 1);
        foreach (int lot in reach)
        {
            (int lotBalls, int lotFeed, int lotPieces) = needs[(ball, lot)];
            (double feed, double pieces) = Least(order, ball, [lot]);
            int column = Rows.Column(
                0, 1,
                [
                    (one, 1), (lotBalls, -order.Balls), (lotFeed, -feed), (lotPieces, -pieces),
                    .. early[(ball, lot)].Where(e => order.Due < e.Before).Select(e => (e.Row, (double)-order.Balls)),
                ]);
            lots.Add((place, lot, column));
        }

        Lack(place, 1, (one, 1), (pool.Balls, -(order.Balls - 1)), (pool.Feed, -pool.Part));
        Lack(place, order.Balls, (one, 1));
    }

    // An order that is short may need no roll.
    private void Lack(int order, double lost, params (int Row, double Factor)[] entries)
    {
        (int Row, double Factor)[] rolls = question.Orders[order].Felt is { } name
            && begun.TryGetValue(name, out (int Row, int Rolls) felts)
            ? [(felts.Row, felts.Rolls)]
            : [];
        Rows.Column(lost * shortPrice, 1, [.. entries, .. rolls]);
    }

    // What an order takes at least in some lots.
    private (double Feed, double Pieces) Least(CoverOrder order, int ball, int[] reach)
    {
        if (reach.Length == 0)
        {
            return (0, 0);
        }

        double feed = OrderNeed.LeastFeedM(order.Balls, Dies(ball, reach));
        double longest = felt.All.Where(k => reach.Contains(k.Lot)).Max(k => k.ClearM);
        return (feed, Math.Max(1, Math.Ceiling((Packed(ball) * feed / longest) - 1e-9)));
    }

    // Each die of a ball once, with the best share any roll of the lots gives it.
    private List<(double Balls, double FeedM)> Dies(int ball, int[] reach) =>
    [
        .. felt.All.Where(k => reach.Contains(k.Lot))
            .SelectMany(k => Enumerable.Range(0, k.Dies.Count).Select(i => (k.Dies[i].Die, Balls: PerStrike(k, i))))
            .Where(d => BallOf(d.Die) == ball)
            .GroupBy(d => d.Die)
            .OrderBy(g => g.Key)
            .Select(g => (g.Max(d => d.Balls), FeedM(g.Key))),
    ];

    private (int Balls, int Feed, int Pieces) Pool(int ball, string? name)
    {
        if (pools.TryGetValue((ball, name), out (int Balls, int Feed, int Pieces) found))
        {
            return found;
        }

        (int Balls, int Feed, int Pieces) rows =
            (Rows.Row(0, double.PositiveInfinity), Rows.Row(0, double.PositiveInfinity), Rows.Row(0, double.PositiveInfinity));
        pools[(ball, name)] = rows;
        double packed = LotsOf(ball, name).Any() ? Packed(ball) : 1;
        foreach (int lot in LotsOf(ball, name).ToArray())
        {
            (int lotBalls, int lotFeed, int lotPieces) = needs[(ball, lot)];
            // No lot gives more than all its felt.
            drawn.Add((balls[ball], name, lot, Rows.Column(0, MostBalls(ball, lot) / packed, (rows.Balls, 1), (lotBalls, -1))));
            Rows.Column(0, felt.All.Where(k => k.Lot == lot).Sum(k => k.ClearM * k.Rolls.Count) / packed, (rows.Feed, 1), (lotFeed, -1));
            Rows.Column(0, 1e6, (rows.Pieces, 1), (lotPieces, -1));
        }

        return rows;
    }

    private double MostBalls(int ball, int lot) => felt.All.Where(k => k.Lot == lot).Sum(k => k.Rolls.Count * Enumerable
        .Range(0, k.Dies.Count)
        .Where(i => BallOf(k.Dies[i].Die) == ball)
        .Select(i => k.ClearM / FeedM(k.Dies[i].Die) * PerStrike(k, i))
        .DefaultIfEmpty(0).Max());
}
