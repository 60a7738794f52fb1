using System.Text;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Csv;

/// <summary>Parts the lines of a CSV text: columns stand between commas, semicolons, tabs or bars, fields may stand in quotes.</summary>
internal static class CsvLines
{
    // A first line of these letters tells the separator and is no line of the list.
    private const string Told = "sep=";

    private static readonly char[] Separators = [',', ';', '\t', '|'];

    /// <summary>The lines of a text.</summary>
    /// <exception cref="InputException">It is no text, or holds no lines.</exception>
    public static ListLines Read(InputText text, Listing listing)
    {
        string[] lines = [.. ListEncoding.TextOf(text).TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n')];
        int head = Array.FindIndex(lines, line => line.Trim().Length > 0);
        if (head < 0)
        {
            return new ListLines(',', []);
        }

        char? told = SeparatorTold(text.Name, head + 1, lines[head]);
        head = told is null ? head : Array.FindIndex(lines, head + 1, line => line.Trim().Length > 0);
        if (head < 0)
        {
            return new ListLines(',', []);
        }

        char separator = told ?? SeparatorOf(lines[head], listing);
        IEnumerable<ListLine> parted = lines.Index().Skip(head).Select(line => Parted(line.Index + 1, line.Item, separator));
        return new ListLines(separator, [.. parted.Where(line => !line.IsBlank).Take(ListLines.MostRows + 2)]);
    }

    private static char? SeparatorTold(string path, int line, string text)
    {
        string first = text.Trim(' ', '"');
        if (!first.StartsWith(Told, StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        string told = first[Told.Length..];
        return told.Length == 1 && Separators.Contains(told[0])
            ? told[0]
            : throw new InputException(path, $"line {line}", $"'{OneLine.Of(first)}' tells no separator: a comma, a semicolon, a tab or |");
    }

    // The separator under which the line of names holds most names of the list; the most frequent one where it holds none.
    private static char SeparatorOf(string head, Listing listing) => Separators
        .OrderByDescending(one => Parted(1, head, one).Cells.Count(cell => ColumnNames.Find(listing.Columns.Names, cell) is not null))
        .ThenByDescending(one => head.Count(c => c == one))
        .First();

    private static ListLine Parted(int number, string text, char separator)
    {
        List<string> cells = [];
        string? fault = Part(text, separator, cells);
        return new ListLine(number, cells, fault);
    }

    // Long because it is one state machine over the characters of a line.
    private static string? Part(string row, char separator, List<string> cells)
    {
        StringBuilder value = new();
        bool quoted = false;
        bool wasQuoted = false;
        bool blank = true;
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
            else if (c == separator)
            {
                cells.Add(CellText.Meant(value.ToString().Trim()));
                value.Clear();
                (wasQuoted, blank) = (false, true);
            }
            else if (c == '"' && !wasQuoted && blank)
            {
                (quoted, wasQuoted) = (true, true);
                value.Clear();
            }
            else if (!wasQuoted)
            {
                blank &= char.IsWhiteSpace(c);
                value.Append(c);
            }
            else if (!char.IsWhiteSpace(c))
            {
                return $"'{OneLine.Of(row)}' has letters behind a closing quote: double a quote inside quotes";
            }
        }

        cells.Add(CellText.Meant(value.ToString().Trim()));
        return quoted ? $"'{OneLine.Of(row)}' has an opening quote without a closing one in the same line" : null;
    }
}
