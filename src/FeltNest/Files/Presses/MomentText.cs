using System.Globalization;

namespace FeltNest.Files.Presses;

/// <summary>Moments by the clock on the wall as they are written: 2026-03-31T14:00, a day alone, or a time of day alone.</summary>
internal static class MomentText
{
    /// <summary>What to write for a moment.</summary>
    public const string Moments = "write a day as 2026-03-31, or a moment as 2026-03-31T14:00";

    /// <summary>What to write for a time of day.</summary>
    public const string Times = "write a time of day as 06:00; 24:00 is the end of the day";

    /// <summary>A moment as it is written, to the minute.</summary>
    public static string Of(DateTime moment) => moment.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture);

    /// <summary>A time of day as it is written.</summary>
    /// <param name="hour">Hour, 0 to 48: above 24 it is of the next day.</param>
    public static string OfHour(double hour)
    {
        int minutes = (int)Math.Round(60 * (hour > 24 ? hour - 24 : hour));
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60:00}:{minutes % 60:00}");
    }

    /// <summary>The moment of a text, or null; a day alone begins at 00:00.</summary>
    public static DateTime? From(string text)
    {
        string[] parts = text.Split('T', ' ');
        double? hour = parts.Length == 2 ? HourOf(parts[1]) : 0;
        return parts.Length <= 2
            && hour is { } known
            && DateOnly.TryParseExact(parts[0], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            && day.Year is >= 2000 and <= 2199
            ? day.ToDateTime(TimeOnly.MinValue).AddMinutes(Math.Round(60 * known))
            : null;
    }

    /// <summary>The first moment after what a text says, or null; a day alone is meant whole.</summary>
    public static DateTime? Until(string text) => IsDay(text) ? From(text)?.AddDays(1) : From(text);

    /// <summary>True where a text is a day alone.</summary>
    public static bool IsDay(string text) => !text.Contains(':', StringComparison.Ordinal);

    /// <summary>The hour of a time of day, 0 to 24, or null.</summary>
    public static double? HourOf(string text)
    {
        string[] parts = text.Split(':');
        bool sound = parts is [{ Length: 1 or 2 }, { Length: 2 }] && parts.All(part => part.All(char.IsAsciiDigit));
        int minutes = sound
            ? (60 * int.Parse(parts[0], CultureInfo.InvariantCulture)) + int.Parse(parts[1], CultureInfo.InvariantCulture)
            : -1;
        return sound && minutes <= 24 * 60 && parts[1][0] < '6' ? minutes / 60.0 : null;
    }
}
