using System.Globalization;
using ExcelDataReader;

namespace FeltNest.Files.Csv;

/// <summary>The text of a cell of a workbook as a list in CSV would hold it.</summary>
internal static class WorkbookCell
{
    // Greatest number that is written without an exponent.
    private const double MostPlain = 1e15;

    /// <summary>The text: days as 2026-03-31, moments as 2026-03-31T14:00, times as 06:00, numbers with a point.</summary>
    public static string Text(IExcelDataReader reader, int at) => reader.GetValue(at) switch
    {
        null => string.Empty,
        string text => text,
        bool flag => flag ? "yes" : "no",
        DateTime moment => Moment(moment),
        TimeSpan time => string.Create(CultureInfo.InvariantCulture, $"{(int)time.TotalHours:00}:{time.Minutes:00}"),
        double number => Number(number, reader.GetNumberFormatString(at)),
        var other => Convert.ToString(other, CultureInfo.InvariantCulture) ?? string.Empty,
    };

    // A time of day alone counts from the day before the first one of the sheet's calendar.
    private static string Moment(DateTime moment) => (moment.Year < 1901, moment.TimeOfDay.Ticks == 0) switch
    {
        (true, _) => moment.ToString("HH:mm", CultureInfo.InvariantCulture),
        (false, true) => moment.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        _ => moment.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture),
    };

    // As the sheet shows it: with a sign of per cent, which no column takes, rather than a hundred times too small; with zeros before a
    // name that is kept as a number.
    private static string Number(double number, string? format)
    {
        if (format?.Contains('%') == true)
        {
            return Plain(100 * number) + "%";
        }

        return format is { Length: > 1 } && format.All(c => c == '0')
            ? number.ToString(format, CultureInfo.InvariantCulture)
            : Plain(number);
    }

    private static string Plain(double number) => Math.Abs(number) < MostPlain
        ? ((decimal)number).ToString("0.###############", CultureInfo.InvariantCulture)
        : number.ToString("R", CultureInfo.InvariantCulture);
}
