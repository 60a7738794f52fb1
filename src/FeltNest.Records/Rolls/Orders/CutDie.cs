using FeltNest.Layout;

namespace FeltNest.Rolls.Orders;

/// <summary>A die that is on the rack or could be made.</summary>
internal sealed record CutDie
{
    /// <summary>Name or number on the rack, once in a list.</summary>
    public required string Name { get; init; }

    /// <summary>Ball it cuts covers for.</summary>
    public required string Ball { get; init; }

    /// <summary>What one strike takes and gives.</summary>
    public required StrikeShape Shape { get; init; }

    /// <summary>Widest roll it is used on, mm.</summary>
    public required double MostWidthMm { get; init; }

    /// <summary>Strikes left in its rule; 0 for a die not made yet.</summary>
    public required int StrikesLeft { get; init; }

    /// <summary>What making it costs, or null for a die on the rack.</summary>
    public required decimal? MakePrice { get; init; }

    /// <summary>Strikes of a new rule; 0 where it is never ruled again.</summary>
    public required int LifeStrikes { get; init; }

    /// <summary>What a new rule costs.</summary>
    public required decimal ReRulePrice { get; init; }

    /// <summary>How often it can be ruled again.</summary>
    public required int MostReRules { get; init; }

    /// <summary>Day from whose 00:00 on it is there, or null for one that is there.</summary>
    public DateOnly? From { get; init; }

    /// <summary>Days from 00:00 of the first day of cutting until a die is there that must be made.</summary>
    public int MakeDays { get; init; }

    /// <summary>The layout it cuts and the repeats in one strike, for tickets; null where only figures are known.</summary>
    public (RollLayout Layout, int Repeats)? Drawn { get; init; }

    /// <summary>Most strikes it can ever give.</summary>
    public long MostStrikes => StrikesLeft + ((long)LifeStrikes * (MostReRules + (MakePrice is null ? 0 : 1)));

    /// <summary>True where it serves a roll's width.</summary>
    public bool Serves(StockRoll roll) => roll.WidthMm >= Shape.LeastWidthMm - 1e-6 && roll.WidthMm <= MostWidthMm + 1e-6;
}
