namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>Balls of an order that are to be cut from one lot.</summary>
/// <param name="Order">Place of the order in the question.</param>
/// <param name="Lot">Place of the lot.</param>
/// <param name="Balls">Balls.</param>
internal readonly record struct LotPortion(int Order, int Lot, int Balls);
