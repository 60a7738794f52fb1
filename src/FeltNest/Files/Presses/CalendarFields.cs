using FeltNest.Files.Fields;

namespace FeltNest.Files.Presses;

/// <summary>Fields of the calendar of a press.</summary>
internal static class CalendarFields
{
    /// <summary>Word of a shift of Monday to Friday.</summary>
    public const string WorkingDays = "monday-friday";

    /// <summary>Word of a shift of every day.</summary>
    public const string EveryDay = "every-day";

    /// <summary>Days of a shift.</summary>
    public static readonly string[] DayWords =
    [
        "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday", WorkingDays, EveryDay,
    ];

    // Far above what a press has.
    private const int MostShifts = 200;
    private const int MostSpans = 1000;
    private const int MostOvertime = 200;

    internal static readonly FieldSet Set = new();

    public static readonly ObjectsField Shifts = Set.Add(
        new ObjectsField("shifts", ShiftFields.Set, "hours of the week in which it runs; empty where it runs in overtime alone")
        {
            Most = MostShifts,
        });
    public static readonly ObjectsField Closed = Set.Add(
        new ObjectsField("closed", ClosedFields.Set, "holidays, repairs: times in which it does not run")
        {
            Optional = true,
            Most = MostSpans,
        });
    public static readonly ObjectsField Overtime = Set.Add(
        new ObjectsField(
            "overtime", OvertimeFields.Set,
            "times outside its shifts, or on closed days, in which it may run for a price; used where that saves days")
        {
            Optional = true,
            Most = MostOvertime,
        });

    /// <summary>Fields of <c>shifts[]</c>.</summary>
    internal static class ShiftFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WordField Day = Set.Add(new WordField("day", DayWords, "day of the week on which it begins"));
        public static readonly TextField From = Set.Add(new TextField("from", "when it begins, as 06:00"));
        public static readonly TextField To = Set.Add(
            new TextField("to", "when it ends, as 14:00 or 24:00; not later than `from`: on the next day"));
    }

    /// <summary>Fields of <c>closed[]</c>.</summary>
    internal static class ClosedFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField From = Set.Add(new TextField("from", "day as 2026-12-24, or moment as 2026-12-24T12:00"));
        public static readonly TextField To = Set.Add(
            new TextField("to", "last day, or moment at which it runs again") { Otherwise = "the day `from` alone" });
    }

    /// <summary>Fields of <c>overtime[]</c>.</summary>
    internal static class OvertimeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField From = Set.Add(new TextField("from", "moment as 2026-03-07T06:00"));
        public static readonly TextField To = Set.Add(new TextField("to", "moment as 2026-03-07T12:00"));
        public static readonly NumberField PricePerHour = Set.Add(
            new NumberField("pricePerHour", ShopRanges.Money, "what an hour of it costs beyond the usual")
            {
                Unit = "in the currency of the plan",
            });
    }
}
