namespace FeltNest.Report;

/// <summary>A table as a terminal shows it in fixed columns, and as a page shows it in cells.</summary>
/// <param name="Head">The line over the columns of a terminal.</param>
/// <param name="Names">The names of the cells of a page; those of the first column stand on the left.</param>
internal sealed record FindingTable(string Head, IReadOnlyList<string> Names)
{
    private readonly List<(string Line, string[] Cells)> rows = [];

    /// <summary>The rows in both shapes.</summary>
    public IReadOnlyList<(string Line, string[] Cells)> Rows => rows;

    /// <summary>Adds a row.</summary>
    public void Add(string line, params string[] cells) => rows.Add((line, cells));
}
