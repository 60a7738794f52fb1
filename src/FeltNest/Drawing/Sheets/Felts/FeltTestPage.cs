using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Felts;

/// <summary>What the three sheets for the tests of felt share: paper, title, line to be measured.</summary>
internal static class FeltTestPage
{
    /// <summary>Width of the paper, mm: A4 upright, as high as letter paper allows too.</summary>
    public const double Width = 210;

    /// <summary>Height of it, mm.</summary>
    public const double Height = 279.4;

    /// <summary>Margin, mm.</summary>
    public const double Margin = 12;

    /// <summary>Where the sheet goes on below its title, mm.</summary>
    public const double Top = Height - Margin - 18;

    // Length to be measured after printing, mm.
    private const double Bar = 100;

    /// <summary>A sheet with its title.</summary>
    public static Sheet Of(string title, string description, string subtitle, IReadOnlyList<Mark> marks) => new()
    {
        Title = title,
        Description = description,
        WidthMm = Width,
        HeightMm = Height,
        Symbols = [],
        Marks = [new GroupMark("title", [.. Title(title, subtitle)]), .. marks],
    };

    /// <summary>Words at a place.</summary>
    public static TextMark Words(string text, Point2 at, double height = Ink.Note, TextAnchor anchor = TextAnchor.Start) => new()
    {
        Text = text,
        At = at,
        HeightMm = height,
        Colour = Ink.Dark,
        Anchor = anchor,
    };

    /// <summary>The line to be measured after printing, its left end at a place.</summary>
    public static IEnumerable<Mark> Measured(Point2 left)
    {
        Point2 right = left + new Point2(Bar, 0);
        Point2 tick = new(0, 2);
        yield return new PathMark(
            [Chain.Open(left, right), Chain.Open(left - tick, left + tick), Chain.Open(right - tick, right + tick)], Ink.Narrow);
        yield return Words("Printed at 100 % this line is 100.0 mm long.", right + new Point2(3, -Ink.Note / 2));
    }

    private static IEnumerable<Mark> Title(string title, string subtitle)
    {
        const double top = Height - Margin;
        yield return Words(StrokeFont.Fitted(title, Ink.Title, Width - (2 * Margin)), new Point2(Margin, top - Ink.Title), Ink.Title);
        yield return Words(StrokeFont.Fitted(subtitle, Ink.Note, Width - (2 * Margin)), new Point2(Margin, top - 12));
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(Width - Margin, top - 15))], Ink.Wide);
    }
}
