using FeltNest.Files.Fields;

namespace FeltNest.Files.Orders;

/// <summary>Columns of a list of orders.</summary>
internal static class OrdersListing
{
    /// <summary>Word for an order whose felt must be of one shade lot.</summary>
    public const string OneLot = "one";

    /// <summary>Word for an order whose felt may be of several shade lots.</summary>
    public const string AnyLot = "any";

    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("orders", Columns);

    public static readonly TextField Order =
        Columns.Add(new TextField("order", $"name of the order, once in the list; a list has {OrdersReader.MostOrders} orders at most"));
    public static readonly TextField Ball = Columns.Add(new TextField("ball", "ball") { Allowed = "a ball of the dies" });
    public static readonly NumberField ThousandBalls = Columns.Add(
        new NumberField("thousandBalls", 0.001, 100_000, "good balls wanted") { Unit = "thousand balls" });
    public static readonly DayField Due = Columns.Add(new DayField("due", "day on which the last cover must be cut"));
    public static readonly WordField Lots = Columns.Add(
        new WordField("lots", [OneLot, AnyLot], "whether all its felt is of one shade lot") { Default = OneLot });
    public static readonly TextField Felt = Columns.Add(
        new TextField("felt", "felt wanted") { Allowed = "a felt in stock or on offer", Otherwise = "any its dies reach" });
    public static readonly NumberField ReserveBalls = Columns.Add(
        new NumberField("reserveBalls", 0, 10_000_000, "balls for which felt of its lot stays uncut, for later rejects")
        {
            Unit = "balls",
            Default = 0,
        });
    public static readonly WholeField Priority = Columns.Add(
        new WholeField(
            ShopRanges.Priority,
            "weight of its days late: one day late of an order of priority 3 counts as three days late of one of priority 1")
        {
            Default = 1,
        });
    public static readonly TextField Lot = Columns.Add(Pin("lot", "shade lots it must be cut from; several names with ; between them"));
    public static readonly TextField Roll = Columns.Add(Pin("roll", "rolls in stock, or offers, it must be cut from"));
    public static readonly TextField Press = Columns.Add(Pin("press", "presses it must be cut on"));
    public static readonly TextField Die = Columns.Add(Pin("die", "dies it must be cut with"));
    public static readonly DayField Day = Columns.Add(
        new DayField("day", "day on which it is to be cut: nothing of it before 00:00 of that day, and what is cut later is late")
        {
            Otherwise = "any",
        });
    public static readonly TextField NotLot = Columns.Add(Bar("notLot", "shade lots it is kept from"));
    public static readonly TextField NotRoll = Columns.Add(Bar("notRoll", "rolls in stock, or offers, it is kept from"));
    public static readonly TextField NotPress = Columns.Add(Bar("notPress", "presses it is kept from"));
    public static readonly TextField NotDie = Columns.Add(Bar("notDie", "dies it is kept from"));

    private static TextField Pin(string name, string meaning) => new(name, meaning) { Otherwise = "any" };

    private static TextField Bar(string name, string meaning) => new(name, meaning) { Otherwise = "none" };
}
