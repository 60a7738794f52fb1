namespace FeltNest.Rolls.Orders.Planned;

/// <summary>What an order of higher priority costs a late order.</summary>
/// <param name="Rush">The order of higher priority.</param>
/// <param name="Days">Days by which the late order would be done sooner in the same sequence without it.</param>
internal sealed record RushDelay(CoverOrder Rush, int Days);
