using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Rolls;

namespace FeltNest.Files.Presses;

/// <summary>Reads a press (schema feltnest/press/1).</summary>
public static class PressReader
{
    // Most dies that one press names.
    private const int MostDies = 1000;

    /// <summary>The press of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static PressSpec Read(string path)
    {
        JsonElement root = JsonInput.ReadObject(path);
        JsonInput.SchemaOf(root, path, SchemaName.Press);
        JsonFields top = JsonFields.Top(
            path, root, "schema", "name", "ratedForceKn", "allowedSharePercent", "bed", "daylightMm", "strokesPerMinute",
            "changeOverMinutes", "hours", "plies",
            "feedToleranceMm", "guideToleranceMm", "dies");
        return new PressSpec(
            top.Text("name"), top.Within("ratedForceKn", 1, 20_000),
            top.Has("allowedSharePercent") ? top.Within("allowedSharePercent", 1, 100) : PressSpec.UsualSharePercent,
            Bed(top), top.Has("daylightMm") ? top.Within("daylightMm", 1, 2000) : null, top.Within("strokesPerMinute", 0.1, 600),
            top.Within("changeOverMinutes", 0, 10_000),
            top.Has("hours") ? top.Within("hours", 0, 100_000) : null, top.Has("plies") ? top.WholeWithin("plies", 1, 100) : 1,
            top.Within("feedToleranceMm", 0, 20), top.Within("guideToleranceMm", 0, 20), Dies(top));
    }

    private static PressBed Bed(JsonFields top)
    {
        JsonFields bed = top.Object("bed", "lengthMm", "widthMm", "marginMm");
        PressBed read = new(bed.Within("lengthMm", 20, 10_000), bed.Within("widthMm", 20, 10_000), bed.Within("marginMm", 0, 500));
        return read.BoardLengthMm > 0 && read.BoardWidthMm > 0
            ? read : throw bed.Fault(
                "marginMm",
                FormattableString.Invariant($"{read.MarginMm} leaves no bed: below half of the bed's length and width is allowed"));
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
}
