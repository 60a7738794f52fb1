using FeltNest.Die;
using FeltNest.Die.Board;
using FeltNest.Files.Dxf;
using FeltNest.Geometry;
using static FeltNest.InvariantText;

namespace FeltNest.Files.Dies;

/// <summary>Drawings that go on a laser: the board, and the ejection on its sheets.</summary>
internal static class BoardCutDxf
{
    private const double Letters = 2.5;
    private const double LineStep = 4.5;

    /// <summary>The board with its words as strokes.</summary>
    public static byte[] Board(DieDesign design, BoardCut cut)
    {
        DxfText dxf = new(
            (BoardCut.Slot, 1), (BoardCut.Outside, 5), (BoardCut.Pin, 6), (BoardCut.Screw, 4), (BoardCut.Air, 2), (BoardCut.Dowel, 8),
            (BoardCut.Engrave, 3), (BoardCut.Note, 7));
        foreach (BoardLine line in cut.Lines)
        {
            dxf.Polyline(line.Layer, line.Line, line.Closed);
        }

        foreach (BoardHole hole in cut.Holes)
        {
            dxf.Circle(hole.Layer, hole.At, hole.DiameterMm / 2);
        }

        Notes(dxf, [.. BoardWords.Of(design, cut), SafetyWords.Trial]);
        return dxf.Finish();
    }

    /// <summary>The ejection nested on sheets, which stand above each other.</summary>
    public static byte[] Ejection(DieDesign design, double lengthMm, double widthMm)
    {
        DxfText dxf = new(("EJECT", 4), ("SHEET", 5), (BoardCut.Note, 7));
        int sheets = 0;
        foreach ((int sheet, IReadOnlyList<IReadOnlyList<Point2>> rings) in EjectionNest.Of(design, lengthMm, widthMm))
        {
            sheets = Math.Max(sheets, sheet + 1);
            Point2 by = new(0, sheet * (widthMm + BoardCut.ApartMm));
            foreach (IReadOnlyList<Point2> ring in rings)
            {
                dxf.Polyline("EJECT", [.. ring.Select(p => new ArcVertex(p.X, p.Y + by.Y, 0))], true);
            }
        }

        for (int sheet = 0; sheet < sheets; sheet++)
        {
            double low = sheet * (widthMm + BoardCut.ApartMm);
            dxf.Polyline(
                "SHEET", [new(0, low, 0), new(lengthMm, low, 0), new(lengthMm, low + widthMm, 0), new(0, low + widthMm, 0)], true);
        }

        Notes(
            dxf,
            [
                Invariant($"{design.Request.Order.Name}: ejection, {design.Request.Order.Ejection.Material}, {sheets} sheets, 1:1 in mm"),
                "EJECT: cut through, no kerf taken off; which pieces go where in the end is for trial at the press",
                .. SafetyWords.Brief,
            ]);
        return dxf.Finish();
    }

    private static void Notes(DxfText dxf, IReadOnlyList<string> words)
    {
        for (int i = 0; i < words.Count; i++)
        {
            dxf.Text(BoardCut.Note, new Point2(0, -10 - (i * LineStep)), Letters, words[i]);
        }
    }
}
