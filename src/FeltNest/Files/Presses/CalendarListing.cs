using FeltNest.Files.Fields;

namespace FeltNest.Files.Presses;

/// <summary>Columns of a list of the calendars of all presses.</summary>
internal static class CalendarListing
{
    /// <summary>Word for a shift of every week.</summary>
    public const string Shift = "shift";

    /// <summary>Word for a time in which a press does not run.</summary>
    public const string Closed = "closed";

    /// <summary>Word for a time in which it may run for a price.</summary>
    public const string Overtime = "overtime";

    private static readonly FieldSet Columns = new();

    /// <summary>The list.</summary>
    public static readonly Listing Listing = new("calendar", Columns);

    public static readonly TextField Press = Columns.Add(
        new TextField("press", "press") { Allowed = "a press of the plan", Otherwise = "all presses" });
    public static readonly WordField Kind = Columns.Add(new WordField("kind", [Shift, Closed, Overtime], "what the line says"));
    public static readonly WordField Day = Columns.Add(
        new WordField("day", CalendarFields.DayWords, "day of the week on which a shift begins")
        {
            Otherwise = "required for a shift",
        });
    public static readonly TextField From = Columns.Add(
        new TextField("from", "of a shift a time as 06:00; else a day as 2026-12-24 or a moment as 2026-12-24T12:00"));
    public static readonly TextField To = Columns.Add(
        new TextField("to", "its end; of a shift not later than `from`: on the next day")
        {
            Otherwise = "of a closed day: the day `from` alone",
        });
    public static readonly NumberField PricePerHour = Columns.Add(
        new NumberField("pricePerHour", ShopRanges.Money, "what an hour of overtime costs beyond the usual")
        {
            Unit = "in the currency of the plan",
            Otherwise = "required for overtime",
        });
}
