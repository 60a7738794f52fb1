using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Rolls;
using static FeltNest.Files.Presses.PressDocument;

namespace FeltNest.Files.Presses;

/// <summary>Reads a press (schema feltnest/press/1).</summary>
internal static class PressReader
{
    /// <summary>The press of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static PressSpec Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The press of a text.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static PressSpec Read(InputText text)
    {
        JsonFields top = JsonFields.Top(text, PressDocument.Document);
        return new PressSpec
        {
            Name = top.Text(PressDocument.Name),
            RatedForceKn = top.Number(RatedForceKn),
            AllowedSharePercent = top.Number(AllowedSharePercent),
            Bed = BedOf(top),
            DaylightMm = top.OptionalNumber(DaylightMm),
            StrokesPerMinute = top.Number(StrokesPerMinute),
            ChangeOverMinutes = top.Number(ChangeOverMinutes),
            RollChangeMinutes = top.Number(RollChangeMinutes),
            MountedDie = top.OptionalText(MountedDie),
            Calendar = top.OptionalObject(PressDocument.Calendar) is { } calendar ? CalendarReader.Of(calendar) : null,
            Hours = top.OptionalNumber(Hours),
            MostPlies = top.Whole(Plies),
            FeedToleranceMm = top.Number(FeedToleranceMm),
            GuideToleranceMm = top.Number(GuideToleranceMm),
            Dies = DiesOf(top),
        };
    }

    private static PressBed BedOf(JsonFields top)
    {
        JsonFields bed = top.Object(Bed);
        PressBed read = new()
        {
            LengthMm = bed.Number(BedFields.LengthMm),
            WidthMm = bed.Number(BedFields.WidthMm),
            MarginMm = bed.Number(BedFields.MarginMm),
        };
        return read.BoardLengthMm > 0 && read.BoardWidthMm > 0
            ? read
            : throw bed.Fault(
                BedFields.MarginMm,
                FormattableString.Invariant($"{read.MarginMm} leaves no bed: below half of the bed's length and width is allowed"));
    }

    private static string[] DiesOf(JsonFields top)
    {
        if (!top.Has(PressDocument.Dies))
        {
            return [];
        }

        List<string> names = [];
        foreach (JsonElement item in top.Elements(PressDocument.Dies).EnumerateArray())
        {
            string? name = item.ValueKind == JsonValueKind.String ? item.GetString()!.Trim() : null;
            if (string.IsNullOrEmpty(name) || names.Contains(name) || names.Count == PressDocument.Dies.Most)
            {
                throw top.Fault(
                    PressDocument.Dies,
                    $"{OneLine.Of(item.GetRawText())} is not allowed: up to {PressDocument.Dies.Most} names of dies, each once");
            }

            names.Add(name);
        }

        return names.Count > 0
            ? [.. names]
            : throw top.Fault(PressDocument.Dies, "names no die: leave it out where every die fits that the bed takes");
    }
}
