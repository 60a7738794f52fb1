using System.Text;

namespace FeltNest.Files.Fields;

/// <summary>Writes what a description says as a table of the reference page.</summary>
internal static class ReferenceTable
{
    /// <summary>The table of a document.</summary>
    public static string Of(Document document)
    {
        StringBuilder text = new("| field | type | range | unit | default | meaning |\n|---|---|---|---|---|---|\n");
        text.Append("| `schema` | `").Append(document.Schema).Append("` |  |  | required |  |\n");
        Append(text, document.Fields, string.Empty);
        return text.ToString();
    }

    /// <summary>The table of a list that is read.</summary>
    public static string Of(Listing listing)
    {
        StringBuilder text = new("| column | type | range | unit | default | meaning |\n|---|---|---|---|---|---|\n");
        Append(text, listing.Columns, string.Empty);
        return text.ToString();
    }

    /// <summary>The table of a list that is written: every column is there, its cells may be blank.</summary>
    public static string OfResult(Listing listing)
    {
        StringBuilder text = new("| column | type | unit | meaning |\n|---|---|---|---|\n");
        foreach (Field field in listing.Columns.All)
        {
            string kind = field.OrNull ? $"{field.Kind} or blank" : field.Kind;
            text.Append($"| `{field.Name}` | {kind} | {field.UnitWord} | {field.Meaning} |\n");
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, FieldSet fields, string before)
    {
        foreach (Field field in fields.All)
        {
            string kind = field.OrNull ? $"{field.Kind} or null" : field.Kind;
            text.Append(
                $"| `{before}{field.Name}` | {kind} | {field.RangeWords} | {field.UnitWord} | {Usual(field)} | {field.Meaning} |\n");
            if (field.Inner is { } inner)
            {
                Append(text, inner, $"{before}{field.Name}{field.PathMark}.");
            }
        }
    }

    private static string Usual(Field field)
    {
        if (field.IsRequired)
        {
            return "required";
        }

        return field.Fallback is { } value ? $"`{value}`" : field.Otherwise ?? "may be left out";
    }
}
