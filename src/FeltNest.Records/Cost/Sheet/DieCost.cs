namespace FeltNest.Cost.Sheet;

/// <summary>What a die costs and how long it lasts.</summary>
/// <param name="Price">Price of the die.</param>
/// <param name="LifeStrikes">Strikes until its rule is dull.</param>
/// <param name="ReRules">How often it gets a new rule and lives again as long.</param>
/// <param name="ReRulePrice">Price of a new rule.</param>
public sealed record DieCost(decimal Price, int LifeStrikes, int ReRules, decimal ReRulePrice)
{
    /// <summary>The die whose readings the life is of, or null where it stands in the costs file.</summary>
    public string? LifeOf { get; init; }

    /// <summary>Money for one strike.</summary>
    public decimal PerStrike => (Price + (ReRules * ReRulePrice)) / ((decimal)LifeStrikes * (ReRules + 1));
}
