namespace FeltNest.Rolls.Orders;

/// <summary>What holds for the whole plan.</summary>
internal sealed record OrderRules
{
    /// <summary>The one currency of its money.</summary>
    public required string Currency { get; init; }

    /// <summary>First day of cutting.</summary>
    public required DateOnly Start { get; init; }

    /// <summary>Hours a press runs on a working day, Monday to Friday.</summary>
    public required double HoursPerDay { get; init; }

    /// <summary>Length lost at each end of a roll, mm.</summary>
    public required double EndLossMm { get; init; }

    /// <summary>Panels rejected after cutting, per cent of those without a fault.</summary>
    public required double RejectPercent { get; init; }

    /// <summary>Good panels without a partner, per cent of the good ones.</summary>
    public required double UnpairedPercent { get; init; }

    /// <summary>What felt that goes back to stock is worth, per cent of its price.</summary>
    public required double RemnantValuePercent { get; init; }

    /// <summary>Shortest remnant that goes back to stock, m.</summary>
    public required double LeastRemnantM { get; init; }

    /// <summary>Shortest piece of a roll worth the handling for an order, m; an order that needs less is cut in one piece.</summary>
    public required double LeastCutM { get; init; }

    /// <summary>Labour, machine and board for one strike.</summary>
    public required decimal PerStrike { get; init; }

    /// <summary>What an hour of changing dies costs.</summary>
    public required decimal HourRate { get; init; }

    /// <summary>What is done with rolls whose nap lies against the feed where a layout is one-way.</summary>
    public NapHandling Nap { get; init; } = NapHandling.Turn;

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
