using FeltNest.Geometry;

namespace FeltNest.Drawing.Parts;

/// <summary>A ruled table with cells to fill in by hand.</summary>
internal static class BlankTable
{
    // Where words stand in their cell, mm from its left and lower edge.
    private static readonly Point2 Inset = new(1.5, 1.8);

    /// <summary>Height of a table of so many rows, mm.</summary>
    public static double Height(int rows, double rowStep) => rows * rowStep;

    /// <summary>The table with its upper left corner at a place; the first row is the head.</summary>
    /// <param name="topLeft">The corner.</param>
    /// <param name="widths">Widths of the columns, mm.</param>
    /// <param name="rowStep">Height of a row, mm.</param>
    /// <param name="rows">Words row by row; missing and empty cells stay blank.</param>
    public static IEnumerable<Mark> Draw(Point2 topLeft, IReadOnlyList<double> widths, double rowStep, IReadOnlyList<string[]> rows)
    {
        double[] edges = [topLeft.X];
        foreach (double wide in widths)
        {
            edges = [.. edges, edges[^1] + wide];
        }

        double low = topLeft.Y - Height(rows.Count, rowStep);
        for (int i = 0; i <= rows.Count; i++)
        {
            double y = topLeft.Y - (i * rowStep);
            yield return new PathMark([Chain.Open(new Point2(edges[0], y), new Point2(edges[^1], y))], i <= 1 ? Ink.Narrow : Ink.Faint);
        }

        yield return new PathMark([.. edges.Select(x => Chain.Open(new Point2(x, topLeft.Y), new Point2(x, low)))], Ink.Faint);
        foreach ((int i, string[] row) in rows.Index())
        {
            foreach ((int j, string cell) in row.Index().Where(cell => cell.Item.Length > 0))
            {
                yield return new TextMark
                {
                    Text = cell,
                    At = new Point2(edges[j], topLeft.Y - ((i + 1) * rowStep)) + Inset,
                    HeightMm = Ink.Note,
                    Colour = Ink.Dark,
                };
            }
        }
    }
}
