namespace FeltNest.Files.Workbooks;

/// <summary>A sheet of lines: a name, a unit, then one cell for each of what is compared. Formulas find a cell by the key of its
/// line.</summary>
internal sealed class LineSheet
{
    /// <summary>Column of the first cell of a line.</summary>
    public const int FirstColumn = 3;

    private readonly Dictionary<string, int> rows = [];
    private readonly int columns;
    private int next = 1;

    /// <summary>An empty sheet.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="columns">Cells of a line.</param>
    /// <param name="title">Words at its top.</param>
    public LineSheet(string name, int columns, string title)
    {
        this.columns = columns;
        Sheet = new WorkbookSheet(name) { ColumnWidths = [44, 9, 15], Kept = (2, 3) };
        Sheet.Put(1, 1, WorkbookCell.Text(title, CellLook.Heading));
        next = 3;
    }

    /// <summary>The sheet.</summary>
    public WorkbookSheet Sheet { get; }

    /// <summary>Words over the lines that follow.</summary>
    public void Heading(string words)
    {
        next++;
        Sheet.Put(next++, 1, WorkbookCell.Text(words, CellLook.Heading));
    }

    /// <summary>A line.</summary>
    /// <param name="key">By what formulas find it.</param>
    /// <param name="name">What it is.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="cell">The cell of a column, counted from 0; null for none.</param>
    public void Line(string key, string name, string unit, Func<int, WorkbookCell?> cell)
    {
        rows.Add(key, next);
        Sheet.Put(next, 1, WorkbookCell.Text(name));
        Sheet.Put(next, 2, WorkbookCell.Text(unit));
        for (int i = 0; i < columns; i++)
        {
            if (cell(i) is { } there)
            {
                Sheet.Put(next, FirstColumn + i, there);
            }
        }

        next++;
    }

    /// <summary>The cell of a line, for formulas.</summary>
    public string At(string key, int column = 0) => Sheet.Reference(rows[key], FirstColumn + column);

    /// <summary>The cells from one line to another, for formulas.</summary>
    public string Span(string from, string to, int column = 0) => Sheet.Span(rows[from], rows[to], FirstColumn + column);

    /// <summary>The row of a line.</summary>
    public int RowOf(string key) => rows[key];
}
