namespace FeltNest.Die.Order;

/// <summary>Price and life of a die, as a cost sheet takes them.</summary>
/// <param name="Price">Price of the die.</param>
/// <param name="Currency">Its currency.</param>
/// <param name="LifeStrikes">Strikes from new to re-ruling.</param>
/// <param name="ReRules">How often it can be ruled again.</param>
/// <param name="ReRulePrice">Price of that.</param>
public sealed record DieWear(decimal Price, string Currency, int LifeStrikes, int ReRules, decimal ReRulePrice);
