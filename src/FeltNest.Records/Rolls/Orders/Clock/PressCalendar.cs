namespace FeltNest.Rolls.Orders.Clock;

/// <summary>When a press runs: shifts of the week, less the times it is closed, and overtime. Times are those of the clock on the wall,
/// without time zone and without summer time: every day has 24 hours.</summary>
/// <remarks>Overtime counts where it lies outside the shifts that are open, also on a closed day.</remarks>
public sealed record PressCalendar
{
    // Where a usual day begins; one of more hours than are left until midnight begins earlier.
    private const double UsualFrom = 6;

    /// <summary>Shifts of every week; none where it runs in overtime alone.</summary>
    public required IReadOnlyList<WeekShift> Shifts { get; init; }

    /// <summary>Times it is closed.</summary>
    public IReadOnlyList<ClosedSpan> Closed { get; init; } = [];

    /// <summary>Times it may run for a price.</summary>
    public IReadOnlyList<OvertimeSpan> Overtime { get; init; } = [];

    /// <summary>Monday to Friday, so many hours from 06:00; of more than 18 hours the day ends at 24:00.</summary>
    public static PressCalendar Usual(double hoursPerDay)
    {
        double from = Math.Min(UsualFrom, 24 - hoursPerDay);
        return new PressCalendar
        {
            Shifts =
            [
                .. Enumerable.Range(1, 5)
                    .Select(day => new WeekShift { Day = (DayOfWeek)day, FromHour = from, ToHour = from + hoursPerDay }),
            ],
        };
    }
}
