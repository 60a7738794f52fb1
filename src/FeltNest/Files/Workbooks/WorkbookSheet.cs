namespace FeltNest.Files.Workbooks;

/// <summary>One sheet of a workbook. Rows and columns count from 1.</summary>
/// <param name="Name">Its name: letters alone, so that formulas need no quotes.</param>
internal sealed record WorkbookSheet(string Name)
{
    private readonly SortedDictionary<(int Row, int Column), WorkbookCell> cells = [];

    /// <summary>Widths of the columns, letters, first to last; the last one holds for all behind it.</summary>
    public required IReadOnlyList<double> ColumnWidths { get; init; }

    /// <summary>Columns on the left and rows at the top that stay in sight.</summary>
    public required (int Columns, int Rows) Kept { get; init; }

    /// <summary>The cells, row by row.</summary>
    public IEnumerable<KeyValuePair<(int Row, int Column), WorkbookCell>> Cells => cells;

    /// <summary>Greatest column in use.</summary>
    public int LastColumn => cells.Keys.Max(place => place.Column);

    /// <summary>Puts a cell in its place.</summary>
    public void Put(int row, int column, WorkbookCell cell) => cells[(row, column)] = cell;

    /// <summary>A place as formulas of any sheet name it.</summary>
    public string Reference(int row, int column) => $"{Name}!{Address(row, column)}";

    /// <summary>Places below each other as formulas of any sheet name them.</summary>
    public string Span(int fromRow, int toRow, int column) => $"{Reference(fromRow, column)}:{Address(toRow, column)}";

    /// <summary>A place within its sheet: letters of the column, number of the row.</summary>
    public static string Address(int row, int column)
    {
        string letters = string.Empty;
        for (int rest = column; rest > 0; rest = (rest - 1) / 26)
        {
            letters = (char)('A' + ((rest - 1) % 26)) + letters;
        }

        return FormattableString.Invariant($"{letters}{row}");
    }
}
