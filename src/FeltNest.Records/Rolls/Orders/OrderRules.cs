namespace FeltNest.Rolls.Orders;

/// <summary>What holds for the whole plan.</summary>
internal sealed record OrderRules
{
    /// <summary>The one currency of its money.</summary>
    public required string Currency { get; init; }

    /// <summary>First day of cutting.</summary>
    public required DateOnly Start { get; init; }

    /// <summary>Hours a press without a calendar of its own runs on a working day, Monday to Friday.</summary>
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

    // An end that misses midnight by less, hours, is rounding.
    private const double Slack = 1e-7;

    /// <summary>Hours from 00:00 of the first day of cutting to the end of a day; not above 0 for a day before the first.</summary>
    public double HoursUntil(DateOnly day) => 24.0 * (day.DayNumber - Start.DayNumber + 1);

    /// <summary>Hours from 00:00 of the first day of cutting to 00:00 of a day, 0 for one before it.</summary>
    public double HourOf(DateOnly? day) => day is { } known ? Math.Max(0, 24.0 * (known.DayNumber - Start.DayNumber)) : 0;

    /// <summary>Day in which work ends; midnight belongs to the day it ends.</summary>
    /// <param name="hour">Hours since 00:00 of the first day of cutting.</param>
    public DateOnly DayOf(double hour) => Start.AddDays((int)Math.Max(0, Math.Ceiling((hour - Slack) / 24) - 1));

    /// <summary>The moment of an hour by the clock on the wall, to the minute.</summary>
    /// <param name="hour">Hours since 00:00 of the first day of cutting.</param>
    public DateTime MomentOf(double hour) => Start.ToDateTime(TimeOnly.MinValue).AddMinutes(Math.Round(hour * 60));
}
