using System.Text;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Csv;

/// <summary>Parts the lines of a CSV text: columns stand between commas, semicolons, tabs or bars, fields may stand in quotes. A line break
/// inside quotes is read as a blank.</summary>
/// <remarks>Quotes and line breaks after RFC 4180, section 2 (from memory).</remarks>
internal static class CsvLines
{
    // A first line of these letters tells the separator and is no line of the list.
    private const string Told = "sep=";

    // Most line breaks and letters of one line of the list: a quote that somebody forgot to close must not swallow the list.
    private const int MostBreaks = 20;
    private const int MostLetters = 20_000;

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

        char separator = told ?? SeparatorOf(lines, head, listing);
        return new ListLines(separator, [.. All(lines, head, separator).Where(line => !line.IsBlank).Take(ListLines.MostRows + 2)]);
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
    private static char SeparatorOf(string[] lines, int head, Listing listing) => Separators
        .OrderByDescending(one => Parted(lines, head, one).Line.Cells.Count(c => ColumnNames.Find(listing.Columns.Names, c) is not null))
        .ThenByDescending(one => lines[head].Count(c => c == one))
        .First();

    private static IEnumerable<ListLine> All(string[] lines, int from, char separator)
    {
        int at = from;
        while (at < lines.Length)
        {
            (ListLine line, at) = Parted(lines, at, separator);
            yield return line;
        }
    }

    // The line at an index, with those that its quotes run over where they make it sound, and the index behind it.
    private static (ListLine Line, int Next) Parted(string[] lines, int at, char separator)
    {
        List<string> cells = [];
        string text = lines[at];
        (string? fault, bool open) = Part(text, separator, cells);
        ListLine alone = new(at + 1, cells, fault);
        for (int next = at + 1; open && next < lines.Length && next - at <= MostBreaks && text.Length <= MostLetters; next++)
        {
            text = $"{text} {lines[next]}";
            cells = [];
            (fault, open) = Part(text, separator, cells);
            if (fault is null)
            {
                return (new ListLine(at + 1, cells), next + 1);
            }
        }

        return (alone, at + 1);
    }

    // Long because it is one state machine over the characters of a line.
    private static (string? Fault, bool Open) Part(string row, char separator, List<string> cells)
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
                return ($"'{OneLine.Of(row)}' has letters behind a closing quote: double a quote inside quotes", false);
            }
        }

        cells.Add(CellText.Meant(value.ToString().Trim()));
        return quoted
            ? (FormattableString.Invariant(
                $"'{OneLine.Of(row)}' has an opening quote without a closing one in the {MostBreaks} lines behind it"), true)
            : (null, false);
    }
}
