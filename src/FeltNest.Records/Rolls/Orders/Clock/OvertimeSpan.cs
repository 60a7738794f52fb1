namespace FeltNest.Rolls.Orders.Clock;

/// <summary>A time outside the usual shifts in which a press may run for a price.</summary>
public sealed record OvertimeSpan
{
    /// <summary>First moment, by the clock on the wall.</summary>
    public required DateTime From { get; init; }

    /// <summary>First moment after it.</summary>
    public required DateTime To { get; init; }

    /// <summary>What an hour of it costs beyond the usual, in the plan's currency.</summary>
    public required decimal PricePerHour { get; init; }
}
