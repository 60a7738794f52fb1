using FeltNest.Layout;

namespace FeltNest.Rolls.Orders;

/// <summary>A die that is on the rack or could be made.</summary>
/// <param name="Name">Name or number on the rack, once in a list.</param>
/// <param name="Ball">Ball it cuts covers for.</param>
/// <param name="Shape">What one strike takes and gives.</param>
/// <param name="MostWidthMm">Widest roll it is used on, mm.</param>
/// <param name="StrikesLeft">Strikes left in its rule; 0 for a die not made yet.</param>
/// <param name="MakePrice">What making it costs, or null for a die on the rack.</param>
/// <param name="LifeStrikes">Strikes of a new rule; 0 where it is never ruled again.</param>
/// <param name="ReRulePrice">What a new rule costs.</param>
/// <param name="MostReRules">How often it can be ruled again.</param>
public sealed record CutDie(
    string Name, string Ball, StrikeShape Shape, double MostWidthMm, int StrikesLeft, decimal? MakePrice, int LifeStrikes,
    decimal ReRulePrice, int MostReRules)
{
    /// <summary>The layout it cuts and the repeats in one strike, for tickets; null where only figures are known.</summary>
    public (RollLayout Layout, int Repeats)? Drawn { get; init; }

    /// <summary>Most strikes it can ever give.</summary>
    public long MostStrikes => StrikesLeft + ((long)LifeStrikes * (MostReRules + (MakePrice is null ? 0 : 1)));

    /// <summary>True where it serves a roll's width.</summary>
    public bool Serves(StockRoll roll) => roll.WidthMm >= Shape.LeastWidthMm - 1e-6 && roll.WidthMm <= MostWidthMm + 1e-6;
}
