using System.Buffers;
using System.Text;
using System.Text.Json.Nodes;
using FeltNest.Files.Csv;

namespace FeltNest.Runs.Book;

/// <summary>Something of the book as lines and columns.</summary>
internal sealed class BookTable
{
    private static readonly SearchValues<char> Digits = SearchValues.Create("0123456789.-");

    private readonly List<string[]> rows = [];
    private readonly List<(string Name, string? State)> items = [];

    /// <summary>A table.</summary>
    public BookTable(params string[] columns) => Columns = columns;

    /// <summary>Names of the columns.</summary>
    public IReadOnlyList<string> Columns { get; }

    /// <summary>Lines that are not shown, as there are too many.</summary>
    public long Hidden { get; set; }

    /// <summary>A line, and all that is known of it as JSON where that is wanted.</summary>
    public void Add(string name, string? state, params string?[] cells)
    {
        string[] row = new string[cells.Length + 1];
        row[0] = name;
        for (int i = 0; i < cells.Length; i++)
        {
            row[i + 1] = cells[i] ?? string.Empty;
        }

        rows.Add(row);
        items.Add((name, state));
    }

    /// <summary>As CSV.</summary>
    public byte[] Csv()
    {
        CsvText text = new CsvText().Line(Columns);
        rows.ForEach(row => text.Line(row));
        return text.Finish();
    }

    /// <summary>As JSON, for a table whose lines hold all that is known.</summary>
    public string Json() => new JsonArray([.. items.Select(item => Item(item.Name, item.State!))]).ToJsonString(Readable) + "\n";

    /// <summary>As text in columns, numbers to the right.</summary>
    public string Text()
    {
        string[][] plain = [.. rows.Prepend([.. Columns]).Select(row => Array.ConvertAll(row, PlainLine.Of))];
        int[] widths = [.. Columns.Select((_, i) => plain.Max(row => row[i].Length))];
        bool[] numbers = [.. Columns.Select((_, i) => i > 0 && IsNumber(i))];
        StringBuilder text = new();
        foreach (string[] row in plain)
        {
            int blanks = 0;
            for (int i = 0; i < row.Length; i++)
            {
                int free = widths[i] - row[i].Length;
                blanks += numbers[i] ? free : 0;
                if (row[i].Length > 0)
                {
                    text.Append(' ', blanks).Append(row[i]);
                    blanks = 0;
                }

                blanks += 2 + (numbers[i] ? 0 : free);
            }

            text.Append('\n');
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
        && rows.TrueForAll(row => row[column].Length == 0 || !row[column].AsSpan().ContainsAnyExcept(Digits));
}
