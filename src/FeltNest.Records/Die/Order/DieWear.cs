namespace FeltNest.Die.Order;

/// <summary>Price and life of a die, as a cost sheet takes them.</summary>
public sealed record DieWear
{
    /// <summary>Price of the die.</summary>
    public required decimal Price { get; init; }

    /// <summary>Its currency.</summary>
    public required string Currency { get; init; }

    /// <summary>Strikes from new to re-ruling.</summary>
    public required int LifeStrikes { get; init; }

    /// <summary>How often it can be ruled again.</summary>
    public required int ReRules { get; init; }

    /// <summary>Price of that.</summary>
    public required decimal ReRulePrice { get; init; }
}
