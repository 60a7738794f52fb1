using FeltNest.Die.Board;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Boards;

/// <summary>Turns the words of a board into single strokes.</summary>
internal static class BoardEngraving
{
    /// <summary>The board with its words as strokes on the layer of the engraving; words wider than their room are set smaller.</summary>
    public static BoardCut Of(BoardCut cut) => cut with
    {
        Lines =
        [
            .. cut.Lines, .. cut.Labels.SelectMany(Strokes).Select(chain => new BoardLine(BoardCut.Engrave, chain.Vertices, chain.Closed)),
        ],
    };

    private static IReadOnlyList<Chain> Strokes(BoardLabel label)
    {
        double high = Math.Min(label.HighMm, label.HighMm * label.WideMm / StrokeFont.Width(label.Text, label.HighMm));
        return StrokeFont.Strokes(new TextMark
        {
            Text = label.Text,
            At = label.Middle - new Point2(0, high / 2),
            HeightMm = high,
            Colour = Ink.Dark,
            Anchor = TextAnchor.Middle,
        });
    }
}
