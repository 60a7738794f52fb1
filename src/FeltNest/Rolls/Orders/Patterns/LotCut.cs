namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>A run of strikes on a roll of a lot.</summary>
/// <param name="Roll">The roll.</param>
/// <param name="Order">Place of the order in the question.</param>
/// <param name="Die">Place of the die in the question.</param>
/// <param name="Strikes">Strikes.</param>
internal readonly record struct LotCut(StockRoll Roll, int Order, int Die, int Strikes);
