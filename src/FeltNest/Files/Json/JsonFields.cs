using System.Text.Json;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Json;

/// <summary>The fields of one JSON object, read strictly by their description: a field that is not known is an error, and every error names
/// the file and the path.</summary>
internal sealed class JsonFields
{
    private readonly string file;
    private readonly string path;
    private readonly JsonElement element;

    private JsonFields(string file, string path, JsonElement element)
    {
        this.file = file;
        this.path = path;
        this.element = element;
    }

    /// <summary>The top-level object of a text of one kind.</summary>
    /// <exception cref="InputException">It is no JSON, of another kind, or has a field that is not known.</exception>
    public static JsonFields Top(InputText text, Document document) => Top(text.Name, JsonInput.ReadObject(text), document);

    /// <summary>The top-level object of a file of one kind, read already.</summary>
    /// <exception cref="InputException">It is of another kind, or has a field that is not known.</exception>
    public static JsonFields Top(string file, JsonElement root, Document document)
    {
        JsonInput.SchemaOf(root, file, document.Schema);
        return new JsonFields(file, string.Empty, root).OnlyKnown(document.Known);
    }

    /// <summary>Path of a field of this object.</summary>
    public string PathOf(Field field) => PathOf(field.Name);

    /// <summary>An error about a field of this object.</summary>
    public InputException Fault(Field field, string problem) => Fault(field.Name, problem);

    /// <summary>True when the field is there and not null.</summary>
    public bool Has(Field field) => Has(field.Name);

    /// <summary>A field that must be there and not null.</summary>
    public JsonElement Required(Field field) => Required(field.Name);

    /// <summary>An object field.</summary>
    public JsonFields Object(ObjectField field) => Object(field.Name, field.Fields.Names);

    /// <summary>An object field, or null where it is left out.</summary>
    public JsonFields? OptionalObject(ObjectField field) => Has(field) ? Object(field) : null;

    /// <summary>What stands there for a field that holds a whole document.</summary>
    public JsonElement Inner(DocumentField field)
    {
        JsonElement value = Required(field);
        return value.ValueKind == JsonValueKind.Object
            ? value
            : throw Fault(field, $"is {JsonValues.KindName(value)} where an object {{ ... }} is wanted");
    }

    /// <summary>The objects of a list; at most as many as it may hold.</summary>
    public IReadOnlyList<JsonFields> Objects(ObjectsField field)
    {
        List<JsonFields> items = [];
        foreach (JsonElement item in Array(field).EnumerateArray())
        {
            string place = $"{PathOf(field)}[{items.Count}]";
            items.Add(item.ValueKind == JsonValueKind.Object
                ? new JsonFields(file, place, item).OnlyKnown(field.Fields.Names)
                : throw new InputException(file, place, $"is {JsonValues.KindName(item)} where an object {{ ... }} is wanted"));
        }

        return items;
    }

    /// <summary>The objects of a list, or none where it is left out.</summary>
    public IReadOnlyList<JsonFields> OptionalObjects(ObjectsField field) => Has(field) ? Objects(field) : [];

    /// <summary>The objects of a list by a text that each has for itself.</summary>
    /// <param name="field">The list.</param>
    /// <param name="key">The text.</param>
    /// <param name="valueOf">What is kept of an object.</param>
    public Dictionary<string, T> ByName<T>(ObjectsField field, TextField key, Func<JsonFields, T> valueOf)
    {
        Dictionary<string, T> found = [];
        foreach (JsonFields item in Objects(field))
        {
            if (!found.TryAdd(item.Text(key), valueOf(item)))
            {
                throw item.Fault(key, $"'{item.Text(key)}' stands in the list twice");
            }
        }

        return found;
    }

    /// <summary>A list, however many entries it has.</summary>
    public JsonElement Elements(ListField field)
    {
        JsonElement value = Required(field);
        return value.ValueKind == JsonValueKind.Array
            ? value
            : throw Fault(field, $"is {JsonValues.KindName(value)} where a list [ ... ] is wanted");
    }

    /// <summary>A list with no more entries than it may hold.</summary>
    public JsonElement Array(ListField field)
    {
        JsonElement value = Elements(field);
        int count = value.GetArrayLength();
        return count <= (field.Most ?? int.MaxValue)
            ? value
            : throw Fault(field, $"has {count} entries: at most {field.Most} are allowed");
    }

    /// <summary>A finite number within its range; the usual one where the field is left out and has one.</summary>
    public double Number(NumberField field)
    {
        if (field.Default is { } usual && !Has(field))
        {
            return usual;
        }

        double value = JsonValues.NumberOf(Required(field), file, PathOf(field));
        return field.Holds(value) ? value : throw Fault(field, field.Outside(value));
    }

    /// <summary>A finite number within its range, or null when the field is null or not there.</summary>
    public double? OptionalNumber(NumberField field) => Has(field) ? Number(field) : null;

    /// <summary>An amount of money, to the digits of a number.</summary>
    public decimal Amount(NumberField field) => (decimal)Number(field);

    /// <summary>A whole number within its range; the usual one where the field is left out and has one.</summary>
    public int Whole(WholeField field)
    {
        if (field.Default is { } usual && !Has(field))
        {
            return (int)usual;
        }

        int number = AnyWhole(field);
        return field.Holds(number) ? number : throw Fault(field, field.Outside(number));
    }

    /// <summary>A whole number within its range, or null when the field is null or not there.</summary>
    public int? OptionalWhole(WholeField field) => Has(field) ? Whole(field) : null;

    /// <summary>A whole number within ends that the rest of the document sets.</summary>
    /// <param name="field">The field.</param>
    /// <param name="low">Least number.</param>
    /// <param name="high">Greatest number.</param>
    /// <param name="what">What the numbers are.</param>
    public int Whole(WholeField field, int low, int high, string what)
    {
        int number = AnyWhole(field);
        return number >= low && number <= high ? number : throw Fault(field, $"{number} is outside {low} to {high}: {what}");
    }

    /// <summary>True or false; the usual one where the field is left out and has one.</summary>
    public bool Flag(FlagField field) => field.Default is { } usual && !Has(field) ? usual : Required(field).ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => throw Fault(field, $"is {JsonValues.KindName(Required(field))} where true or false is wanted"),
    };

    /// <summary>A text that is not blank; the usual one where the field is left out and has one.</summary>
    public string Text(TextField field)
    {
        if (field.Default is { } usual && !Has(field))
        {
            return usual;
        }

        JsonElement value = Required(field);
        string text = value.ValueKind == JsonValueKind.String
            ? value.GetString()!
            : throw Fault(field, $"is {JsonValues.KindName(value)} where a text is wanted");
        if (string.IsNullOrWhiteSpace(text))
        {
            throw Fault(field, "is blank: give it a name");
        }

        text = OneLine.Of(text);
        if (text.Length <= (field.MostLetters ?? int.MaxValue))
        {
            return text;
        }

        string because = field.Because is null ? string.Empty : $" ({field.Because})";
        throw Fault(field, $"'{text}' has {text.Length} letters: at most {field.MostLetters}{because}");
    }

    /// <summary>A text that is not blank, or null when the field is null or not there.</summary>
    public string? OptionalText(TextField field) => Has(field) ? Text(field) : null;

    /// <summary>One of the words of an enumeration.</summary>
    public T Word<T>(EnumField<T> field)
        where T : struct, Enum => EnumWord.Find<T>(Word((WordField)field))!.Value;

    /// <summary>One of the words that a field allows.</summary>
    public string Word(WordField field)
    {
        string word = Text(field);
        return field.Find(word)
            ?? throw Fault(
                field, $"'{word}' is not known; allowed: {string.Join(", ", field.Words)}{NearestWord.Hint(word, field.Words)}");
    }

    /// <summary>The name of a currency.</summary>
    public string Currency(CurrencyField field) => Text(field) is { } word && CurrencyWord.IsSound(word)
        ? word
        : throw Fault(field, $"'{Text(field)}' is not allowed: {CurrencyWord.Allowed}");

    /// <summary>A number, or null for the one word that may stand in its place.</summary>
    public double? NumberOr(NumberField field)
    {
        JsonElement value = Required(field);
        return value.ValueKind switch
        {
            JsonValueKind.String when value.GetString() == field.OrWord => null,
            JsonValueKind.Number => Number(field),
            _ => throw Fault(field, $"{JsonValues.Quoted(value)} is not allowed: a number of degrees or \"{field.OrWord}\""),
        };
    }

    /// <summary>Three numbers in place of one, or null where one number stands there.</summary>
    public JsonFields? Spread(NumberField field) =>
        field.OrSpread && Required(field).ValueKind == JsonValueKind.Object ? Object(field.Name, SpreadFields.Set.Names) : null;

    /// <summary>A decimal number as it is written, no digit lost, between two ends.</summary>
    public decimal Exact(NumberField field, decimal low, decimal high)
    {
        // Says what is wrong with anything that is no finite number.
        double number = JsonValues.NumberOf(Required(field), file, PathOf(field));
        return Required(field).TryGetDecimal(out decimal value) && value >= low && value <= high
            ? value : throw Fault(field, FormattableString.Invariant($"{number:R} is outside {low} to {high}"));
    }

    private int AnyWhole(WholeField field)
    {
        JsonElement value = Required(field);
        return value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out int whole)
            ? whole
            : throw Fault(field, $"{JsonValues.Quoted(value)} is not a whole number");
    }

    private string PathOf(string name) => path.Length == 0 ? name : $"{path}.{name}";

    private InputException Fault(string name, string problem) => new(file, PathOf(name), problem);

    private bool Has(string name) => element.TryGetProperty(name, out JsonElement value) && value.ValueKind != JsonValueKind.Null;

    private JsonElement Required(string name)
    {
        if (!element.TryGetProperty(name, out JsonElement value))
        {
            throw Fault(name, "is missing");
        }

        return value.ValueKind == JsonValueKind.Null ? throw Fault(name, "is null where a value is wanted") : value;
    }

    private JsonFields Object(string name, IReadOnlyList<string> known)
    {
        JsonElement value = Required(name);
        return value.ValueKind == JsonValueKind.Object
            ? new JsonFields(file, PathOf(name), value).OnlyKnown(known)
            : throw Fault(name, $"is {JsonValues.KindName(value)} where an object {{ ... }} is wanted");
    }

    private JsonFields OnlyKnown(IReadOnlyList<string> known)
    {
        foreach (JsonProperty field in element.EnumerateObject())
        {
            if (!known.Contains(field.Name))
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
