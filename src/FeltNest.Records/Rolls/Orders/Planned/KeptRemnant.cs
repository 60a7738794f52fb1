namespace FeltNest.Rolls.Orders.Planned;

/// <summary>Felt that goes to stock when all is cut: what remains of a roll begun, or a roll bought and not begun; or an untouched roll in
/// stock of which felt is kept back.</summary>
/// <param name="Roll">The roll it is of.</param>
/// <param name="LengthM">Its length, m.</param>
/// <param name="Begun">Whether the roll was begun.</param>
/// <param name="Reserved">Metres of it kept back for orders.</param>
internal sealed record KeptRemnant(StockRoll Roll, double LengthM, bool Begun, IReadOnlyList<(CoverOrder Order, double Metres)> Reserved);
