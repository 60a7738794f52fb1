using FeltNest.Rolls.Orders.Assembly;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Model;
using FeltNest.Rolls.Orders.Model.Mixed;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Orders.Search;

/// <summary>The best plan so far and what was proved, shared with a search that may be left behind: closed, it takes nothing
/// more.</summary>
/// <param name="first">The plan that stands until a better one comes.</param>
/// <param name="progress">Told each step; may be null.</param>
internal sealed class BestPlan(OrderPlan first, IProgress<string>? progress)
{
    private readonly Lock gate = new();
    private readonly List<(double Short, bool InTime, double Cost)> bounds = [];
    private readonly double weight = OrderRows.WeightOfReserve(first.Question);
    private OrderPlan best = first;
    private double leastShort;
    private double leastLate;
    private double leastDays;
    private bool closed;

    /// <summary>Takes a plan that is sound, cuts no more than it must, and is as good as the best or better.</summary>
    /// <returns>Whether it is better than the best so far.</returns>
    public bool Offer(OrderPlan plan)
    {
        if (!IsSound(plan))
        {
            return false;
        }

        lock (gate)
        {
            int order = closed ? 1 : plan.Rank.CompareTo(best.Rank);
            best = order <= 0 ? plan : best;
            return order < 0;
        }
    }

    /// <summary>Whether a plan keeps every rule and cuts no more than it must.</summary>
    public static bool IsSound(OrderPlan plan) => !Overcut.Is(plan) && OrderPlanCheck.Violations(StatedOrders.Of(plan)).Count == 0;

    /// <summary>Whether orders of the best plan are late, and not proved to be so in any plan.</summary>
    public bool MayBeLessLate
    {
        get
        {
            lock (gate)
            {
                return best.WeightedDaysLate > PlanProof.Whole(leastDays);
            }
        }
    }

    /// <summary>The best plan so far.</summary>
    public OrderPlan Plan
    {
        get
        {
            lock (gate)
            {
                return best;
            }
        }
    }

    /// <summary>Balls that the best plan is short of.</summary>
    public int Lacking => Plan.Rank.Balls;

    /// <summary>Whether the best plan, short of nothing and with none late, is as near to its bound as counts for proved.</summary>
    public bool IsProved
    {
        get
        {
            lock (gate)
            {
                return best.Rank is (0, 0, 0, 0, var cost)
                    && bounds.Exists(b => (double)cost - b.Cost <= MixedModel.RelativeGap * Math.Abs((double)cost));
            }
        }
    }

    /// <summary>Takes a bound of the cost that holds for all plans with so few balls short, reserves weighed in: however late they are, or
    /// for those alone of which no order waits for felt beyond its day.</summary>
    public void ProveCost(double mostShort, bool inTime, double cost) => Prove(() => bounds.Add((mostShort, inTime, cost)));

    /// <summary>Takes what no plan can be short of less.</summary>
    public void ProveShort(double least) => Prove(() => leastShort = Math.Max(leastShort, least));

    /// <summary>Takes what no plan as little short can have fewer late orders than.</summary>
    public void ProveLate(double least) => Prove(() => leastLate = Math.Max(leastLate, least));

    /// <summary>Takes what no plan as little short can have fewer days late than, each order's times its priority.</summary>
    public void ProveDays(double least) => Prove(() => leastDays = Math.Max(leastDays, least));

    /// <summary>Tells a step, with the best plan so far, its bound and its gap.</summary>
    public void Tell(string stage)
    {
        lock (gate)
        {
            if (closed || progress is null)
            {
                return;
            }

            OrderPlan plan = Proved(false, 0);
            string bound = plan.Bound is { } least
                ? Invariant($", no plan less than {least:0.00}, gap {Math.Max(0, plan.GapPercent!.Value):0.###} %")
                : ", no bound yet";
            progress.Report(
                Invariant(
                    $"{stage}; best so far: {CountWords.Of(plan.ShortBalls, "ball")} short, {CountWords.Of(plan.Late, "order")} late, ")
                    + Invariant($"cost {plan.Cost.Total:0.00} {plan.Question.Rules.Currency}{bound}"));
        }
    }

    /// <summary>Takes nothing more, and gives the best plan with what is proved of it.</summary>
    /// <param name="cutShort">Whether the search was stopped.</param>
    /// <param name="effort">Counted work allowed.</param>
    public OrderPlan Close(bool cutShort, int effort)
    {
        lock (gate)
        {
            closed = true;
            return Proved(cutShort, effort);
        }
    }

    private OrderPlan Proved(bool cutShort, int effort)
    {
        (int balls, int reserve, long days, int late, _) = best.Rank;
        double lacking = balls + (weight * reserve);
        double[] costs =
        [
            .. bounds
                .Where(b => b.Short >= lacking - 1e-6 && (!b.InTime || days == 0) && double.IsFinite(b.Cost) && Math.Abs(b.Cost) < 1e15)
                .Select(b => b.Cost),
        ];
        return best with
        {
            Proof = new PlanProof
            {
                CostBound = costs.Length == 0 ? null : (decimal)costs.Max(),
                LeastShort = Math.Min(leastShort, balls),
                LeastLate = Math.Min(leastLate, late),
                LeastWeightedDays = Math.Min(leastDays, days),
                CutShort = cutShort,
                Effort = effort,
            },
        };
    }

    private void Prove(Action take)
    {
        lock (gate)
        {
            if (!closed)
            {
                take();
            }
        }
    }
}
