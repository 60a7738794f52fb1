using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using FeltNest.Files.Fields;
using FeltNest.Geometry;

namespace FeltNest.Files.Json;

/// <summary>Writes result files: indented, every number with all its digits, a number without a value as null.</summary>
internal sealed class JsonOutput : IDisposable
{
    private readonly MemoryStream stream = new();
    private readonly Utf8JsonWriter writer;

    /// <summary>Starts a document with the name of its kind.</summary>
    public JsonOutput(Document document)
    {
        // The relaxed encoder keeps names such as "Rückseite" readable; the files are never part of a web page.
        writer = new Utf8JsonWriter(
            stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        writer.WriteStartObject();
        writer.WriteString(Document.SchemaField, document.Schema);
    }

    /// <summary>A text, or null.</summary>
    public JsonOutput Text(TextField field, string? value)
    {
        writer.WriteString(field.Name, value);
        return this;
    }

    /// <summary>A number; null where it is null or not finite.</summary>
    public JsonOutput Number(NumberField field, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            // Adding zero turns -0 into 0.
            writer.WriteNumber(field.Name, number + 0.0);
        }
        else
        {
            writer.WriteNull(field.Name);
        }

        return this;
    }

    /// <summary>A number, or the one word that may stand in its place where it is null.</summary>
    public JsonOutput NumberOr(NumberField field, double? value)
    {
        if (value is not null)
        {
            return Number(field, value);
        }

        writer.WriteString(field.Name, field.OrWord);
        return this;
    }

    /// <summary>True or false.</summary>
    public JsonOutput Flag(FlagField field, bool value)
    {
        writer.WriteBoolean(field.Name, value);
        return this;
    }

    /// <summary>An object.</summary>
    public JsonOutput Object(ObjectField field, Action<JsonOutput> fields)
    {
        writer.WriteStartObject(field.Name);
        fields(this);
        writer.WriteEndObject();
        return this;
    }

    /// <summary>An object, or null.</summary>
    public JsonOutput ObjectOrNull<T>(ObjectField field, T? value, Action<JsonOutput, T> fields)
        where T : class
    {
        if (value is not null)
        {
            return Object(field, json => fields(json, value));
        }

        writer.WriteNull(field.Name);
        return this;
    }

    /// <summary>A whole document made by another writer.</summary>
    public JsonOutput Embedded(DocumentField field, byte[] json)
    {
        writer.WritePropertyName(field.Name);
        using JsonDocument inner = JsonDocument.Parse(json);
        inner.RootElement.WriteTo(writer);
        return this;
    }

    /// <summary>A list of objects.</summary>
    public JsonOutput Objects<T>(ObjectsField field, IEnumerable<T> items, Action<JsonOutput, T> fields)
    {
        writer.WriteStartArray(field.Name);
        foreach (T item in items)
        {
            writer.WriteStartObject();
            fields(this, item);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        return this;
    }

    /// <summary>A list of texts.</summary>
    public JsonOutput Texts(TextsField field, IEnumerable<string> items)
    {
        writer.WriteStartArray(field.Name);
        foreach (string item in items)
        {
            writer.WriteStringValue(item);
        }

        writer.WriteEndArray();
        return this;
    }

    /// <summary>A list of rows of numbers, one row a line.</summary>
    public JsonOutput Rows<T>(RowsField field, IEnumerable<T> items, Func<T, double[]> numbers)
    {
        writer.WriteStartArray(field.Name);
        StringBuilder row = new();
        foreach (T item in items)
        {
            row.Clear().Append('[').AppendJoin(", ", numbers(item).Select(Digits)).Append(']');
            writer.WriteRawValue(row.ToString());
        }

        writer.WriteEndArray();
        return this;
    }

    /// <summary>Corners of a polygon.</summary>
    public JsonOutput Outline(RowsField field, Outline outline) => Rows(field, outline.Points, p => [p.X, p.Y]);

    /// <summary>Arcs of a curve, one vertex a line; a polygon without arcs is written as straight pieces.</summary>
    public JsonOutput Arcs(ObjectsField field, IEnumerable<ArcVertex> arcs)
    {
        writer.WriteStartArray(field.Name);
        foreach (ArcVertex v in arcs)
        {
            string turn = Digits(v.Turn * 180 / Math.PI);
            writer.WriteRawValue(
                $$"""
                { "{{ArcFields.X.Name}}": {{Digits(v.X)}}, "{{ArcFields.Y.Name}}": {{Digits(v.Y)}}, "{{ArcFields.TurnDeg.Name}}": {{turn}} }
                """);
        }

        writer.WriteEndArray();
        return this;
    }

    /// <summary>What was assumed of one thing, under <c>assumptions</c>.</summary>
    public JsonOutput Assumption(string thing, string words)
    {
        writer.WriteStartObject(Document.AssumptionsField);
        writer.WriteString(thing, words);
        writer.WriteEndObject();
        return this;
    }

    /// <summary>The finished text, with a line end.</summary>
    public byte[] Finish()
    {
        writer.WriteEndObject();
        writer.Flush();
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        writer.Dispose();
        stream.Dispose();
    }

    private static string Digits(double value) =>
        double.IsFinite(value) ? (value + 0.0).ToString("R", CultureInfo.InvariantCulture) : "null";
}
