using System.Globalization;

namespace FeltNest.Cli;

/// <summary>The clock on the wall and the name at the door: read once a command, and only where nobody stated them.</summary>
internal static class DeskClock
{
    /// <summary>How a moment is written.</summary>
    public const string Form = "yyyy-MM-ddTHH:mm:ss";

    /// <summary>Now.</summary>
    public static string Now() => DateTime.Now.ToString(Form, CultureInfo.InvariantCulture);

    /// <summary>Who is logged in.</summary>
    public static string Login() => Environment.UserName is { Length: > 0 } name ? name : "unknown";

    /// <summary>A moment of a text: a day, or a day and a time; null where it is none.</summary>
    public static string? Read(string text) => DateTime.TryParseExact(
        text, ["yyyy-MM-dd", "yyyy-MM-ddTHH:mm", Form], CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime at)
        ? at.ToString(Form, CultureInfo.InvariantCulture)
        : null;
}
