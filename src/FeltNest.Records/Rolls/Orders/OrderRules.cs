namespace FeltNest.Rolls.Orders;

/// <summary>What holds for the whole plan.</summary>
/// <param name="Currency">The one currency of its money.</param>
/// <param name="Start">First day of cutting.</param>
/// <param name="HoursPerDay">Hours a press runs on a working day, Monday to Friday.</param>
/// <param name="EndLossMm">Length lost at each end of a roll, mm.</param>
/// <param name="RejectPercent">Panels rejected after cutting, per cent of those without a fault.</param>
/// <param name="UnpairedPercent">Good panels without a partner, per cent of the good ones.</param>
/// <param name="RemnantValuePercent">What felt that goes back to stock is worth, per cent of its price.</param>
/// <param name="LeastRemnantM">Shortest remnant that goes back to stock, m.</param>
/// <param name="LeastCutM">Shortest piece of a roll worth the handling for an order, m; an order that needs less is cut in one
/// piece.</param>
/// <param name="PerStrike">Labour, machine and board for one strike.</param>
/// <param name="HourRate">What an hour of changing dies costs.</param>
public sealed record OrderRules(
    string Currency, DateOnly Start, double HoursPerDay, double EndLossMm, double RejectPercent, double UnpairedPercent,
    double RemnantValuePercent, double LeastRemnantM, double LeastCutM,
    decimal PerStrike, decimal HourRate)
{
    /// <summary>Hours of one press from the first day of cutting to the end of a day.</summary>
    public double HoursUntil(DateOnly day) => day < Start ? 0 : WorkingDays(day) * HoursPerDay;

    /// <summary>Day on which an hour of one press falls; the end of a day belongs to it.</summary>
    public DateOnly DayOf(double hour)
    {
        int left = Math.Max(1, (int)Math.Ceiling((hour / HoursPerDay) - 1e-9));
        DateOnly day = Start;
        while (true)
        {
            left -= IsWorking(day) ? 1 : 0;
            if (left == 0)
            {
                return day;
            }

            day = day.AddDays(1);
        }
    }

    private static bool IsWorking(DateOnly day) => day.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday);

    private int WorkingDays(DateOnly last)
    {
        int days = last.DayNumber - Start.DayNumber + 1;
        int count = days / 7 * 5;
        return count + Enumerable.Range(0, days % 7).Count(k => IsWorking(Start.AddDays(k)));
    }
}
