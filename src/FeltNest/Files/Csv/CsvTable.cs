using System.Text;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Csv;

/// <summary>A table in CSV with a line of names: columns separated by commas or, as many offices write, by semicolons, where decimals may
/// have a comma. Fields may stand in quotes.</summary>
internal sealed class CsvTable
{
    // Most lines of data: far above any sound list.
    private const int MostRows = 10_000;

    private readonly string[] columns;
    private (char Mark, int Line)? mark;

    private CsvTable(string file, char separator, string[] columns)
    {
        File = file;
        Separator = separator;
        this.columns = columns;
    }

    /// <summary>The file.</summary>
    public string File { get; }

    /// <summary>What stands between columns.</summary>
    public char Separator { get; }

    /// <summary>Lines of data in order; blank lines are passed over.</summary>
    public IReadOnlyList<CsvRow> Rows { get; private set; } = [];

    // Long because it goes through a list once, and each fault is told where it is met.
    /// <summary>Reads a table.</summary>
    /// <param name="text">The text.</param>
    /// <param name="listing">What columns it has.</param>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static CsvTable Read(InputText text, Listing listing)
    {
        string path = text.Name;
        IReadOnlyList<string> required = listing.Required;
        string[] lines = Lines(text);
        int head = Array.FindIndex(lines, line => line.Trim().Length > 0);
        if (head < 0)
        {
            throw new InputException(path, null, $"holds no lines: a line of names is wanted first: {string.Join(",", required)}");
        }

        char separator = lines[head].Contains(';') ? ';' : ',';
        string[] names = [.. Split(path, head + 1, lines[head], separator).Select(name => name.Trim())];
        RequireColumns(path, head + 1, names, required, listing.Others);
        CsvTable table = new(path, separator, names);
        List<CsvRow> rows = [];
        for (int i = head + 1; i < lines.Length; i++)
        {
            if (lines[i].Trim().Length == 0 || lines[i].All(c => c == separator || char.IsWhiteSpace(c)))
            {
                continue;
            }

            List<string> values = Split(path, i + 1, lines[i], separator);
            if (values.Count != names.Length)
            {
                string hint = separator == ',' && values.Count > names.Length
                    ? "; are these decimal commas? write 12.5, or separate the columns by semicolons"
                    : string.Empty;
                throw new InputException(
                    path, $"line {i + 1}", $"has {values.Count} values where the line of names has {names.Length}{hint}");
            }

            rows.Add(new CsvRow(table, i + 1, values));
            if (rows.Count > MostRows)
            {
                throw new InputException(path, $"line {i + 1}", $"is one too many: at most {MostRows} lines are read");
            }
        }

        table.Rows = rows.Count > 0 ? rows : throw new InputException(path, null, "holds a line of names and nothing below it");
        return table;
    }

    /// <summary>Whether a column is there.</summary>
    public bool Has(Field column) => PlaceOf(column.Name) is not null;

    /// <summary>Place of a column, or null where it is missing.</summary>
    public int? PlaceOf(string column) => Array.IndexOf(columns, column) is >= 0 and int at ? at : null;

    /// <summary>A number with its decimal mark as a point. One file has one decimal mark: with two of them 1.500 could be a thousand
    /// more.</summary>
    public string Pointed(string text, int line, string column)
    {
        bool comma = text.Contains(',');
        bool point = text.Contains('.');
        if (comma && (point || Separator == ','))
        {
            throw new InputException(
                File, $"line {line}, {column}",
                $"'{OneLine.Of(text)}' has a comma: write 1250.5 without thousands"
                    + $"{(Separator == ',' ? "; decimal commas only where semicolons separate the columns" : string.Empty)}");
        }

        if (comma || point)
        {
            char found = comma ? ',' : '.';
            mark ??= (found, line);
            if (mark.Value.Mark != found)
            {
                throw new InputException(
                    File, $"line {line}, {column}",
                    $"'{OneLine.Of(text)}' has a decimal '{found}' where line {mark.Value.Line} has a decimal '{mark.Value.Mark}': use "
                        + $"one of them");
            }
        }

        return text.Replace(',', '.');
    }

    private static string[] Lines(InputText text)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(text.Bytes.Span).Split('\n');
        }
        catch (DecoderFallbackException error)
        {
            throw new InputException(text.Name, null, "is not UTF-8 text: save it as CSV UTF-8", error);
        }
    }

    private static void RequireColumns(
        string path, int line, string[] names, IReadOnlyList<string> required, IReadOnlyList<string> optional)
    {
        string place = $"line {line}";
        string[] known = [.. required, .. optional];
        string? twice = names.GroupBy(n => n).FirstOrDefault(g => g.Count() > 1)?.Key;
        string? missing = required.FirstOrDefault(r => !names.Contains(r));
        string? strange = names.FirstOrDefault(n => !known.Contains(n));
        if (twice is not null)
        {
            throw new InputException(path, place, $"the column '{OneLine.Of(twice)}' stands there twice");
        }

        if (strange is not null)
        {
            throw new InputException(
                path, place,
                $"the column '{OneLine.Of(strange)}' is not known{NearestWord.Hint(strange, known.Except(names))}; known: "
                    + $"{string.Join(", ", known)}");
        }

        if (missing is not null)
        {
            throw new InputException(path, place, $"the column {missing} is missing; wanted: {string.Join(", ", required)}");
        }
    }

    // Long because it is one state machine over the characters of a line.
    private static List<string> Split(string path, int line, string text, char separator)
    {
        List<string> values = [];
        StringBuilder value = new();
        bool quoted = false;
        bool wasQuoted = false;
        bool blank = true;
        string row = text.TrimEnd('\r');
        for (int i = 0; i < row.Length; i++)
        {
            char c = row[i];
            if (quoted)
            {
                if (c != '"')
                {
                    value.Append(c);
                }
                else if (i + 1 < row.Length && row[i + 1] == '"')
                {
                    value.Append(row[++i]);
                }
                else
                {
                    quoted = false;
                }
            }
            else if (c == '"' && !wasQuoted && blank)
            {
                (quoted, wasQuoted) = (true, true);
                value.Clear();
            }
            else if (c == separator)
            {
                values.Add(CellText.Meant(value.ToString().Trim()));
                value.Clear();
                (wasQuoted, blank) = (false, true);
            }
            else if (!wasQuoted || !char.IsWhiteSpace(c))
            {
                blank &= char.IsWhiteSpace(c);
                value.Append(
                    wasQuoted
                        ? throw new InputException(
                            path, $"line {line}", $"'{OneLine.Of(text)}' has letters behind a closing quote: double a quote inside quotes")
                        : c);
            }
        }

        if (quoted)
        {
            throw new InputException(
                path, $"line {line}", $"'{OneLine.Of(text)}' has an opening quote without a closing one in the same line");
        }

        values.Add(CellText.Meant(value.ToString().Trim()));
        return values;
    }
}
