using FeltNest.Files.Fields;

namespace FeltNest.Files.Dies;

/// <summary>A maker's answer to a request for a quote: every field of <c>feltnest/die-quote/1</c>.</summary>
internal static class DieQuoteDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new()
    {
        Schema = SchemaName.DieQuote,
        Title = "Answer to a request for a quote",
        Fields = Fields,
    };

    public static readonly TextField Die = Fields.Add(new TextField("die", "name of the die, as the request has it"));
    public static readonly TextField Revision = Fields.Add(new TextField("revision", "its revision") { Optional = true });
    public static readonly TextField DieSha256 = Fields.Add(
        new TextField("dieSha256", "hash of die.json as the request has it; another file is refused") { Optional = true });
    public static readonly NumberField Price = Fields.Add(new NumberField(ShopRanges.Money, "price of one die"));
    public static readonly CurrencyField Currency = Fields.Add(new CurrencyField("currency", "such as EUR"));
    public static readonly WholeField LifeStrikes = Fields.Add(new WholeField(ShopRanges.LifeStrikes, "strikes to the first re-ruling"));
    public static readonly WholeField ReRules = Fields.Add(
        new WholeField(ShopRanges.ReRules, "how often it can be ruled again") { Default = 0 });
    public static readonly NumberField ReRulePrice = Fields.Add(
        new NumberField("reRulePrice", ShopRanges.Money, "price of a new rule; required with reRules") { Optional = true });
    public static readonly WholeField DeliveryDays = Fields.Add(
        new WholeField("deliveryDays", 0, 3650, "days to delivery") { Optional = true });
}
