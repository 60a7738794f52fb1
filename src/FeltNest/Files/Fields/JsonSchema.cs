using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace FeltNest.Files.Fields;

/// <summary>Writes what a description says as a JSON schema (draft 2020-12), so that editors know the fields.</summary>
internal static class JsonSchema
{
    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schema's text.</summary>
    public static string Text(Document document)
    {
        JsonObject schema = new() { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = document.Title };
        foreach ((string name, JsonNode? value) in OfInner(document))
        {
            schema[name] = value?.DeepClone();
        }

        return schema.ToJsonString(Layout) + "\n";
    }

    /// <summary>What a schema says of a document that stands in another.</summary>
    public static JsonObject OfInner(Document document)
    {
        JsonObject schema = Of(document.Fields);
        JsonObject properties = new()
        {
            [Document.EditorField] = new JsonObject { ["type"] = "string" },
            [Document.SourcesField] = new JsonObject { ["type"] = "object", ["description"] = "where each number comes from" },
            [Document.AssumptionsField] = new JsonObject
            {
                ["type"] = "object",
                ["description"] = "numbers without a source, with the reason for each",
            },
            [Document.SchemaField] = new JsonObject { ["const"] = document.Schema },
        };
        foreach ((string name, JsonNode? value) in schema["properties"]!.AsObject())
        {
            properties[name] = value!.DeepClone();
        }

        schema["properties"] = properties;
        schema["required"]!.AsArray().Insert(0, Document.SchemaField);
        return schema;
    }

    /// <summary>What a schema says of an object.</summary>
    public static JsonObject Of(FieldSet fields)
    {
        JsonObject properties = [];
        foreach (Field field in fields.All)
        {
            properties[field.Name] = Of(field);
        }

        JsonObject schema = new()
        {
            ["type"] = "object",
            ["additionalProperties"] = false,
            ["required"] = Names(fields.All.Where(field => field.IsRequired)),
            ["properties"] = properties,
        };
        if (fields.Either.Count > 0)
        {
            schema["oneOf"] = new JsonArray([.. fields.Either.Select(one => new JsonObject { ["required"] = Names([one]) })]);
        }

        return schema;
    }

    private static JsonArray Names(IEnumerable<Field> fields) => new([.. fields.Select(field => (JsonNode)field.Name)]);

    private static JsonObject Of(Field field)
    {
        JsonObject schema = field.ValueSchema();
        if (field.OrNull)
        {
            schema = WithNull(schema);
        }

        if (field.Fallback is { } usual)
        {
            schema["default"] = usual.DeepClone();
        }

        string words = Words(field);
        if (words.Length > 0)
        {
            schema["description"] = words;
        }

        return schema;
    }

    private static JsonObject WithNull(JsonObject schema)
    {
        if (schema["type"] is { } type)
        {
            schema["type"] = new JsonArray(type.DeepClone(), "null");
            return schema;
        }

        JsonArray kinds = schema["oneOf"]?.DeepClone().AsArray() ?? [schema];
        kinds.Add(new JsonObject { ["type"] = "null" });
        return new JsonObject { ["oneOf"] = kinds };
    }

    // The unit stands behind the first clause of the meaning, as a foreman would say it: "length, mm; an offer's own goes before it".
    private static string Words(Field field)
    {
        string[] words = field.Meaning.Split([' ', ',', ';', '(', ')']);
        if (field.UnitWord.Length == 0 || words.Contains(field.UnitWord))
        {
            return field.Meaning;
        }

        if (field.Meaning.Length == 0)
        {
            return field.UnitWord;
        }

        int clause = field.Meaning.IndexOf(';');
        int at = clause < 0 ? field.Meaning.Length : clause;
        return $"{field.Meaning[..at]}, {field.UnitWord}{field.Meaning[at..]}";
    }
}
