using FeltNest.Rolls.Orders.Model.Mixed;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>Felt that stays uncut and can be kept back for later rejects.</summary>
/// <param name="Roll">What the rolls are.</param>
/// <param name="Metres">Metres that stay.</param>
internal sealed record FeltRoom(StockRoll Roll, LinearSum Metres);
