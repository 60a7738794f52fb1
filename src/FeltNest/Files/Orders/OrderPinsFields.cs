using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Rolls.Orders;

namespace FeltNest.Files.Orders;

/// <summary>Fields of <c>orders[].pins</c>: what an order is held to and kept from.</summary>
internal static class OrderPinsFields
{
    internal static readonly FieldSet Set = new();

    public static readonly TextsField Lots = Set.Add(new TextsField("lots", "shade lots it must be cut from; empty for any"));
    public static readonly TextsField Rolls = Set.Add(new TextsField("rolls", "rolls, or offers, it must be cut from; empty for any"));
    public static readonly TextsField Presses = Set.Add(new TextsField("presses", "presses it must be cut on; empty for any"));
    public static readonly TextsField Dies = Set.Add(new TextsField("dies", "dies it must be cut with; empty for any"));
    public static readonly DayField Day = Set.Add(
        new DayField("day", "day before whose 00:00 nothing of it is cut, and after which it is late; null for any") { OrNull = true });
    public static readonly TextsField NotLots = Set.Add(new TextsField("notLots", "shade lots it is kept from"));
    public static readonly TextsField NotRolls = Set.Add(new TextsField("notRolls", "rolls, or offers, it is kept from"));
    public static readonly TextsField NotPresses = Set.Add(new TextsField("notPresses", "presses it is kept from"));
    public static readonly TextsField NotDies = Set.Add(new TextsField("notDies", "dies it is kept from"));
    public static readonly FlagField First = Set.Add(
        new FlagField("first", "true for the rest of a job that is begun: it comes before all others on its press"));

    /// <summary>Reads them.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static OrderPins Read(JsonFields item) => new()
    {
        Lots = OrderPlanQuestion.Names(item, Lots),
        Rolls = OrderPlanQuestion.Names(item, Rolls),
        Presses = OrderPlanQuestion.Names(item, Presses),
        Dies = OrderPlanQuestion.Names(item, Dies),
        Day = item.Has(Day) ? OrderPlanQuestion.Day(item, Day) : null,
        NotLots = OrderPlanQuestion.Names(item, NotLots),
        NotRolls = OrderPlanQuestion.Names(item, NotRolls),
        NotPresses = OrderPlanQuestion.Names(item, NotPresses),
        NotDies = OrderPlanQuestion.Names(item, NotDies),
        First = item.Flag(First),
    };

    /// <summary>Writes them.</summary>
    public static void Write(JsonOutput item, OrderPins pins) => item
        .Texts(Lots, pins.Lots)
        .Texts(Rolls, pins.Rolls)
        .Texts(Presses, pins.Presses)
        .Texts(Dies, pins.Dies)
        .Text(Day, pins.Day is { } day ? OrderPlanWriter.Day(day) : null)
        .Texts(NotLots, pins.NotLots)
        .Texts(NotRolls, pins.NotRolls)
        .Texts(NotPresses, pins.NotPresses)
        .Texts(NotDies, pins.NotDies)
        .Flag(First, pins.First);
}
