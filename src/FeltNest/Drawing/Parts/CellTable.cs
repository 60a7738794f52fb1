using FeltNest.Drawing.Lettering;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Parts;

/// <summary>A table of right-aligned columns with a line of names.</summary>
internal static class CellTable
{
    /// <summary>Distance from row to row, mm.</summary>
    public const double RowStep = 4.4;

    /// <summary>Height of a table of so many rows, mm.</summary>
    public static double Height(int rows) => RowStep * (rows + 1) + 1;

    // Long because it draws a table line by line, head, rows and rules in the order of the sheet.
    /// <summary>The table with its upper left corner at a place.</summary>
    public static IEnumerable<Mark> Draw(Point2 topLeft, IReadOnlyList<(string Name, double Width)> columns, IEnumerable<string[]> rows)
    {
        double y = topLeft.Y - RowStep;
        double wide = columns.Sum(c => c.Width);
        foreach (Mark mark in Row(columns.Select(c => c.Name), Ink.Soft))
        {
            yield return mark;
        }

        yield return new PathMark([Chain.Open(new Point2(topLeft.X, y - 1.1), new Point2(topLeft.X + wide, y - 1.1))], Ink.Narrow);
        y -= 1;
        foreach (string[] row in rows)
        {
            y -= RowStep;
            foreach (Mark mark in Row(row, Ink.Dark))
            {
                yield return mark;
            }
        }

        IEnumerable<Mark> Row(IEnumerable<string> cells, Colour colour)
        {
            double right = topLeft.X;
            List<Mark> marks = [];
            foreach ((string cell, double width) in cells.Zip(columns.Select(c => c.Width)))
            {
                right += width;
                if (cell.Length > 0)
                {
                    marks.Add(
                        new TextMark
                        {
                            Text = StrokeFont.Fitted(cell, Ink.Note, width - 1),
                            At = new Point2(right, y),
                            HeightMm = Ink.Note,
                            Colour = colour,
                            Anchor = TextAnchor.End,
                        });
                }
            }

            return marks;
        }
    }
}
