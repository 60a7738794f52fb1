using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace FeltNest.Files.Balls;

/// <summary>Puts fields that are given beside a ball file into its text, so that the one reader checks them like any other.</summary>
internal static class ChangedBall
{
    /// <summary>The file's object with the changes in it; the object itself where there are none.</summary>
    /// <param name="root">The file's object.</param>
    /// <param name="file">The file, for messages.</param>
    /// <param name="changes">What goes before the file.</param>
    /// <exception cref="InputException">A path that is none, a field given twice, or one that holds more than a value.</exception>
    public static JsonElement Of(JsonElement root, string file, IReadOnlyList<BallChange> changes)
    {
        if (changes.Count == 0)
        {
            return root;
        }

        JsonObject top = JsonObject.Create(root)!.DeepClone().AsObject();
        foreach (BallChange change in changes)
        {
            if (changes.Count(other => other.Field == change.Field) > 1)
            {
                throw new InputException(file, change.Field, "is given twice beside the file: give it once");
            }

            Put(top, file, change);
        }

        return JsonSerializer.SerializeToElement(top);
    }

    private static void Put(JsonObject top, string file, BallChange change)
    {
        string[] steps = change.Field.Split('.');
        if (Array.Exists(steps, step => step.Trim().Length == 0))
        {
            throw new InputException(
                file, OneLine.Of(change.Field), "is no field of a ball file: write its path, such as core.outerDiameterMm");
        }

        JsonObject at = top;
        foreach (string step in steps[..^1])
        {
            // An object the file leaves out, such as tolerances, is begun; one of a wrong name is told by the reader.
            at[step] ??= new JsonObject();
            at = at[step] as JsonObject
                ?? throw new InputException(file, OneLine.Of(change.Field), $"is no field of a ball file: {step} holds no fields");
        }

        if (at[steps[^1]] is JsonObject or JsonArray)
        {
            throw new InputException(
                file, OneLine.Of(change.Field), "holds more than one value: give one field inside it, or write it in the file");
        }

        // A name is a text even where it is all digits.
        at[steps[^1]] = steps[^1] == "name" ? JsonValue.Create(change.Value) : Value(change.Value);
    }

    private static JsonValue Value(string text)
    {
        const NumberStyles plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        return double.TryParse(text, plain, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number)
            ? JsonValue.Create(number)
            : JsonValue.Create(text);
    }
}
