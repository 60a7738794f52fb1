using System.Text.Json;

namespace FeltNest.Files.Json;

/// <summary>Single values of a JSON text.</summary>
internal static class JsonValues
{
    /// <summary>A finite number at a place named by its path.</summary>
    public static double NumberOf(JsonElement value, string file, string place)
    {
        if (value.ValueKind != JsonValueKind.Number)
        {
            string hint = value.ValueKind == JsonValueKind.String && value.GetString()!.Contains(',')
                ? " (decimal mark is the point, without quotes)"
                : string.Empty;
            throw new InputException(file, place, $"is {KindName(value)} where a number is wanted{hint}");
        }

        return value.TryGetDouble(out double number) && double.IsFinite(number)
            ? number
            : throw new InputException(file, place, $"{OneLine.Of(value.GetRawText())} is too large to be a number");
    }

    /// <summary>What a value is, in words, with the value where that is short.</summary>
    public static string KindName(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => $"the text {Quoted(value)}",
        JsonValueKind.Number => $"the number {OneLine.Of(value.GetRawText())}",
        JsonValueKind.True or JsonValueKind.False => value.GetRawText(),
        JsonValueKind.Array => "a list",
        JsonValueKind.Object => "an object",
        _ => "null",
    };

    /// <summary>A value as it stands in the file, cut where it is long.</summary>
    public static string Quoted(JsonElement value) => OneLine.Of(value.GetRawText());
}
