using FeltNest.Geometry;

namespace FeltNest.Drawing.Lettering;

/// <summary>Sets lines of text in strokes.</summary>
internal static class StrokeFont
{
    // Glyphs are drawn in tenths of the capital height; space after a letter and width of the stroke in the same unit.
    private const double Unit = 0.1;
    private const double Space = 2.2;
    private const double Stroke = 1;

    /// <summary>Pen for letters of a height.</summary>
    public static Pen PenOf(double height, Colour colour) => new(Stroke * Unit * height, colour);

    /// <summary>Width of a line of text, mm.</summary>
    public static double Width(string text, double height) =>
        text.Length == 0 ? 0 : Unit * height * (text.Sum(letter => GlyphTable.Of(letter).Width + Space) - Space);

    /// <summary>Share of a line of text that stands before the place of its anchor.</summary>
    public static double Before(TextAnchor anchor) => anchor switch
    {
        TextAnchor.Middle => 0.5,
        TextAnchor.End => 1,
        _ => 0,
    };

    /// <summary>Strokes of a text in the frame of the sheet.</summary>
    public static IReadOnlyList<Chain> Strokes(TextMark mark)
    {
        double size = Unit * mark.HeightMm;
        double x = -Width(mark.Text, mark.HeightMm) * Before(mark.Anchor);
        List<Chain> strokes = [];
        foreach (char letter in mark.Text)
        {
            Glyph glyph = GlyphTable.Of(letter);
            Point2 origin = new Point2(x, 0).Turned(mark.Angle) + mark.At;
            strokes.AddRange(glyph.Strokes.Select(stroke => stroke.Placed(size, mark.Angle, origin)));
            x += size * (glyph.Width + Space);
        }

        return strokes;
    }

    /// <summary>The text, cut with three dots where it would be wider than <paramref name="width"/> mm.</summary>
    public static string Fitted(string text, double height, double width)
    {
        if (Width(text, height) <= width)
        {
            return text;
        }

        int length = text.Length;
        while (length > 1 && Width(text[..length] + "...", height) > width)
        {
            length--;
        }

        return text[..length] + "...";
    }
}
