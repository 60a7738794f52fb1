using FeltNest.Rolls.Orders.Assembly;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Search;

/// <summary>Chooses other pieces where the chosen ones make orders late: a piece of a late order, or one that is cut before it on the same
/// press, goes to another die or roll, whole or by half, so that another press can work at it.</summary>
/// <remarks>The pieces were chosen by felt and cost, and put in sequence afterwards; this feeds what the sequence shows back into the
/// choice. Two descents, each of which takes the first change that helps, in a fixed order: the first goes by days and then by hours late,
/// whatever they cost; the second takes back what costs more and helps nobody.</remarks>
internal sealed class LateRepair
{
    // Plans that are tried for one unit of effort.
    private const int TriesPerEffort = 60;

    // Share of a piece that stays where it is.
    private static readonly double[] Shares = [0, 0.5, 0.25, 0.75];

    // Lengths and hours this near are equal: rounding of sums.
    private const double Slack = 1e-9;
    private readonly OrderRequest question;
    private readonly BestPlan best;
    private readonly CancellationToken stop;
    private int tries;

    private LateRepair(OrderRequest question, BestPlan best, int effort, CancellationToken stop)
    {
        (this.question, this.best, this.stop) = (question, best, stop);
        tries = TriesPerEffort * effort;
    }

    /// <summary>Betters the best plan while orders of it are late that need not be.</summary>
    /// <param name="question">The question.</param>
    /// <param name="best">The best plan so far.</param>
    /// <param name="effort">Counted work.</param>
    /// <param name="stop">Ends the search.</param>
    public static void Run(OrderRequest question, BestPlan best, int effort, CancellationToken stop)
    {
        if (best.MayBeLessLate)
        {
            new LateRepair(question, best, effort, stop).Search();
        }
    }

    private void Search()
    {
        OrderPlan plan = Made(best.Plan, Pieces(best.Plan));
        best.Tell("late orders: other pieces");
        plan = Descended(plan, Late, p => (p.Rank.Balls, p.Rank.Reserve, p.WeightedDaysLate, p.Late, HoursLate(p), p.Rank.Cost));
        Descended(plan, All, p => (p.Rank.Balls, p.Rank.Reserve, p.WeightedDaysLate, p.Late, 0, p.Rank.Cost));
    }

    private OrderPlan Descended(
        OrderPlan plan, Func<OrderPlan, IEnumerable<OrderCut>> some,
        Func<OrderPlan, (int Balls, int Reserve, long Days, int Late, double Hours, decimal Cost)> rank)
    {
        while (Better(plan, some, rank) is { } better)
        {
            plan = better;
            if (best.Offer(plan))
            {
                best.Tell("late orders: better plan");
            }
        }

        return plan;
    }

    private OrderPlan? Better(
        OrderPlan plan, Func<OrderPlan, IEnumerable<OrderCut>> some,
        Func<OrderPlan, (int Balls, int Reserve, long Days, int Late, double Hours, decimal Cost)> rank)
    {
        CutPiece[] pieces = Pieces(plan);
        foreach ((int place, CutPiece[] instead) in some(plan).SelectMany(cut => Instead(plan, cut).Select(i => (cut.Number - 1, i))))
        {
            if (tries == 0 || stop.IsCancellationRequested)
            {
                return null;
            }

            tries--;
            OrderPlan other = Made(plan, [.. pieces.Take(place), .. instead, .. pieces.Skip(place + 1)]);
            if (rank(other).CompareTo(rank(plan)) < 0 && BestPlan.IsSound(other))
            {
                return other;
            }
        }

        return null;
    }

    // Of the order that loses most, the piece that ends last comes first, then what is cut before it on its press.
    private static IEnumerable<OrderCut> Late(OrderPlan plan)
    {
        HashSet<int> seen = [];
        foreach (OrderResult late in plan.Results.Where(r => r.DaysLate > 0).OrderByDescending(r => r.WeightedDaysLate))
        {
            OrderCut[] own = [.. plan.Cuts.Where(c => c.Order == late.Order).OrderByDescending(c => c.EndHour)];
            IEnumerable<OrderCut> before = plan.Cuts
                .Where(c => c.Order != late.Order && own.Any(o => o.Press == c.Press && c.EndHour <= o.StartHour + Slack))
                .OrderByDescending(c => c.EndHour);
            foreach (OrderCut cut in own.Concat(before).Where(cut => seen.Add(cut.Number)))
            {
                yield return cut;
            }
        }
    }

    private static IEnumerable<OrderCut> All(OrderPlan plan) => plan.Cuts;

    private static double HoursLate(OrderPlan plan) => plan.Results.Where(r => r.DaysLate > 0).Sum(r => r.Order.Priority
        * (plan.Cuts.Where(c => c.Order == r.Order).Max(c => c.EndHour)
            - (24.0 * (r.Order.InTimeUntil.DayNumber - plan.Question.Rules.Start.DayNumber + 1))));

    // The piece elsewhere, and a part of it elsewhere.
    private IEnumerable<CutPiece[]> Instead(OrderPlan plan, OrderCut cut)
    {
        foreach (CutDie die in question.Dies.Where(d =>
            d.Ball == cut.Order.Ball && (d.MakePrice is null || plan.Dies.Any(w => w.Die == d))))
        {
            foreach ((StockRoll roll, double room) in Rooms(plan, cut, die))
            {
                IEnumerable<int> kept = die == cut.Die
                    ? [0]
                    : Shares.Select(share => (int)Math.Round(share * cut.Strikes)).Distinct().Where(n => n < cut.Strikes);
                foreach (int strikes in kept.Where(n => n > 0 || die != cut.Die || roll != cut.Roll))
                {
                    if (Parted(cut, strikes, die, roll, room) is { } parted)
                    {
                        yield return parted;
                    }
                }
            }
        }
    }

    // So many strikes stay where they are, the balls of the others are cut by a die on a roll; null where that cannot be.
    private CutPiece[]? Parted(OrderCut cut, int strikes, CutDie die, StockRoll roll, double room)
    {
        CutPiece kept = new(cut.Order, cut.Die, cut.Roll, strikes);
        double freed = roll == cut.Roll ? cut.Metres - cut.Die.Shape.MetresOf(strikes) : 0;
        int balls = cut.GoodBalls - kept.BallsIn(question);
        if ((strikes > 0 && strikes < question.LeastStrikes(cut.Order, cut.Roll, cut.Die))
            || Piece(cut, die, roll, balls) is not { } rest
            || die.Shape.MetresOf(rest.Strikes) > room + freed + Slack)
        {
            return null;
        }

        return strikes == 0 ? [rest] : [kept, rest];
    }

    private CutPiece? Piece(OrderCut cut, CutDie die, StockRoll roll, int balls)
    {
        int strikes = balls <= 0 ? 0 : question.StrikesFor(balls, roll, die);
        return strikes > 0 && strikes >= question.LeastStrikes(cut.Order, roll, die) ? new CutPiece(cut.Order, die, roll, strikes) : null;
    }

    // Its own roll, then of each kind of roll the one with least room that is begun and one that is not.
    private IEnumerable<(StockRoll Roll, double Room)> Rooms(OrderPlan plan, OrderCut cut, CutDie die)
    {
        ILookup<StockRoll, OrderCut> used = plan.Cuts.ToLookup(c => c.Roll);
        IEnumerable<StockRoll> rolls = question.Rolls.Concat(used.Select(u => u.Key).Where(r => r.Offer is not null));
        return
        [
            .. rolls.Where(r => question.Fits(cut.Order, r, die) && SameLot(cut, r))
                .Select(r => (Roll: r, Room: question.ClearM(r) - used[r].Sum(c => c.Metres)))
                .OrderBy(r => r.Roll == cut.Roll ? 0 : 1).ThenBy(r => r.Room)
                .DistinctBy(r => (
                    r.Roll == cut.Roll, r.Roll.Felt, r.Roll.Lot, r.Roll.WidthMm, r.Roll.Received, Begun: used.Contains(r.Roll),
                    Enough: r.Room >= cut.Metres)),
        ];
    }

    private static bool SameLot(OrderCut cut, StockRoll roll) =>
        !cut.Order.OneLot || (roll.Felt, roll.Lot) == (cut.Roll.Felt, cut.Roll.Lot);

    private static CutPiece[] Pieces(OrderPlan plan) => [.. plan.Cuts.Select(c => new CutPiece(c.Order, c.Die, c.Roll, c.Strikes))];

    // Pieces of one order by one die on one roll are one piece.
    private OrderPlan Made(OrderPlan plan, CutPiece[] pieces) => PlanAssembly.Of(
        question, pieces.GroupBy(p => (p.Order, p.Die, p.Roll)).Select(one => one.First() with { Strikes = one.Sum(p => p.Strikes) }),
        plan.Purchases, [.. plan.Remnants.SelectMany(r => r.Reserved.Select(held => (held.Order, r.Roll, held.Metres)))], 0,
        stop);
}
