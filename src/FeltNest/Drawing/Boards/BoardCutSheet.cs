using FeltNest.Die;
using FeltNest.Die.Board;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Boards;

/// <summary>The board for the laser at 1:1: the very lines of the DXF, and nothing else that a laser could follow but a bar and cautions
/// below the board.</summary>
internal static class BoardCutSheet
{
    // Room round the board, and below it for words: mm.
    private const double Rim = 10;
    private const double Foot = 44;

    private static readonly Pen Cut = new(0.1, Ink.Classes[2]);
    private static readonly Pen Mark = new(0.1, Ink.Classes[0]);

    /// <summary>Draws the sheet, as large as the board.</summary>
    public static Sheet Draw(DieDesign design, BoardCut cut)
    {
        Point2 by = new(Rim, Rim + Foot);
        double wide = Math.Max(cut.LengthMm + (2 * Rim), 220);
        return new Sheet
        {
            Title = $"{design.Request.Order.Name}: board for the laser",
            Description = "Slots, holes and engraving of the board at 1:1, kerf taken off.",
            WidthMm = wide,
            HeightMm = cut.WidthMm + (2 * Rim) + Foot,
            Symbols = [],
            Marks =
            [
                .. cut.Lines.GroupBy(l => l.Layer).Select(g =>
                    new PathMark([.. g.Select(l => new Chain(l.Line, l.Closed).Placed(1, 0, by))], Through(g.Key))),
                new PathMark([.. cut.Holes.Select(h => Chain.Circle(h.At + by, h.DiameterMm / 2))], Cut),
                .. TextBlock.Draw(new Point2(Rim, by.Y - 4), wide - (2 * Rim), [.. BoardWords.Of(design, cut), SafetyWords.Trial]),
                .. ScaleBar.Draw(new Point2(Rim + 2, 6), 100, 1),
            ],
        };
    }

    private static Pen Through(string layer) => layer is BoardCut.Engrave or BoardCut.Dowel ? Mark : Cut;
}
