namespace FeltNest.Rolls.Orders.Clock;

/// <summary>What no plan can have less of, dies mounted as often as anybody likes, on any press: orders late, and days late weighed by
/// priority.</summary>
/// <param name="Orders">Orders late.</param>
/// <param name="WeightedDays">Days late, each order's times its priority.</param>
/// <remarks>
/// <para>Every step below gives plans more freedom than they have, so what it proves holds for every plan.</para>
/// <para>Work. An order of B balls needs at least p = B / (balls an hour) open hours, by the die, the press and the share of good panels
/// that together give most; whole strikes, whole balls and pieces only add to it. Where plans may be short of S balls, B - S are
/// taken. It cannot begin before r, the day on which one of its rolls and one of its dies are there.</para>
/// <para>Capacity. H(t) is the open hours of all presses until t, overtime worked for nothing, each press less the mounting and the roll
/// change that its first piece needs. Work may be split and shared at will. For the orders of one
/// ball no more presses run at a time than there are dies of it: H is the integral of the lesser number. Both kinds are used, the bound
/// of the balls being the sum over balls, as no order has two.</para>
/// <para>Mountings. Some die of each ball that is cut must be mounted once before its first order, unless it stands on a press. Where all
/// orders of a ball take P hours, one of p hours carries p/P of that mounting: orders cut by a day carry no more of it together than the
/// whole, which lies before that day too. So p may be taken that much longer if capacity is counted from the first hour on, and without
/// the mounting of the presses. Both ways are tried, and the better one counts.</para>
/// <para>Orders late. One for which H(due) - H(r) is less than p is late in any plan, and is set aside. Of the rest the orders in time in
/// any plan satisfy, for every due day d, sum of p over those due by d at most H(d): by the algorithm of J. Moore and T. Hodgson
/// (Management Science 15 (1968) 102-109, from memory), which is exact for this relaxation, at least so many miss it. The same holds from
/// any moment t on for orders with r not before t and H(d) - H(t); the best t counts.</para>
/// <para>Days late. Let x be the share of an order's work done on day k, at most its capacity of that day in all. The order is done on no
/// day before k, nor before e, the day on which H(e) - H(r) reaches p. So its days late are at least the mean, by x, of max(0, max(k, e) -
/// due), and the least sum of these over all x is a linear program. <see cref="DayLoads"/> bounds it by its dual, worked out with prices
/// of days that need not be the best ones.</para>
/// </remarks>
internal sealed record LateBound(int Orders, long WeightedDays)
{
    private const int MostMoreDays = 400;

    /// <summary>The bound of a question.</summary>
    /// <param name="question">The question.</param>
    /// <param name="mostShort">Balls that the plans in question may be short of in all.</param>
    public static LateBound Of(OrderRequest question, long mostShort)
    {
        OrderWork[] work = [.. question.Orders.Select(order => OrderWork.Of(question, order, mostShort)).OfType<OrderWork>()];
        if (work.Length == 0)
        {
            return new LateBound(0, 0);
        }

        int days = Horizon(work);
        LateBound all = Of(question, work, mounted => Capacity.OfAll(question, days, mounted));
        LateBound[] balls =
        [
            .. work.GroupBy(one => one.Order.Ball)
                .Select(ball => Of(question, [.. ball], mounted => Capacity.OfBall(question, ball.Key, days, mounted))),
        ];
        return new LateBound(
            Math.Max(all.Orders, balls.Sum(ball => ball.Orders)), Math.Max(all.WeightedDays, balls.Sum(ball => ball.WeightedDays)));
    }

    // Days that are looked at: to the last due day, and as many more as the work would take at an hour a day, within reason. A day beyond
    // them counts as the last of them.
    private static int Horizon(OrderWork[] work)
    {
        double last = Math.Max(0, work.Max(one => Math.Max(one.Due, one.From)) / 24);
        return (int)Math.Ceiling(last) + (int)Math.Clamp(Math.Ceiling(work.Sum(one => one.Hours)), 1, MostMoreDays);
    }

    private static LateBound Of(OrderRequest question, OrderWork[] work, Func<bool, Capacity> capacityOf)
    {
        Capacity ready = capacityOf(true);
        Capacity bare = capacityOf(false);
        OrderWork[] lost = [.. work.Where(one => !InTime(one, ready))];
        OrderWork[] rest = [.. work.Except(lost).OrderBy(one => one.Due)];
        int late = Math.Max(
            rest.Select(one => one.From).Append(0).Distinct().Max(from => Missed(rest, ready, from)),
            Missed([.. WithMounting(question, rest)], bare, 0));
        int[] earliest = [.. work.Select(one => DayLoads.Earliest(one, ready))];
        long days = Math.Max(
            DayLoads.Least(work, earliest, ready, falling: false),
            DayLoads.Least([.. WithMounting(question, work)], earliest, bare, falling: true));
        return new LateBound(lost.Length + late, days);
    }

    // Each order with its share of the one mounting that its ball needs.
    private static IEnumerable<OrderWork> WithMounting(OrderRequest question, OrderWork[] work)
    {
        Dictionary<string, double> hours =
            work.GroupBy(one => one.Order.Ball).ToDictionary(ball => ball.Key, ball => ball.Sum(one => one.Hours));
        Dictionary<string, double> mounting = hours.Keys.ToDictionary(ball => ball, ball => Mounting(question, ball));
        return work.Select(one => one with { Hours = one.Hours * (1 + (mounting[one.Order.Ball] / hours[one.Order.Ball])) });
    }

    // The shortest mounting of a die of a ball; none where one stands on a press already.
    private static double Mounting(OrderRequest question, string ball)
    {
        CutDie[] dies = [.. question.Dies.Where(die => die.Ball == ball)];
        return question.Presses.Any(press => Array.Exists(dies, die => die.Name == press.MountedDie))
            ? 0
            : question.Presses.Where(press => Array.Exists(dies, die => OrderRequest.Takes(press, die)))
                .Select(press => press.ChangeOverMinutes / 60).DefaultIfEmpty(0).Min();
    }

    private static bool InTime(OrderWork one, Capacity capacity) =>
        one.Due > one.From && capacity.Between(one.From, one.Due) >= one.Hours - Capacity.Slack;

    // Orders by due day that begin at a moment at the earliest: whenever they do not fit, the longest of them is late.
    private static int Missed(OrderWork[] byDue, Capacity capacity, double from)
    {
        PriorityQueue<double, double> kept = new();
        double hours = 0;
        int missed = 0;
        foreach (OrderWork one in byDue.Where(one => one.From >= from))
        {
            kept.Enqueue(one.Hours, -one.Hours);
            hours += one.Hours;
            if (hours > capacity.Between(from, one.Due) + Capacity.Slack)
            {
                hours -= kept.Dequeue();
                missed++;
            }
        }

        return missed;
    }
}
