using FeltNest.Rolls.Orders.Clock;
using static FeltNest.Files.Presses.CalendarFields;

namespace FeltNest.Files.Presses;

/// <summary>Reads the parts of a calendar from their texts, wherever they stand.</summary>
internal static class CalendarParts
{
    /// <summary>Tells what is wrong with where a part begins or ends.</summary>
    /// <param name="end">True for its end.</param>
    /// <param name="problem">What is wrong.</param>
    internal delegate InputException Fault(bool end, string problem);

    /// <summary>The shifts of a word for days: one for each day.</summary>
    public static IEnumerable<WeekShift> Shifts(string day, string from, string to, Fault fault)
    {
        double begin = MomentText.HourOf(from) is { } first && first < 24
            ? first
            : throw fault(false, $"'{from}' is not allowed: {MomentText.Times}, and a shift begins before it");
        double end = MomentText.HourOf(to) ?? throw fault(true, $"'{to}' is not allowed: {MomentText.Times}");
        return [.. Days(day).Select(one => new WeekShift { Day = one, FromHour = begin, ToHour = end > begin ? end : end + 24 })];
    }

    /// <summary>A closed time; without an end the whole day at which it begins.</summary>
    public static ClosedSpan Closed(string from, string? to, Fault fault)
    {
        if (to is null && !MomentText.IsDay(from))
        {
            throw fault(true, "is missing: a time that begins at a moment needs its end; only a whole day may stand alone");
        }

        (DateTime begin, DateTime end) = Ends(from, to ?? from, fault);
        return new ClosedSpan { From = begin, To = end };
    }

    /// <summary>An overtime.</summary>
    public static OvertimeSpan Overtime(string from, string to, decimal price, Fault fault)
    {
        (DateTime begin, DateTime end) = Ends(from, to, fault);
        return new OvertimeSpan { From = begin, To = end, PricePerHour = price };
    }

    /// <summary>The first overtime that lies over another one, or null.</summary>
    public static OvertimeSpan? Overlap(IReadOnlyList<OvertimeSpan> overtime) =>
        overtime.Where((span, i) => overtime.Take(i).Any(other => span.From < other.To && other.From < span.To)).FirstOrDefault();

    private static (DateTime From, DateTime To) Ends(string from, string to, Fault fault)
    {
        DateTime begin = MomentText.From(from) ?? throw fault(false, $"'{from}' is not allowed: {MomentText.Moments}");
        DateTime end = MomentText.Until(to) ?? throw fault(true, $"'{to}' is not allowed: {MomentText.Moments}");
        return end > begin ? (begin, end) : throw fault(true, $"'{to}' is not after '{from}'");
    }

    private static DayOfWeek[] Days(string word) => word switch
    {
        WorkingDays => [.. Enumerable.Range(1, 5).Select(day => (DayOfWeek)day)],
        EveryDay => Enum.GetValues<DayOfWeek>(),
        _ => [Enum.Parse<DayOfWeek>(word, ignoreCase: true)],
    };
}
