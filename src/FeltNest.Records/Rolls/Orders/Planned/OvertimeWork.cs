using FeltNest.Rolls.Orders.Clock;

namespace FeltNest.Rolls.Orders.Planned;

/// <summary>Overtime that a plan works.</summary>
/// <param name="Press">The press.</param>
/// <param name="Span">The overtime of its calendar.</param>
/// <param name="Hours">Hours of it that are worked.</param>
internal sealed record OvertimeWork(PressSpec Press, OvertimeSpan Span, double Hours)
{
    /// <summary>What they cost.</summary>
    public decimal Price => (decimal)Hours * Span.PricePerHour;
}
