using System.Text.Json;

namespace FeltNest.Files.Json;

/// <summary>The fields of one JSON object, read strictly: a field that is not known is an error, and every error names the file and the
/// path.</summary>
internal sealed class JsonFields
{
    // Far above any sound amount, far below where sums of amounts cannot be held.
    private const double MostAmount = 1e12;

    /// <summary>Most strikes, balls or panels: as many as a die may last, so that sums of whole lists can be held.</summary>
    internal const int MostCount = 1_000_000_000;

    private readonly string file;
    private readonly string path;
    private readonly JsonElement element;

    private JsonFields(string file, string path, JsonElement element)
    {
        this.file = file;
        this.path = path;
        this.element = element;
    }

    /// <summary>The top-level object of an input; <c>$schema</c>, <c>sources</c> and <c>assumptions</c> are allowed beside the known
    /// fields.</summary>
    public static JsonFields Top(string file, JsonElement root, params string[] known) =>
        new JsonFields(file, string.Empty, root).OnlyKnown([.. known, "$schema", "sources", "assumptions"]);

    /// <summary>Path of a field of this object.</summary>
    public string PathOf(string name) => path.Length == 0 ? name : $"{path}.{name}";

    /// <summary>An error about a field of this object.</summary>
    public InputException Fault(string name, string problem) => new(file, PathOf(name), problem);

    /// <summary>True when the field is there and not null.</summary>
    public bool Has(string name) => element.TryGetProperty(name, out JsonElement value) && value.ValueKind != JsonValueKind.Null;

    /// <summary>A field that must be there and not null.</summary>
    public JsonElement Required(string name) => !element.TryGetProperty(name, out JsonElement value)
        ? throw Fault(name, "is missing")
        : value.ValueKind == JsonValueKind.Null ? throw Fault(name, "is null where a value is wanted") : value;

    /// <summary>An object field with its known fields.</summary>
    public JsonFields Object(string name, params string[] known)
    {
        JsonElement value = Required(name);
        return value.ValueKind == JsonValueKind.Object
            ? new JsonFields(file, PathOf(name), value).OnlyKnown(known)
            : throw Fault(name, $"is {KindName(value)} where an object {{ ... }} is wanted");
    }

    /// <summary>The objects of an array field, each with its known fields.</summary>
    public IReadOnlyList<JsonFields> Objects(string name, params string[] known)
    {
        List<JsonFields> items = [];
        foreach (JsonElement item in Array(name).EnumerateArray())
        {
            string place = $"{PathOf(name)}[{items.Count}]";
            items.Add(item.ValueKind == JsonValueKind.Object
                ? new JsonFields(file, place, item).OnlyKnown(known)
                : throw new InputException(file, place, $"is {KindName(item)} where an object {{ ... }} is wanted"));
        }

        return items;
    }

    /// <summary>The objects of an array field that may hold so many and no more.</summary>
    public IReadOnlyList<JsonFields> ObjectsUpTo(int most, string name, params string[] known)
    {
        int count = Array(name).GetArrayLength();
        return count <= most ? Objects(name, known) : throw Fault(name, $"has {count} entries: at most {most} are allowed");
    }

    /// <summary>The objects of an array field by a text that each has for itself.</summary>
    /// <param name="most">Most entries.</param>
    /// <param name="name">The field.</param>
    /// <param name="valueOf">What is kept of an object.</param>
    /// <param name="known">Fields of an object; the first is the text.</param>
    public Dictionary<string, T> ByName<T>(int most, string name, Func<JsonFields, T> valueOf, params string[] known)
    {
        Dictionary<string, T> found = [];
        foreach (JsonFields item in ObjectsUpTo(most, name, known))
        {
            if (!found.TryAdd(item.Text(known[0]), valueOf(item)))
            {
                throw item.Fault(known[0], $"'{item.Text(known[0])}' stands in the list twice");
            }
        }

        return found;
    }

    /// <summary>An array field.</summary>
    public JsonElement Array(string name)
    {
        JsonElement value = Required(name);
        return value.ValueKind == JsonValueKind.Array ? value : throw Fault(name, $"is {KindName(value)} where a list [ ... ] is wanted");
    }

    /// <summary>A finite number.</summary>
    public double Number(string name) => NumberOf(Required(name), file, PathOf(name));

    /// <summary>A finite number, or null when the field is null or not there.</summary>
    public double? OptionalNumber(string name) => Has(name) ? Number(name) : null;

    /// <summary>An amount of money that a plan may hold, to the digits of a number.</summary>
    public decimal Amount(string name) => Math.Abs(Number(name)) <= MostAmount
        ? (decimal)Number(
            name) : throw Fault(name, FormattableString.Invariant($"{Number(name):R} is outside -{MostAmount:R} to {MostAmount:R}"));

    /// <summary>A whole number.</summary>
    public int Whole(string name)
    {
        JsonElement value = Required(name);
        return value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out int whole)
            ? whole
            : throw Fault(name, $"{Quoted(value)} is not a whole number");
    }

    /// <summary>A finite number within a range.</summary>
    public double Within(string name, double low, double high) => Number(name) is var value && value >= low && value <= high
        ? value : throw Fault(name, FormattableString.Invariant($"{value:R} is outside {low} to {high}"));

    /// <summary>A whole number within a range.</summary>
    public int WholeWithin(string name, int low, int high) => Whole(name) is var value && value >= low && value <= high
        ? value : throw Fault(name, $"{value} is outside {low} to {high}");

    /// <summary>How many there are of something, 0 to <see cref="MostCount"/>.</summary>
    public int Count(string name) => WholeWithin(name, 0, MostCount);

    /// <summary>True or false.</summary>
    public bool Flag(string name) => Required(name).ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => throw Fault(name, $"is {KindName(Required(name))} where true or false is wanted"),
    };

    /// <summary>A text that is not blank.</summary>
    public string Text(string name)
    {
        JsonElement value = Required(name);
        string text = value.ValueKind == JsonValueKind.String
            ? value.GetString()!
            : throw Fault(name, $"is {KindName(value)} where a text is wanted");
        return string.IsNullOrWhiteSpace(text) ? throw Fault(name, "is blank: give it a name") : OneLine.Of(text);
    }

    /// <summary>One of the words of an enumeration.</summary>
    public T Word<T>(string name)
        where T : struct, Enum
    {
        string word = Text(name);
        return EnumWord.Find<T>(word)
            ?? throw Fault(
                name, $"'{word}' is not known; allowed: {string.Join(", ", EnumWord.All<T>())}{NearestWord.Hint(word, EnumWord.All<T>())}");
    }

    /// <summary>A number or, for the one word allowed, null.</summary>
    public double? NumberOr(string name, string word)
    {
        JsonElement value = Required(name);
        return value.ValueKind switch
        {
            JsonValueKind.String when value.GetString() == word => null,
            JsonValueKind.Number => Number(name),
            _ => throw Fault(name, $"{Quoted(value)} is not allowed: a number of degrees or \"{word}\""),
        };
    }

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

    private static string Quoted(JsonElement value) => OneLine.Of(value.GetRawText());

    private JsonFields OnlyKnown(string[] known)
    {
        foreach (JsonProperty field in element.EnumerateObject())
        {
            if (System.Array.IndexOf(known, field.Name) < 0)
            {
                // A field that is still missing is the likelier word.
                string hint = NearestWord.Hint(field.Name, known.Where(name => !element.TryGetProperty(name, out _)));
                hint = hint.Length > 0 ? hint : NearestWord.Hint(field.Name, known);
                throw new InputException(
                    file, PathOf(OneLine.Of(field.Name)), $"is not a known field{hint}; known here: {string.Join(", ", known)}");
            }
        }

        return this;
    }
}
