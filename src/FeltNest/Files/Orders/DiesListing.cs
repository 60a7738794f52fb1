using FeltNest.Files.Fields;
using FeltNest.Rolls.Plan;

namespace FeltNest.Files.Orders;

/// <summary>Columns of a list of dies.</summary>
internal static class DiesListing
{
    // More bands than any roll has room for.
    private const int MostBands = 100;
    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("dies", Columns);

    public static readonly TextField Die = Columns.Add(new TextField("die", "name on the rack, once in the list"));
    public static readonly TextField Ball = Columns.Add(new TextField("ball", "ball it cuts covers for"));
    public static readonly FileField Layout = Columns.Add(
        new FileField("layout", "the layout.json it cuts, path from the list; says feed, length, gap, pairs and the narrowest roll"));
    public static readonly WholeField StrikesLeft = Columns.Add(
        new WholeField("strikesLeft", 0, ShopRanges.MostCount, "strikes left in its rule; 0 for a die not made yet"));
    public static readonly WholeField Repeats = Columns.Add(
        new WholeField("repeats", 1, StrikePlanner.MostRepeats, "repeats of the layout in one strike") { Default = 1 });
    public static readonly WholeField Band = Columns.Add(
        new WholeField("band", 1, MostBands, "band of the layout that it cuts, counted from the lower selvedge")
        {
            Otherwise = "the whole layout",
        });
    public static readonly NumberField MostWidthMm = Columns.Add(
        new NumberField("mostWidthMm", ShopRanges.RollWidth, "widest roll it is used on") { Default = 10_000 });
    public static readonly NumberField MakePrice = Columns.Add(
        new NumberField("makePrice", ShopRanges.Money, "price to make it; blank for a die that is there")
        {
            Unit = "in the currency of the plan",
            Otherwise = "none",
        });
    public static readonly WholeField LifeStrikes = Columns.Add(
        new WholeField(ShopRanges.LifeStrikes, "strikes of a new rule") { Otherwise = "required with `makePrice` or `reRules`" });
    public static readonly WholeField ReRules = Columns.Add(
        new WholeField(ShopRanges.ReRules, "how often it can be ruled again") { Default = 0 });
    public static readonly NumberField ReRulePrice = Columns.Add(
        new NumberField("reRulePrice", ShopRanges.Money, "price of ruling it again")
        {
            Unit = "in the currency of the plan",
            Otherwise = "required with `reRules`",
        });
    public static readonly DayField From = Columns.Add(
        new DayField("from", "day from whose 00:00 on it is there; blank with `makePrice`") { Otherwise = "there" });
    public static readonly WholeField MakeDays = Columns.Add(
        new WholeField("makeDays", 0, ShopRanges.MostWaitDays, "days until it is made, from 00:00 of the first day of cutting on")
        {
            Default = 0,
        });
}
