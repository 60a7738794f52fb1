using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Orders.Check;

/// <summary>What a plan must keep for its orders: balls, lots, days, reserves.</summary>
internal static class OrderTally
{
    /// <summary>What is violated.</summary>
    public static IEnumerable<string> Broken(StatedOrders stated) =>
        [
            .. GoodBalls(stated.Plan), .. Nap(stated.Plan), .. stated.Plan.Question.Orders.SelectMany(order => OfOrder(stated, order)),
            .. Badly(stated), .. Least(stated),
        ];

    // One ball in twenty of all orders together.
    private static IEnumerable<string> Badly(StatedOrders stated)
    {
        OrderPlan plan = stated.Plan;
        long wanted = plan.Question.Orders.Sum(o => (long)o.Balls);
        long missing = plan.Question.Orders.Sum(
            o => Math.Max(0, o.Balls - plan.Cuts.Where(c => c.Order == o).Sum(c => (long)c.GoodBalls)));
        if (stated.BadlyShort != (missing > 0 && 20 * missing >= wanted))
        {
            yield return $"badlyShort: {(stated.BadlyShort ? "true" : "false")} stated, {missing} of {wanted} balls are missing";
        }
    }

    // What no plan can be below is no more than what this one is.
    private static IEnumerable<string> Least(StatedOrders stated)
    {
        OrderPlan plan = stated.Plan;
        int late = stated.Late.Values.Count(days => days > 0);
        long weighted = plan.Question.Orders.Sum(order => (long)order.Priority * stated.Late.GetValueOrDefault(order.Name));
        if (plan.Proof.LeastLate > late + 1e-6 || plan.Proof.LeastWeightedDays > weighted + 1e-6)
        {
            yield return Invariant(
                $"search: at least {plan.Proof.LeastLate:0.###} orders late, {plan.Proof.LeastWeightedDays:0.###} weighted days stated for "
                    + $"any plan, this one has {late} and {weighted}");
        }
    }

    private static IEnumerable<string> GoodBalls(OrderPlan plan)
    {
        foreach (OrderCut cut in plan.Cuts)
        {
            long balls = cut.Die.Shape.ClassPanels.Sum(panels =>
                (long)Math.Floor(((double)cut.Strikes * panels * Good(plan, cut.Roll, cut.Die) / 2) + 1e-9));
            if (balls != cut.GoodBalls)
            {
                yield return $"assignment {cut.Number}: states {cut.GoodBalls} good balls, its strikes give {balls}";
            }
        }

    }

    // Under either rule an order has one direction of nap in what its one-way dies cut.
    private static IEnumerable<string> Nap(OrderPlan plan) => plan.Cuts.GroupBy(c => c.Order.Name)
        .Where(order => order.Select(c => NapRule.GroupOf(c.Roll, c.Die)).OfType<NapDirection>().Distinct().Count() > 1)
        .Select(order => $"order {order.Key}: one-way dies cut it from rolls with the nap along the feed and against it");

    private static IEnumerable<string> OfOrder(StatedOrders stated, CoverOrder order)
    {
        OrderPlan plan = stated.Plan;
        OrderCut[] own = [.. plan.Cuts.Where(c => c.Order == order)];
        (CoverOrder Order, double Metres, StockRoll Roll)[] held =
        [
            .. plan.Remnants.SelectMany(r => r.Reserved.Where(x => x.Order == order).Select(x => (x.Order, x.Metres, r.Roll))),
        ];
        string[] lots = [.. own.Select(c => c.Roll).Concat(held.Select(h => h.Roll)).Select(r => $"{r.Felt} {r.Lot}").Distinct()];
        if (order.OneLot && lots.Length > 1)
        {
            yield return $"order {order.Name}: is to be of one lot and has {string.Join(", ", lots)}";
        }

        (int Balls, int Reserve) said = stated.Lacking.GetValueOrDefault(order.Name);
        long lacking = Math.Max(0, order.Balls - own.Sum(c => (long)c.GoodBalls));
        long kept = (long)Math.Floor(held.Sum(h => h.Metres * PerMetre(plan, order, h.Roll)) + 1e-3);
        if (said.Balls != lacking || said.Reserve != Math.Max(0, order.ReserveBalls - kept))
        {
            yield return $"order {order.Name}: {said.Balls} balls and {said.Reserve} in reserve stated as short, {lacking} and "
                + $"{Math.Max(0, order.ReserveBalls - kept)} are";
        }

        // One strike of each run of strikes may give over, and all of a run that cannot be shorter.
        long over = own.Sum(c => (long)c.GoodBalls) - order.Balls;
        long must = own.Sum(c => Shortest(plan, c) ? c.GoodBalls : OneStrike(plan, c));
        if (over > must)
        {
            yield return $"order {order.Name}: {order.Balls + over} balls are cut where {order.Balls} are wanted and one strike of "
                + $"each of its runs may give over {must} at most";
        }

        DateOnly until = order.Pins?.Day is { } day && day < order.Due ? day : order.Due;
        int late = own.Length == 0 ? 0 : Math.Max(0, Day(plan.Question.Rules, own.Max(c => c.EndHour)).DayNumber - until.DayNumber);
        if (stated.Late.GetValueOrDefault(order.Name) != late)
        {
            yield return $"order {order.Name}: {stated.Late.GetValueOrDefault(order.Name)} days late stated, it is {late}";
        }
    }

    private static bool Shortest(OrderPlan plan, OrderCut cut) =>
        cut.Strikes == 1 || RollRules.Metres(cut) - (cut.Die.Shape.FeedMm / 1000) < plan.Question.Rules.LeastCutM - 1e-9;

    private static long OneStrike(OrderPlan plan, OrderCut cut) =>
        cut.Die.Shape.ClassPanels.Sum(panels => (long)Math.Ceiling((panels * Good(plan, cut.Roll, cut.Die) / 2) - 1e-9));

    private static double Good(OrderPlan plan, StockRoll roll, CutDie die)
    {
        OrderRules rules = plan.Question.Rules;
        double faults = roll.MeasuredShares.TryGetValue(die.Name, out double share) ? 1 - share : roll.FaultPercent / 100;
        return (1 - faults) * (1 - (rules.RejectPercent / 100)) * (1 - (rules.UnpairedPercent / 100));
    }

    // By the best die that serves the roll's width and makes one strike on it at least.
    private static double PerMetre(OrderPlan plan, CoverOrder order, StockRoll roll) => plan.Question.Dies
        .Where(d => d.Shape.LengthMm + d.Shape.GapMm <= (1000 * roll.LengthM) - (2 * plan.Question.Rules.EndLossMm) + 1e-6)
        .Where(d =>
            d.Ball == order.Ball
                && (order.Felt ?? roll.Felt) == roll.Felt
                && roll.WidthMm >= d.Shape.LeastWidthMm - 1e-6
                && roll.WidthMm <= d.MostWidthMm + 1e-6)
        .Select(d => 500 * d.Shape.ClassPanels.Sum() * Good(plan, roll, d) / d.Shape.FeedMm).DefaultIfEmpty(0).Max();

    /// <summary>The day in which an hour since 00:00 of the first day lies, day by day; midnight belongs to the day it ends.</summary>
    internal static DateOnly Day(OrderRules rules, double hour)
    {
        DateOnly day = rules.Start;
        for (double left = hour - 1e-7; left > 24; left -= 24)
        {
            day = day.AddDays(1);
        }

        return day;
    }
}
