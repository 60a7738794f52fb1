namespace FeltNest.Cost.Sheet;

/// <summary>What a die costs and how long it lasts.</summary>
public sealed record DieCost
{
    /// <summary>Price of the die.</summary>
    public required decimal Price { get; init; }

    /// <summary>Strikes until its rule is dull.</summary>
    public required int LifeStrikes { get; init; }

    /// <summary>How often it gets a new rule and lives again as long.</summary>
    public required int ReRules { get; init; }

    /// <summary>Price of a new rule.</summary>
    public required decimal ReRulePrice { get; init; }

    /// <summary>The die whose readings the life is of, or null where it stands in the costs file.</summary>
    public string? LifeOf { get; init; }

    /// <summary>Money for one strike.</summary>
    public decimal PerStrike => (Price + (ReRules * ReRulePrice)) / ((decimal)LifeStrikes * (ReRules + 1));
}
