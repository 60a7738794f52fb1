using FeltNest.Files.Fields;

namespace FeltNest.Files.Orders;

/// <summary>Columns of a list of what is cut of a plan.</summary>
internal static class DoneListing
{
    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("done", Columns);

    public static readonly WholeField Ticket = Columns.Add(
        new WholeField("ticket", 1, ShopRanges.MostCount, "number of the ticket, as in the work list of the plan"));
    public static readonly WholeField Strikes = Columns.Add(
        new WholeField("strikes", 0, ShopRanges.MostCount, "strikes made of it"));
    public static readonly WholeField Balls = Columns.Add(
        new WholeField("balls", 0, ShopRanges.MostCount, "good balls they gave") { Otherwise = "what the plan expects of the strikes" });
    public static readonly TextField Roll = Columns.Add(
        new TextField("roll", "roll it was cut from") { Allowed = "a roll of the stock list", Otherwise = "the roll of the ticket" });
    public static readonly NumberField UsableFromM = Columns.Add(
        new NumberField(
            "usableFromM", 0, ShopRanges.MostRollM, "where the roll is usable from, by the places of the plan")
        {
            Unit = "m",
            Otherwise = "where the strikes end on the roll of the ticket",
        });
}
