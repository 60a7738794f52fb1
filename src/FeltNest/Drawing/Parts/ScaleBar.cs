using System.Globalization;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Parts;

/// <summary>A bar to lay a rule against: shows whether a print came out true to size.</summary>
internal static class ScaleBar
{
    // Height of the bar, and how many parts are told apart by filling.
    private const double Height = 1.6;
    private const int Parts = 10;

    /// <summary>A bar with its left lower corner at a place.</summary>
    /// <param name="at">Left lower corner.</param>
    /// <param name="realMm">What the whole bar stands for, mm.</param>
    /// <param name="scale">Paper over real.</param>
    public static IEnumerable<Mark> Draw(Point2 at, double realMm, double scale)
    {
        double step = realMm * scale / Parts;
        yield return new PathMark(
            [
                .. Enumerable.Range(0, Parts / 2)
                    .Select(k => Chain.Rectangle(new Box
                    {
                        MinX = at.X + (2 * k * step),
                        MinY = at.Y,
                        MaxX = at.X + ((2 * k) + 1) * step,
                        MaxY = at.Y + Height,
                    })),
            ], null, Ink.Dark);
        yield return new PathMark(
            [Chain.Rectangle(new Box { MinX = at.X, MinY = at.Y, MaxX = at.X + (Parts * step), MaxY = at.Y + Height })], Ink.Narrow);
        yield return new TextMark
        {
            Text = "0",
            At = new Point2(at.X, at.Y + Height + 1.2),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
            Anchor = TextAnchor.Middle,
        };
        yield return new TextMark
        {
            Text = realMm.ToString("0.##", CultureInfo.InvariantCulture) + " mm",
            At = new Point2(at.X + (Parts * step) + 2.5, at.Y - 0.4),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
        };
    }
}
