using FeltNest.Files.Csv;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders.Clock;
using static FeltNest.Files.Presses.CalendarListing;

namespace FeltNest.Files.Presses;

/// <summary>Reads a list of the calendars of all presses (CSV).</summary>
/// <remarks>Shifts of a press's own lines come before those of lines for all presses, and these before those of its press file. Closed
/// times and overtime of all three add up.</remarks>
internal static class CalendarListReader
{
    /// <summary>Most lines of one list.</summary>
    public const int MostLines = 2000;

    /// <summary>Presses with what a file says of them.</summary>
    /// <param name="path">The file.</param>
    /// <param name="presses">The presses.</param>
    /// <param name="hoursPerDay">Hours of a usual day, for a press without shifts.</param>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<PressSpec> Read(string path, IReadOnlyList<PressSpec> presses, double hoursPerDay) =>
        Read(InputText.OfFile(path), presses, hoursPerDay);

    /// <summary>Presses with what a text says of them.</summary>
    /// <param name="text">The text.</param>
    /// <param name="presses">The presses.</param>
    /// <param name="hoursPerDay">Hours of a usual day, for a press without shifts.</param>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<PressSpec> Read(InputText text, IReadOnlyList<PressSpec> presses, double hoursPerDay)
    {
        string[] names = [.. presses.Select(press => press.Name)];
        int count = 0;
        IReadOnlyList<Line> lines = CsvTable.Read(text, Listing).Each(row => ++count <= MostLines
            ? Read(row, names)
            : throw row.TooMany(Kind, $"is one line too many: at most {MostLines} are read"));
        return [.. presses.Select(press => press with { Calendar = Calendar(press, lines, hoursPerDay) })];
    }

    private static PressCalendar Calendar(PressSpec press, IReadOnlyList<Line> lines, double hoursPerDay)
    {
        Line[] own = [.. lines.Where(line => line.Press == press.Name)];
        Line[] mine = [.. lines.Where(line => line.Press is null || line.Press == press.Name)];
        PressCalendar stated = press.Calendar ?? PressCalendar.Usual(hoursPerDay);
        WeekShift[][] shifts =
        [
            [.. own.SelectMany(line => line.Shifts)], [.. mine.SelectMany(line => line.Shifts)], [.. stated.Shifts],
        ];
        List<OvertimeSpan> overtime = [.. stated.Overtime];
        foreach (Line line in mine)
        {
            overtime.AddRange(line.Overtime is { } span ? [span] : []);
            if (CalendarParts.Overlap(overtime) is { } twice)
            {
                throw line.Row.Fault(
                    From, $"press {press.Name} has two overtimes that overlap at {MomentText.Of(twice.From)}: an hour has one price");
            }
        }

        return new PressCalendar
        {
            Shifts = Array.Find(shifts, some => some.Length > 0) ?? [],
            Closed = [.. stated.Closed, .. mine.Select(line => line.Closed).OfType<ClosedSpan>()],
            Overtime = overtime,
        };
    }

    private static Line Read(CsvRow row, string[] presses)
    {
        string? press = row.OptionalText(Press);
        if (press is not null && !presses.Contains(press))
        {
            throw row.Fault(
                Press, $"'{press}' is no press of this plan: there are {string.Join(", ", presses)}{NearestWord.Hint(press, presses)}");
        }

        string kind = row.Word(Kind);
        Line line = new(row, press, [], null, null);
        return kind switch
        {
            Shift => line with { Shifts = [.. CalendarParts.Shifts(Wanted(row), row.Text(From), End(row), Fault(row))] },
            Closed => line with { Closed = CalendarParts.Closed(row.Moment(From), row.Has(To) ? row.Moment(To) : null, Fault(row)) },
            _ => line with { Overtime = CalendarParts.Overtime(row.Moment(From), End(row), Price(row), Fault(row)) },
        };
    }

    private static string Wanted(CsvRow row) =>
        row.OptionalWord(Day) ?? throw row.Fault(Day, "is blank: a shift begins on a day of the week");

    private static string End(CsvRow row) =>
        row.Has(To) ? row.Moment(To) : throw row.Fault(To, "is blank: only a closed day may stand without an end");

    private static decimal Price(CsvRow row) => row.Has(PricePerHour)
        ? row.Money(PricePerHour)
        : throw row.Fault(PricePerHour, "is blank: say what an hour of overtime costs, 0 where it costs nothing");

    private static CalendarParts.Fault Fault(CsvRow row) => (end, problem) => row.Fault(end ? To : From, problem);

    // What one line says.
    private sealed record Line(
        CsvRow Row, string? Press, IReadOnlyList<WeekShift> Shifts, ClosedSpan? Closed, OvertimeSpan? Overtime);
}
