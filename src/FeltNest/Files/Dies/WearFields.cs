using FeltNest.Files.Fields;

namespace FeltNest.Files.Dies;

/// <summary>What a die costs and how long it lasts, wherever that is written.</summary>
internal static class WearFields
{
    internal static readonly FieldSet Set = new();

    public static readonly NumberField Price = Set.Add(new NumberField(ShopRanges.Money, "of a new die"));
    public static readonly CurrencyField Currency = Set.Add(new CurrencyField("currency", "such as EUR"));
    public static readonly WholeField LifeStrikes = Set.Add(new WholeField(ShopRanges.LifeStrikes, "strikes to re-ruling"));
    public static readonly WholeField ReRules = Set.Add(
        new WholeField(ShopRanges.ReRules, "how often it can be ruled again") { Default = 0 });
    public static readonly NumberField ReRulePrice = Set.Add(
        new NumberField("reRulePrice", ShopRanges.Money, "of ruling it again") { Otherwise = "required with `reRules`" });
}
