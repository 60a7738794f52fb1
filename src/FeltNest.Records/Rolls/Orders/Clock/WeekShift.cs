namespace FeltNest.Rolls.Orders.Clock;

/// <summary>Hours of a day of the week in which a press runs, every week.</summary>
public sealed record WeekShift
{
    /// <summary>Day on which it begins.</summary>
    public required DayOfWeek Day { get; init; }

    /// <summary>Hour at which it begins, 0 to 24.</summary>
    public required double FromHour { get; init; }

    /// <summary>Hour at which it ends, counted from 00:00 of the same day: above 24 it ends on the next day.</summary>
    public required double ToHour { get; init; }
}
