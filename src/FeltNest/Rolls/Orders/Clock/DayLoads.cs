using Google.OrTools.LinearSolver;

namespace FeltNest.Rolls.Orders.Clock;

/// <summary>The least days late, weighed by priority, of orders whose work is spread over days like sand.</summary>
/// <remarks>
/// <para>With shares x of order j on day k, cost c = w max(0, max(k, e) - due), work p and capacity C of a day: minimise sum of c x, where
/// the shares of an order add to 1 and sum of p x is at most C on every day. For any prices m of days, none below 0, weak duality gives the
/// bound sum over orders of min over days of (c + p m), less sum of m C. The prices are taken from a linear program (GLOP, counted steps)
/// and set to 0 where they are below; that they are the best ones is not needed.</para>
/// <para>Days beyond the last one cost at least as much as it and have no price, so it stands for them.</para>
/// </remarks>
internal static class DayLoads
{
    // Steps of the linear program: enough for 500 orders over 100 days.
    private const int MostSteps = 20_000;

    /// <summary>The bound, in whole days.</summary>
    /// <param name="work">The orders.</param>
    /// <param name="earliest">The first day on which each can be done were it alone.</param>
    /// <param name="capacity">Hours of work of days.</param>
    /// <param name="falling">Whether capacity holds only when it is counted from the first day on: a price then is no lower than those of
    /// later days.</param>
    public static long Least(OrderWork[] work, int[] earliest, Capacity capacity, bool falling)
    {
        int days = Math.Min(capacity.Days, Enough(work, capacity));
        double[] prices = Prices(work, earliest, capacity, days);
        for (int day = days - 2; falling && day >= 0; day--)
        {
            prices[day] = Math.Max(prices[day], prices[day + 1]);
        }

        double bound = -prices.Select((price, day) => price * capacity.OfDay(day)).Sum();
        for (int j = 0; j < work.Length; j++)
        {
            double least = Cost(work[j], earliest[j], days);
            for (int day = First(work[j]); day < days; day++)
            {
                least = Math.Min(least, Cost(work[j], earliest[j], day) + (work[j].Hours * prices[day]));
            }

            bound += least;
        }

        return (long)Math.Max(0, Math.Ceiling(bound - (1e-6 * Math.Max(1, bound))));
    }

    private static int First(OrderWork one) => (int)Math.Floor(one.From / 24);

    // Days late of an order that is worked on in a day.
    private static double Cost(OrderWork one, int earliest, int day) =>
        one.Order.Priority * Math.Max(0, Math.Max(day, earliest) - (one.Due / 24) + 1);

    /// <summary>The day before whose end an order alone can be done.</summary>
    public static int Earliest(OrderWork one, Capacity capacity)
    {
        int day = First(one);
        while (day < capacity.Days && capacity.Between(one.From, 24.0 * (day + 1)) < one.Hours - Capacity.Slack)
        {
            day++;
        }

        return day;
    }

    // The day by which all work can be done after the last of it has begun.
    private static int Enough(OrderWork[] work, Capacity capacity)
    {
        double from = work.Max(one => one.From);
        int day = (int)Math.Ceiling(from / 24);
        while (day < capacity.Days && capacity.Between(from, 24.0 * day) < work.Sum(one => one.Hours))
        {
            day++;
        }

        return day + 1;
    }

    private static double[] Prices(OrderWork[] work, int[] earliest, Capacity capacity, int days)
    {
        if (work.Select((one, j) => Cost(one, earliest[j], First(one))).Sum() <= 0 && Fits(work, capacity))
        {
            return new double[days];
        }

        using Solver solver = Solver.CreateSolver("GLOP");
        solver.SetSolverSpecificParametersAsString($"max_number_of_iterations: {MostSteps}");
        Constraint[] rows =
        [
            .. Enumerable.Range(0, days).Select(day => solver.MakeConstraint(double.NegativeInfinity, capacity.OfDay(day))),
        ];
        Objective objective = solver.Objective();
        for (int j = 0; j < work.Length; j++)
        {
            Constraint whole = solver.MakeConstraint(1, double.PositiveInfinity);
            for (int day = First(work[j]); day <= days; day++)
            {
                Variable share = solver.MakeNumVar(0, double.PositiveInfinity, string.Empty);
                whole.SetCoefficient(share, 1);
                objective.SetCoefficient(share, Cost(work[j], earliest[j], day));
                if (day < days)
                {
                    rows[day].SetCoefficient(share, work[j].Hours);
                }
            }
        }

        objective.SetMinimization();
        bool solved = solver.Solve() is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE;
        return [.. rows.Select(row => solved ? Math.Max(0, -row.DualValue()) : 0)];
    }

    // Whether all work fits before the due days, which need no prices then.
    private static bool Fits(OrderWork[] work, Capacity capacity)
    {
        double hours = 0;
        double from = work.Max(one => one.From);
        return work.OrderBy(one => one.Due).All(one => (hours += one.Hours) <= capacity.Between(from, one.Due));
    }
}
