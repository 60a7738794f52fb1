using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Rolls.Presses;

namespace FeltNest.Files.Presses;

/// <summary>Reads a press (schema feltnest/press/1).</summary>
public static class PressReader
{
    // Common practice, no source: the rest of the rating is for a dull edge and a high spot.
    private const double UsualSharePercent = 80;

    // Most dies that one press names.
    private const int MostDies = 1000;

    /// <summary>The press of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static PressSpec Read(string path)
    {
        JsonElement root = JsonInput.ReadObject(path);
        JsonInput.SchemaOf(root, path, SchemaName.Press);
        JsonFields top = JsonFields.Top(
            path, root, "schema", "name", "ratedForceKn", "allowedSharePercent", "bed", "daylightMm", "strokesPerMinute", "changeOverMinutes", "hours", "plies",
            "feedToleranceMm", "guideToleranceMm", "dies");
        return new PressSpec(
            top.Text("name"), Within(top, "ratedForceKn", 1, 20_000), top.Has("allowedSharePercent") ? Within(top, "allowedSharePercent", 1, 100) : UsualSharePercent,
            Bed(top), top.Has("daylightMm") ? Within(top, "daylightMm", 1, 2000) : null, Within(top, "strokesPerMinute", 0.1, 600), Within(top, "changeOverMinutes", 0, 10_000),
            top.Has("hours") ? Within(top, "hours", 0, 100_000) : null, top.Has("plies") ? Whole(top, "plies", 1, 100) : 1,
            Within(top, "feedToleranceMm", 0, 20), Within(top, "guideToleranceMm", 0, 20), Dies(top));
    }

    private static PressBed Bed(JsonFields top)
    {
        JsonFields bed = top.Object("bed", "lengthMm", "widthMm", "marginMm");
        PressBed read = new(Within(bed, "lengthMm", 20, 10_000), Within(bed, "widthMm", 20, 10_000), Within(bed, "marginMm", 0, 500));
        return read.BoardLengthMm > 0 && read.BoardWidthMm > 0
            ? read : throw bed.Fault("marginMm", FormattableString.Invariant($"{read.MarginMm} leaves no bed: below half of the bed's length and width is allowed"));
    }

    private static string[] Dies(JsonFields top)
    {
        if (!top.Has("dies"))
        {
            return [];
        }

        List<string> names = [];
        foreach (JsonElement item in top.Array("dies").EnumerateArray())
        {
            string? name = item.ValueKind == JsonValueKind.String ? item.GetString()!.Trim() : null;
            if (string.IsNullOrEmpty(name) || names.Contains(name) || names.Count == MostDies)
            {
                throw top.Fault("dies", $"{OneLine.Of(item.GetRawText())} is not allowed: up to {MostDies} names of dies, each once");
            }

            names.Add(name);
        }

        return names.Count > 0 ? [.. names] : throw top.Fault("dies", "names no die: leave it out where every die fits that the bed takes");
    }

    private static double Within(JsonFields fields, string name, double low, double high) => fields.Number(name) is var value && value >= low && value <= high
        ? value : throw fields.Fault(name, FormattableString.Invariant($"{value:R} is outside {low} to {high}"));

    private static int Whole(JsonFields fields, string name, int low, int high) => fields.Whole(name) is var value && value >= low && value <= high
        ? value : throw fields.Fault(name, $"{value} is outside {low} to {high}");
}
