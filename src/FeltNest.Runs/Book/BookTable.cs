using System.Text;
using System.Text.Json.Nodes;
using FeltNest.Files.Csv;

namespace FeltNest.Runs.Book;

/// <summary>Something of the book as lines and columns.</summary>
internal sealed class BookTable
{
    private readonly List<string[]> rows = [];
    private readonly List<(string Name, string State)> items = [];

    /// <summary>A table.</summary>
    public BookTable(params string[] columns) => Columns = columns;

    /// <summary>Names of the columns.</summary>
    public IReadOnlyList<string> Columns { get; }

    /// <summary>Lines that are not shown, as there are too many.</summary>
    public long Hidden { get; set; }

    /// <summary>A line, and all that is known of it as JSON.</summary>
    public void Add(string name, string state, params string?[] cells)
    {
        rows.Add([name, .. cells.Select(cell => cell ?? string.Empty)]);
        items.Add((name, state));
    }

    /// <summary>As CSV.</summary>
    public byte[] Csv()
    {
        CsvText text = new CsvText().Line(Columns);
        rows.ForEach(row => text.Line(row));
        return text.Finish();
    }

    /// <summary>As JSON.</summary>
    public string Json() => new JsonArray([.. items.Select(item => Item(item.Name, item.State))]).ToJsonString(Readable) + "\n";

    /// <summary>As text in columns, numbers to the right.</summary>
    public string Text()
    {
        int[] widths = [.. Columns.Select((name, i) => rows.Select(row => Plain(row[i]).Length).Append(name.Length).Max())];
        StringBuilder text = new();
        foreach (IReadOnlyList<string> row in rows.Prepend<IReadOnlyList<string>>(Columns))
        {
            string line = string.Join("  ", row.Select((cell, i) => Padded(Plain(cell), widths[i], i > 0 && IsNumber(i))));
            text.Append(line.TrimEnd()).Append('\n');
        }

        return text.ToString();
    }

    private static readonly System.Text.Json.JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private static JsonObject Item(string name, string state)
    {
        JsonObject item = new() { ["name"] = name };
        foreach ((string key, JsonNode? value) in JsonNode.Parse(state)!.AsObject())
        {
            item[key] = value?.DeepClone();
        }

        return item;
    }

    private bool IsNumber(int column) => rows.Count > 0
        && rows.TrueForAll(row => row[column].Length == 0 || row[column].All(c => char.IsDigit(c) || c is '.' or '-'));

    private static string Padded(string cell, int width, bool number) => number ? cell.PadLeft(width) : cell.PadRight(width);

    private static string Plain(string cell) => PlainLine.Of(cell);
}
