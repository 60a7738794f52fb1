namespace FeltNest.Rolls.Orders.Clock;

/// <summary>When each piece is cut.</summary>
/// <param name="Shop">The shop, with the overtime that is worked.</param>
/// <param name="PressOf">Press of each piece, by its number.</param>
/// <param name="Times">Times of each piece, by its number.</param>
internal sealed record ClockResult(ClockShop Shop, int[] PressOf, PieceTimes Times);
