using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>The table of a gang's cavities: number, place and angle as the drawing shows them.</summary>
internal static class GangCoordinates
{
    // Rows of coordinates side by side.
    private const int TableColumns = 2;

    private static readonly (string Name, double Width)[] Columns = [("no.", 11), ("x", 24), ("y", 24), ("angle", 27)];

    /// <summary>Height of the whole table, mm.</summary>
    public static double Height(DieGang gang) => CellTable.Height(RowsOf(gang.Cavities.Count));

    /// <summary>The number of a cavity, with the letter of its part where there are several.</summary>
    public static string Name(DieDesign design, DieCavity cavity) => Invariant($"{cavity.Number:0}") + design.Letter(cavity.Placed.Part);

    /// <summary>The table in so much room; where it ends too early its last row says how many more there are.</summary>
    public static List<Mark> Draw(DieDesign design, Point2 top, double room)
    {
        int most = Math.Max(1, (int)((room - 2) / CellTable.RowStep) - 1);
        int all = design.Gang.Cavities.Count;
        int rows = Math.Min(most, RowsOf(all));
        int shown = rows * TableColumns;
        List<string[]> cells = [.. design.Gang.Cavities.Take(shown).Select(cavity => Row(design, cavity))];
        if (all > shown)
        {
            cells[^1] = ["...", $"{all - shown + 1} more:", "see", "die.json"];
        }

        List<Mark> marks = [];
        for (int c = 0; c * rows < cells.Count; c++)
        {
            marks.AddRange(CellTable.Draw(top + new Point2(c * 92, 0), Columns, cells.Skip(c * rows).Take(rows)));
        }

        return marks;
    }

    private static int RowsOf(int cavities) => (cavities + TableColumns - 1) / TableColumns;

    // What the drawing shows: from the die's side x runs from the other end of the board and angles change sign.
    private static string[] Row(DieDesign design, DieCavity cavity)
    {
        bool mirrored = design.Request.Order.DieView;
        double x = mirrored ? design.Gang.BoardLengthMm - cavity.Placed.XMm : cavity.Placed.XMm;
        double angle = mirrored ? -cavity.Placed.AngleDeg : cavity.Placed.AngleDeg;
        return [Name(design, cavity), Invariant($"{x:0.000}"), Invariant($"{cavity.Placed.YMm:0.000}"), Invariant($"{angle:0.000}\u00B0")];
    }
}
