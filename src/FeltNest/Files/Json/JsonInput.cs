using System.Text.Json;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Json;

/// <summary>Reads a JSON file strictly: no comments, no trailing commas, no field twice, bounded depth.</summary>
internal static class JsonInput
{
    // Deeper nesting than any of our files has.
    private const int MostDepth = 16;

    /// <summary>The top-level object of a text.</summary>
    /// <exception cref="InputException">The text is not JSON, or holds no object.</exception>
    public static JsonElement ReadObject(InputText text)
    {
        (string path, ReadOnlyMemory<byte> bytes) = (text.Name, text.Bytes);
        JsonElement root;
        try
        {
            JsonText.RequireSound(path, bytes.Span, MostDepth);

            // Not disposed on purpose: the elements live as long as the reader that walks them.
            root =
                JsonDocument.Parse(bytes, new JsonDocumentOptions { MaxDepth = MostDepth, AllowDuplicateProperties = false }).RootElement;
        }
        catch (JsonException error)
        {
            throw JsonFault.Describe(path, bytes, error);
        }

        return root.ValueKind == JsonValueKind.Object
            ? root
            : throw new InputException(path, null, $"holds {JsonValues.KindName(root)} where an object {{ ... }} is wanted");
    }

    /// <summary>The word in the top-level field "schema".</summary>
    /// <exception cref="InputException">Missing or not text.</exception>
    public static string SchemaOf(JsonElement root, string path, params string[] allowed)
    {
        string found;
        if (!root.TryGetProperty(Document.SchemaField, out JsonElement schema))
        {
            throw new InputException(path, Document.SchemaField, $"is missing; allowed: {string.Join(", ", allowed)}");
        }
        else if (schema.ValueKind == JsonValueKind.String)
        {
            found = schema.GetString()!;
        }
        else
        {
            found = schema.GetRawText();
        }

        if (Array.IndexOf(allowed, found) >= 0)
        {
            return found;
        }

        string wanted = $"allowed: {string.Join(", ", allowed)}";
        throw new InputException(
            path, Document.SchemaField,
            Documents.All.FirstOrDefault(document => document.Schema == found) is { } known
                ? $"'{found}' ({known.Title}) cannot be used here; {wanted}"
                : $"'{OneLine.Of(found)}' cannot be used here; {wanted}{NearestWord.Hint(found, allowed)}");
    }
}
