using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Rolls;

/// <summary>The A4 page of a ticket and what its parts are drawn with.</summary>
internal static class TicketPage
{
    // A4 with a binding margin on the left (ISO 5457:1999, from memory): mm.
    public const double Width = 210;
    public const double Height = 297;
    public const double Left = 20;
    public const double Right = 200;
    public const double Top = 287;

    /// <summary>Words at a place.</summary>
    public static TextMark Words(string text, Point2 at, double height, Colour colour, TextAnchor anchor = TextAnchor.Start) =>
        new() { Text = text, At = at, HeightMm = height, Colour = colour, Anchor = anchor };

    /// <summary>Words no longer than their room.</summary>
    public static TextMark Fitted(string text, Point2 at, double height, double room, TextAnchor anchor = TextAnchor.Start) =>
        Words(StrokeFont.Fitted(text, height, room), at, height, Ink.Dark, anchor);

    /// <summary>A line across the page.</summary>
    public static PathMark Rule(double y, Pen pen) => new([Chain.Open(new Point2(Left, y), new Point2(Right, y))], pen);

    /// <summary>A name and a line to write on.</summary>
    public static GroupMark Blank(string name, double x, double width, double y) => new(
        $"blank-{name.Replace(", ", "-", StringComparison.Ordinal).Replace(": ", "-", StringComparison.Ordinal).Replace(' ', '-')}",
        [
            Words(name, new Point2(x, y), Ink.Note, Ink.Soft),
            new PathMark(
                [Chain.Open(new Point2(x + StrokeFont.Width(name, Ink.Note) + 2, y - 1), new Point2(x + width, y - 1))], Ink.Narrow),
        ]);
}
