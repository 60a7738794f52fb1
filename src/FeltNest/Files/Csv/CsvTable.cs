using FeltNest.Files.Fields;

namespace FeltNest.Files.Csv;

/// <summary>A list of the shop, one line a thing below a line of names: the one door by which all lists come in, from CSV or a sheet of a
/// workbook. All its faults are told together.</summary>
internal sealed class CsvTable
{
    private readonly Dictionary<string, int> places;
    private readonly ListFaults faults;
    private readonly IReadOnlyList<CsvRow> rows;
    private (char Mark, int Line)? mark;
    private bool ended;

    private CsvTable(InputText text, Listing listing, ListLines lines)
    {
        File = text.Name;
        Lists = text.Lists;
        Separator = lines.Separator;
        faults = new ListFaults(File);
        places = ColumnNames.Places(text, listing, lines.Lines[0]);
        rows = [.. lines.Lines.Skip(1).Select(line => Row(line, lines.Lines[0].Cells.Count)).OfType<CsvRow>()];
        foreach (CsvRow row in rows.TakeWhile(_ => !faults.IsFull))
        {
            row.CellFaults(listing.Columns.All).ForEach(fault => faults.Add(row.Line, fault));
        }
    }

    /// <summary>The file.</summary>
    public string File { get; }

    /// <summary>How it is read, or null for strictly.</summary>
    public ListReading? Lists { get; }

    /// <summary>What stands between columns.</summary>
    public char Separator { get; }

    /// <summary>Lines of data in order, blank lines passed over.</summary>
    /// <exception cref="InputException">A cell holds what its column does not take: all of them.</exception>
    public IReadOnlyList<CsvRow> Rows
    {
        get
        {
            faults.Require();
            return rows;
        }
    }

    /// <summary>Reads a list.</summary>
    /// <param name="text">The text.</param>
    /// <param name="listing">What columns it has.</param>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static CsvTable Read(InputText text, Listing listing)
    {
        ListLines lines = ListLines.Of(text, listing);
        string path = text.Name;
        return lines.Lines switch
        {
            [] => throw new InputException(
                path, null, $"holds no lines: a line of names is wanted first: {string.Join(",", listing.Required)}"),
            [{ Fault: { } fault } head, ..] => throw new InputException(path, $"line {head.Number}", fault),
            { Count: > ListLines.MostRows + 1 } => throw new InputException(
                path, $"line {lines.Lines[^1].Number}", $"is one too many: at most {ListLines.MostRows} lines are read"),
            [_] => Empty(text, listing, lines),
            _ => new CsvTable(text, listing, lines),
        };
    }

    /// <summary>What each line says, in order.</summary>
    /// <param name="read">Reads one line.</param>
    /// <exception cref="InputException">Lines cannot be used: the first fault, with all others behind it.</exception>
    public IReadOnlyList<T> Each<T>(Func<CsvRow, T> read)
    {
        List<T> all = [];
        foreach (CsvRow row in rows.TakeWhile(_ => !ended && !faults.IsFull))
        {
            try
            {
                all.Add(read(row));
            }
            catch (InputException fault)
            {
                faults.Add(row.Line, fault);
            }
        }

        faults.Require();
        return all;
    }

    /// <summary>Stops reading: what stands behind is too much.</summary>
    public void End() => ended = true;

    /// <summary>Whether a column is there.</summary>
    public bool Has(Field column) => PlaceOf(column.Name) is not null;

    /// <summary>Place of a column, or null where it is missing.</summary>
    public int? PlaceOf(string column) => places.TryGetValue(column, out int at) ? at : null;

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

    // Its names are looked at before it is said to hold nothing.
    private static CsvTable Empty(InputText text, Listing listing, ListLines lines)
    {
        ColumnNames.Places(text, listing, lines.Lines[0]);
        throw new InputException(text.Name, null, "holds a line of names and nothing below it");
    }

    // The line as a row, or null with its fault kept. Blank cells behind the last column are none.
    private CsvRow? Row(ListLine line, int columns)
    {
        int filled = line.Cells.Count;
        while (filled > columns && line.Cells[filled - 1].Length == 0)
        {
            filled--;
        }

        if (line.Fault is null && filled == columns)
        {
            return new CsvRow(this, line.Number, line.Cells);
        }

        string hint = Separator == ',' && filled > columns
            ? "; are these decimal commas? write 12.5, or separate the columns by semicolons"
            : string.Empty;
        faults.Add(line.Number, new InputException(
            File, $"line {line.Number}", line.Fault ?? $"has {filled} values where the line of names has {columns}{hint}"));
        return null;
    }
}
