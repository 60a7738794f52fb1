using FeltNest.Cost.Offers;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Usage;

/// <summary>Columns of the cutting tickets as filled in. What is left blank is not counted, and that is said.</summary>
internal static class ActualsListing
{
    private const string NotRecorded = "not recorded";

    // Most panels of one roll: far above any sound count.
    private const int MostPanels = 10_000_000;

    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("actuals", Columns);

    public static readonly TextField Ticket = Columns.Add(new TextField("ticket", "number of the ticket, once in the list")
    {
        Optional = true,
    });
    public static readonly TextField Roll =
        Columns.Add(new TextField("roll", "name of the roll; one with several tickets has several lines"));
    public static readonly NumberField Metres = Columns.Add(
        new NumberField("metres", ShopRanges.RollLength, "drawn from the roll and not returned; a line where it is blank is not counted")
        {
            MayBeBlank = true,
        });
    public static readonly WholeField GoodPanels = Columns.Add(
        new WholeField(
            "goodPanels", 0, MostPanels, "passed inspection, with and without a partner; a line where it is blank is not counted")
        {
            Unit = "panels",
            MayBeBlank = true,
        });
    public static readonly NumberField WidthMm = Columns.Add(
        new NumberField(ShopRanges.RollWidth, "as measured") { Otherwise = NotRecorded });
    public static readonly NumberField EndsM = Columns.Add(
        new NumberField("endsM", 0, 100_000, "of the metres, those lost at the ends and in remnants thrown away")
        {
            Allowed = "0 to below `metres`",
            Otherwise = NotRecorded,
        });
    public static readonly WholeField FaultPanels = Columns.Add(
        new WholeField("faultPanels", 0, MostPanels, "lost to faults of the felt") { Unit = "panels", Otherwise = NotRecorded });
    public static readonly WholeField RejectedPanels = Columns.Add(
        new WholeField("rejectedPanels", 0, MostPanels, "rejected after cutting") { Unit = "panels", Otherwise = NotRecorded });
    public static readonly WholeField UnpairedPanels = Columns.Add(
        new WholeField("unpairedPanels", 0, MostPanels, "of the good ones, left without a partner")
        {
            Unit = "panels",
            Allowed = "0 to `goodPanels`",
            Otherwise = NotRecorded,
        });
    public static readonly NumberField Price = Columns.Add(
        new NumberField(ShopRanges.FeltPrice, "paid for one unit; with `priceUnit` and `currency`")
        {
            Unit = "in its currency",
            Otherwise = NotRecorded,
        });
    public static readonly WordField PriceUnit = Columns.Add(
        new WordField("priceUnit", PriceUnits.Words, "what the price is for, full roll width") { Otherwise = "with `price`" });
    public static readonly CurrencyField Currency = Columns.Add(
        new CurrencyField("currency", "a rate in the costs file where it is not the sheet's") { Otherwise = "with `price`" });
    public static readonly TextField Date = Columns.Add(new TextField("date", "kept with the roll in the result") { Optional = true });
    public static readonly TextField Operator = Columns.Add(
        new TextField("operator", "kept with the roll in the result") { Optional = true });
    public static readonly TextField Supervisor = Columns.Add(
        new TextField("supervisor", "kept with the roll in the result") { Optional = true });
}
