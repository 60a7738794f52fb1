using FeltNest.Files.Json;
using FeltNest.Rolls.Orders.Clock;
using static FeltNest.Files.Presses.CalendarFields;

namespace FeltNest.Files.Presses;

/// <summary>Writes the calendar of a press as JSON.</summary>
internal static class CalendarWriter
{
    /// <summary>Writes its fields.</summary>
    public static void Write(JsonOutput json, PressCalendar calendar) => json
        .Objects(Shifts, calendar.Shifts, (item, shift) => item
            .Text(ShiftFields.Day, DayWords.First(word => word.Equals(shift.Day.ToString(), StringComparison.OrdinalIgnoreCase)))
            .Text(ShiftFields.From, MomentText.OfHour(shift.FromHour))
            .Text(ShiftFields.To, MomentText.OfHour(shift.ToHour)))
        .Objects(Closed, calendar.Closed, (item, span) => item
            .Text(ClosedFields.From, MomentText.Of(span.From))
            .Text(ClosedFields.To, MomentText.Of(span.To)))
        .Objects(CalendarFields.Overtime, calendar.Overtime, (item, span) => item
            .Text(OvertimeFields.From, MomentText.Of(span.From))
            .Text(OvertimeFields.To, MomentText.Of(span.To))
            .Number(OvertimeFields.PricePerHour, (double)span.PricePerHour));
}
