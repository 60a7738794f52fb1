namespace FeltNest.Rolls.Orders.Clock;

/// <summary>A time in which a press does not run: a holiday, a repair.</summary>
public sealed record ClosedSpan
{
    /// <summary>First moment, by the clock on the wall.</summary>
    public required DateTime From { get; init; }

    /// <summary>First moment after it.</summary>
    public required DateTime To { get; init; }
}
