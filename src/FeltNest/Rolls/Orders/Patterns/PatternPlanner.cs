using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Orders.Search;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Plans many orders over many rolls: patterns of rolls are found for a linear master, whose bound is kept; lots are filled by its
/// prices; then lots are bettered one or two at a time.</summary>
internal sealed class PatternPlanner
{
    // Rounds of pricing for one unit of effort, and how near bound and master must come to end it.
    private const int RoundsPerEffort = 20;
    private const int RoundsTold = 10;
    private const double BoundGap = 2e-5;

    // Moves for one unit of effort: so many, and some for each order.
    private const int MovesPerEffort = 60;
    private const double MovesPerOrder = 1.5;

    // Steps in which moves are told and handed over.
    private const int Steps = 12;

    // All reserves together weigh less than a ball, and cost nothing here.
    private const double AllReserves = 0.999_999;
    private readonly OrderRequest question;
    private readonly BestPlan best;
    private readonly int effort;
    private readonly double shortPrice;
    private readonly CancellationToken stop;
    private readonly FeltKinds felt;

    private PatternPlanner(OrderRequest question, BestPlan best, int effort, double shortPrice, CancellationToken stop)
    {
        (this.question, this.best, this.effort, this.shortPrice, this.stop) = (question, best, effort, shortPrice, stop);
        felt = new FeltKinds(question);
    }

    /// <summary>Searches, handing every better plan and every proof over as it is found.</summary>
    /// <param name="question">The question.</param>
    /// <param name="best">The best plan so far.</param>
    /// <param name="effort">Counted work.</param>
    /// <param name="shortPrice">What a ball short counts, above what any ball costs.</param>
    /// <param name="stop">Ends the search.</param>
    public static void Run(OrderRequest question, BestPlan best, int effort, double shortPrice, CancellationToken stop)
    {
        PatternPlanner planner = new(question, best, effort, shortPrice, stop);
        if (planner.felt.All.Count > 0)
        {
            planner.Search();
        }
    }

    private void Search()
    {
        PatternMaster master = new(question, felt, shortPrice, 1);
        using MasterSolver solver = new(master.Rows);
        PatternSearch search = new(question, felt, master, solver);
        best.Tell(Invariant(
            $"patterns: {question.Orders.Count} orders, {felt.All.Sum(k => k.Rolls.Count)} rolls of {felt.All.Count} kinds in ")
            + CountWords.Of(felt.Lots.Count, "lot"));
        search.Run(RoundsPerEffort * effort, BoundGap, (round, bound) => Told(round, bound), stop);
        if (search.Values.Count == 0)
        {
            return;
        }

        Prove(search.Bound);
        if (best.Lacking > 0 && !question.InTime)
        {
            ProveShort();
        }

        IReadOnlyList<double> prices = search.Duals;
        LotPlan lots = new(question, felt, master, prices, LotSplit.Of(question, felt, master, solver, search.Values, stop));
        Offer(lots);
        Prove(search.Bound);
        Improve(lots, search.Bound);
        Prove(search.Bound);
    }

    private void Told(int round, double bound)
    {
        if (round % RoundsTold == 0)
        {
            Prove(bound);
            best.Tell(Invariant($"patterns: round {round}"));
        }
    }

    private void Improve(LotPlan lots, double bound)
    {
        int moves = (int)(effort * (MovesPerEffort + (MovesPerOrder * question.Orders.Count)));
        for (int step = 0; step < Steps && !stop.IsCancellationRequested; step++)
        {
            if (lots.Improve(moves / Steps, stop))
            {
                Offer(lots);
            }

            Prove(bound);
            if (best.IsProved)
            {
                return;
            }

        }

        if (!stop.IsCancellationRequested && lots.Choose(stop))
        {
            Offer(lots);
        }
    }

    // What the cuts of lots leave short is filled up from whatever is left.
    private void Offer(LotPlan lots)
    {
        ShopState state = new(question);
        Cut(state, lots.Cuts);
        foreach (CoverOrder order in question.Orders.OrderBy(o => o.Due))
        {
            state = OrderFill.Filled(state, order);
        }

        OrderPlan plan = state.Plan(1, stop);
        if (best.Offer(plan))
        {
            best.Tell("lots: better plan");
        }
    }

    // The cuts of lots, as far as strikes and hours go.
    private void Cut(ShopState state, IEnumerable<LotCut> cuts)
    {
        Dictionary<string, int> places = Enumerable.Range(0, state.Rolls.Count).ToDictionary(i => state.Rolls[i].Name);
        foreach (LotCut cut in cuts)
        {
            if (!places.TryGetValue(cut.Roll.Name, out int roll))
            {
                roll = state.Buy(Enumerable.Range(0, question.Offers.Count).First(i => question.Offers[i].Roll.Name == cut.Roll.Offer));
                places[cut.Roll.Name] = roll;
            }

            CutDie die = question.Dies[cut.Die];
            CoverOrder order = question.Orders[cut.Order];
            (int press, int most) = state.PressFor(cut.Die, cut.Strikes);
            int strikes = Math.Min(Math.Min(cut.Strikes, most), die.Shape.StrikesIn(state.FreeM(roll)));
            if (strikes >= question.LeastStrikes(order, state.Rolls[roll], die))
            {
                state.Cut(order, cut.Die, roll, press, strikes);
            }
        }
    }

    // The bound holds for plans that lack no more balls than the best one: each ball less would cost its price.
    private void Prove(double bound) =>
        best.ProveCost(best.Lacking + AllReserves, question.InTime, bound - (shortPrice * best.Lacking) + MountingFloor());

    // Of each ball that every such plan makes some of, a die is mounted; one that stands on its press already may cost nothing.
    private double MountingFloor() => question.Orders.GroupBy(o => o.Ball)
        .Where(ball => ball.Sum(o => (long)o.Balls) > best.Lacking)
        .Sum(ball => question.Dies.Where(d => d.Ball == ball.Key)
            .SelectMany(die => question.Presses.Where(p => OrderRequest.Takes(p, die)).Select(press => MountingCost(die, press)))
            .DefaultIfEmpty(0).Min());

    private double MountingCost(CutDie die, PressSpec press) =>
        press.MountedDie == die.Name ? 0 : (double)question.Rules.HourRate * press.ChangeOverMinutes / 60;

    private void ProveShort()
    {
        PatternMaster master = new(question, felt, 1, 0);
        using MasterSolver solver = new(master.Rows);
        PatternSearch search = new(question, felt, master, solver);
        search.Run(RoundsPerEffort * effort, BoundGap, null, stop);
        best.ProveShort(Math.Max(0, Math.Ceiling(search.Bound - 1e-6)));
    }
}
