namespace FeltNest.Rolls.Orders.Clock;

/// <summary>A time in which a press runs without a break.</summary>
internal readonly record struct OpenSpan
{
    /// <summary>Where it begins, hours since 00:00 of the first day of cutting.</summary>
    public required double StartHour { get; init; }

    /// <summary>Where it ends.</summary>
    public required double EndHour { get; init; }

    /// <summary>Place of its overtime in the calendar; -1 for a shift.</summary>
    public required int Overtime { get; init; }
}
