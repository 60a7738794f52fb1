namespace FeltNest.Rolls.Orders.Planned;

/// <summary>What a plan does for one order.</summary>
/// <param name="Order">The order.</param>
/// <param name="GoodBalls">Good balls to expect.</param>
/// <param name="Done">Day on which its last cover is cut, or null where nothing is cut.</param>
/// <param name="DaysLate">Days that is after its due day; 0 in time.</param>
/// <param name="ReservedBalls">Balls that the felt kept back for it would give.</param>
/// <param name="Reason">Why it is short, and what would help; null where it is not.</param>
public sealed record OrderResult(CoverOrder Order, int GoodBalls, DateOnly? Done, int DaysLate, int ReservedBalls, string? Reason)
{
    /// <summary>Balls short.</summary>
    public int ShortBalls => Math.Max(0, Order.Balls - GoodBalls);

    /// <summary>Balls of its reserve short.</summary>
    public int ReserveShortBalls => Math.Max(0, Order.ReserveBalls - ReservedBalls);
}
