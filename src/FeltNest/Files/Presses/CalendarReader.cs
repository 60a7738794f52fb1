using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Rolls.Orders.Clock;
using static FeltNest.Files.Presses.CalendarFields;

namespace FeltNest.Files.Presses;

/// <summary>Reads the calendar of a press from JSON.</summary>
internal static class CalendarReader
{
    /// <summary>The calendar of an object.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static PressCalendar Of(JsonFields calendar)
    {
        IReadOnlyList<JsonFields> overtime = calendar.OptionalObjects(CalendarFields.Overtime);
        PressCalendar read = new()
        {
            Shifts = [.. calendar.Objects(Shifts).SelectMany(Shift)],
            Closed = [.. calendar.OptionalObjects(Closed).Select(ClosedOf)],
            Overtime = [.. overtime.Select(OvertimeOf)],
        };
        return CalendarParts.Overlap(read.Overtime) is { } twice
            ? throw calendar.Fault(
                CalendarFields.Overtime, $"has two that overlap at {MomentText.Of(twice.From)}: an hour has one price")
            : read;
    }

    private static IEnumerable<WeekShift> Shift(JsonFields item) => CalendarParts.Shifts(
        item.Word(ShiftFields.Day), item.Text(ShiftFields.From), item.Text(ShiftFields.To), In(item, ShiftFields.From, ShiftFields.To));

    private static ClosedSpan ClosedOf(JsonFields item) => CalendarParts.Closed(
        item.Text(ClosedFields.From), item.OptionalText(ClosedFields.To), In(item, ClosedFields.From, ClosedFields.To));

    private static OvertimeSpan OvertimeOf(JsonFields item) => CalendarParts.Overtime(
        item.Text(OvertimeFields.From), item.Text(OvertimeFields.To), item.Amount(OvertimeFields.PricePerHour),
        In(item, OvertimeFields.From, OvertimeFields.To));

    private static CalendarParts.Fault In(JsonFields item, Field from, Field to) =>
        (end, problem) => item.Fault(end ? to : from, problem);
}
