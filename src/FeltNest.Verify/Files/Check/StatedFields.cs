using System.Text.Json;
using static FeltNest.InvariantText;

namespace FeltNest.Files.Check;

/// <summary>An object of a result file. Whatever is read of it counts as looked at.</summary>
internal sealed class StatedFields
{
    private readonly StatedFile file;
    private readonly JsonElement element;
    private readonly string name;
    private readonly string place;

    internal StatedFields(StatedFile file, JsonElement element, string name, string place)
    {
        (this.file, this.element, this.name, this.place) = (file, element, name, place);
        if (element.ValueKind != JsonValueKind.Object)
        {
            throw new InputException(file.Path, place, $"holds {Kind(element)} where an object {{ ... }} is wanted");
        }
    }

    /// <summary>A number that has to be there.</summary>
    /// <exception cref="InputException">Missing, or no number.</exception>
    public double Number(string field) => Optional(field) ?? throw Wrong(field, "is missing; a number is wanted");

    /// <summary>A number, or null where none is stated.</summary>
    /// <exception cref="InputException">No number.</exception>
    public double? Optional(string field)
    {
        JsonElement? value = Value(field);
        if (value is null)
        {
            return null;
        }

        if (value.Value.ValueKind == JsonValueKind.Number && double.IsFinite(value.Value.GetDouble()))
        {
            return value.Value.GetDouble();
        }

        throw Wrong(field, $"holds {Kind(value.Value)} where a number is wanted");
    }

    /// <summary>A text, or null where none is stated.</summary>
    /// <exception cref="InputException">No text.</exception>
    public string? Text(string field)
    {
        JsonElement? value = Value(field);
        if (value is null)
        {
            return null;
        }

        if (value.Value.ValueKind == JsonValueKind.String)
        {
            return value.Value.GetString();
        }

        throw Wrong(field, $"holds {Kind(value.Value)} where text is wanted");
    }

    /// <summary>A yes or no that has to be there.</summary>
    /// <exception cref="InputException">Missing, or neither.</exception>
    public bool Flag(string field) => Value(field) is { ValueKind: JsonValueKind.True or JsonValueKind.False } value
        ? value.GetBoolean()
        : throw Wrong(field, "has to be true or false");

    /// <summary>An object, or null where none is stated.</summary>
    public StatedFields? Inner(string field) =>
        Found(field) is { } value ? new StatedFields(file, value, Joined(name, field), Joined(place, field)) : null;

    /// <summary>An object that has to be there.</summary>
    public StatedFields Needed(string field) => Inner(field) ?? throw Wrong(field, "is missing; an object { ... } is wanted");

    /// <summary>The objects of a list.</summary>
    public IReadOnlyList<StatedFields> Items(string field) =>
        [.. List(field).Select((item, i) => new StatedFields(file, item, Joined(name, field), $"{Joined(place, field)}[{i}]"))];

    /// <summary>The objects of a list that may be left out.</summary>
    public IReadOnlyList<StatedFields> OptionalItems(string field) => Found(field) is null ? [] : Items(field);

    /// <summary>Rows of so many numbers each.</summary>
    /// <exception cref="InputException">A row that holds anything else.</exception>
    public IReadOnlyList<double[]> Rows(string field, int count)
    {
        file.See(Joined(name, field));
        return [.. List(field).Select((row, i) =>
            row.ValueKind == JsonValueKind.Array && row.GetArrayLength() == count
                && row.EnumerateArray().All(v => v.ValueKind == JsonValueKind.Number && double.IsFinite(v.GetDouble()))
                ? row.EnumerateArray().Select(v => v.GetDouble()).ToArray()
                : throw Wrong($"{field}[{i}]", $"has to be {count} numbers"))];
    }

    /// <summary>Holds a stated number against what was found.</summary>
    /// <param name="field">The field.</param>
    /// <param name="found">What was worked out again, or null where there is none.</param>
    /// <param name="slack">How far they may differ.</param>
    public void Same(string field, double? found, double slack)
    {
        double? stated = Optional(field);
        bool agrees = stated is null || found is null ? stated is null == found is null : Math.Abs(stated.Value - found.Value) <= slack;
        if (!agrees)
        {
            file.Report($"{Joined(place, field)} says {Word(stated)}, {Word(found)} was found");
        }
    }

    /// <summary>Holds a stated yes or no against what was found.</summary>
    public void Same(string field, bool found) => Keep(Flag(field) == found, field, $"says the opposite of {Word(found)}, which was found");

    /// <summary>Tells of a rule that is not kept.</summary>
    /// <param name="kept">Whether it is.</param>
    /// <param name="field">The field the line names.</param>
    /// <param name="told">What is wrong.</param>
    public void Keep(bool kept, string field, string told)
    {
        if (!kept)
        {
            file.Report($"{Joined(place, field)} {told}");
        }
    }

    /// <summary>Numbers of a list have to grow from item to item.</summary>
    public static void Grow(IReadOnlyList<StatedFields> items, string field)
    {
        for (int i = 0; i < items.Count; i++)
        {
            double here = items[i].Number(field);
            items[i].Keep(i == 0 || here > items[i - 1].Number(field), field, Invariant($"says {here:0.######} and does not grow"));
        }
    }

    internal static string Joined(string name, string field) => name.Length == 0 ? field : $"{name}.{field}";

    private IEnumerable<JsonElement> List(string field) => Value(field) switch
    {
        null => throw Wrong(field, "is missing; a list [ ... ] is wanted"),
        { ValueKind: JsonValueKind.Array } list => list.GetArrayLength() == 0 ? Seen(field) : list.EnumerateArray(),
        { } other => throw Wrong(field, $"holds {Kind(other)} where a list [ ... ] is wanted"),
    };

    private IEnumerable<JsonElement> Seen(string field)
    {
        file.See(Joined(name, field));
        return [];
    }

    private JsonElement? Value(string field)
    {
        JsonElement? found = Found(field);
        if (found is not { ValueKind: JsonValueKind.Array or JsonValueKind.Object })
        {
            file.See(Joined(name, field));
        }

        return found;
    }

    private JsonElement? Found(string field) =>
        element.TryGetProperty(field, out JsonElement value) && value.ValueKind != JsonValueKind.Null ? value : null;

    private InputException Wrong(string field, string problem) => new(file.Path, Joined(place, field), problem);

    private static string Word(double? value) => value is { } number ? Invariant($"{number:0.######}") : "nothing";

    private static string Word(bool value) => value ? "true" : "false";

    private static string Kind(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Number => "a number",
        JsonValueKind.String => "text",
        JsonValueKind.Array => "a list",
        JsonValueKind.Object => "an object",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };
}
