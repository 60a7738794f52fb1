using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using FeltNest.Geometry;

namespace FeltNest.Files.Json;

/// <summary>Writes result files: indented, every number with all its digits, a number without a value as null.</summary>
internal sealed class JsonOutput : IDisposable
{
    private readonly MemoryStream stream = new();
    private readonly Utf8JsonWriter writer;

    /// <summary>Starts the top-level object.</summary>
    public JsonOutput()
    {
        // The relaxed encoder keeps names such as "Rückseite" readable; the files are never part of a web page.
        writer = new Utf8JsonWriter(
            stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        writer.WriteStartObject();
    }

    /// <summary>A text, or null.</summary>
    public JsonOutput Text(string name, string? value)
    {
        writer.WriteString(name, value);
        return this;
    }

    /// <summary>A number; null where it is null or not finite.</summary>
    public JsonOutput Number(string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            // Adding zero turns -0 into 0.
            writer.WriteNumber(name, number + 0.0);
        }
        else
        {
            writer.WriteNull(name);
        }

        return this;
    }

    /// <summary>A number, or a word where it is null.</summary>
    public JsonOutput NumberOr(string name, double? value, string word) => value is null ? Text(name, word) : Number(name, value);

    /// <summary>True or false.</summary>
    public JsonOutput Flag(string name, bool value)
    {
        writer.WriteBoolean(name, value);
        return this;
    }

    /// <summary>An object.</summary>
    public JsonOutput Object(string name, Action<JsonOutput> fields)
    {
        writer.WriteStartObject(name);
        fields(this);
        writer.WriteEndObject();
        return this;
    }

    /// <summary>An object, or null.</summary>
    public JsonOutput ObjectOrNull<T>(string name, T? value, Action<JsonOutput, T> fields)
        where T : class
    {
        if (value is not null)
        {
            return Object(name, json => fields(json, value));
        }

        writer.WriteNull(name);
        return this;
    }

    /// <summary>A whole JSON text made by another writer.</summary>
    public JsonOutput Embedded(string name, byte[] json)
    {
        writer.WritePropertyName(name);
        using JsonDocument inner = JsonDocument.Parse(json);
        inner.RootElement.WriteTo(writer);
        return this;
    }

    /// <summary>A list of objects.</summary>
    public JsonOutput Objects<T>(string name, IEnumerable<T> items, Action<JsonOutput, T> fields)
    {
        writer.WriteStartArray(name);
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
    public JsonOutput Texts(string name, IEnumerable<string> items)
    {
        writer.WriteStartArray(name);
        foreach (string item in items)
        {
            writer.WriteStringValue(item);
        }

        writer.WriteEndArray();
        return this;
    }

    /// <summary>A list of rows of numbers, one row a line.</summary>
    public JsonOutput Rows<T>(string name, IEnumerable<T> items, Func<T, double[]> numbers)
    {
        writer.WriteStartArray(name);
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
    public JsonOutput Outline(string name, Outline outline) => Rows(name, outline.Points, p => [p.X, p.Y]);

    /// <summary>Arcs of a curve, one vertex a line; a polygon without arcs is written as straight pieces.</summary>
    public JsonOutput Arcs(string name, IEnumerable<ArcVertex> arcs)
    {
        writer.WriteStartArray(name);
        foreach (ArcVertex v in arcs)
        {
            writer.WriteRawValue($$"""{ "x": {{Digits(v.X)}}, "y": {{Digits(v.Y)}}, "turnDeg": {{Digits(v.Turn * 180 / Math.PI)}} }""");
        }

        writer.WriteEndArray();
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
