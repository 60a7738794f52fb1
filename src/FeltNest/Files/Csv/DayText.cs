using System.Globalization;
using System.Text.RegularExpressions;

namespace FeltNest.Files.Csv;

/// <summary>Days as sheets write them, brought to 2026-03-31; what could be another day is never guessed.</summary>
internal static partial class DayText
{
    /// <summary>The day of a text written year first, or null.</summary>
    public static DateOnly? Of(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            && day.Year is >= 2000 and <= 2199
            ? day
            : null;

    /// <summary>A text with its day written year first, where the order is known, and without a time of nought; seconds of nought are left
    /// out. Every other text stays as it is.</summary>
    public static string YearFirst(string text, DayOrder? order)
    {
        Match found = Moment().Match(text);
        if (!found.Success)
        {
            return text;
        }

        string day = found.Groups["day"].Value;
        if (Turned().Match(day) is { Success: true } turned)
        {
            if (order is not { } known)
            {
                return text;
            }

            (string first, string second) = (turned.Groups[1].Value.PadLeft(2, '0'), turned.Groups[2].Value.PadLeft(2, '0'));
            day = $"{turned.Groups[3].Value}-{(known == DayOrder.Dmy ? $"{second}-{first}" : $"{first}-{second}")}";
        }

        string time = found.Groups["time"].Value;
        return time is "" or "00:00" or "0:00" ? day : $"{day}T{time}";
    }

    /// <summary>Whether a text is a day that is not written year first.</summary>
    public static bool IsTurned(string text) =>
        Moment().Match(text) is { Success: true } found && Turned().IsMatch(found.Groups["day"].Value);

    [GeneratedRegex(@"^(?<day>\d{4}-\d\d-\d\d|\d{1,2}[./-]\d{1,2}[./-]\d{4})(?:[T ](?<time>\d{1,2}:\d\d)(?::00(?:\.0+)?)?)?$")]
    private static partial Regex Moment();

    [GeneratedRegex(@"^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$")]
    private static partial Regex Turned();
}
