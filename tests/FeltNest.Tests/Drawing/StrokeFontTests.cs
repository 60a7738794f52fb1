using FeltNest.Drawing;
using FeltNest.Drawing.Lettering;
using FeltNest.Geometry;
using Xunit;

namespace FeltNest.Tests.Drawing;

public sealed class StrokeFontTests
{
    private const double Fine = 0.01;

    [Fact]
    public void Every_printable_ascii_character_and_the_signs_of_drawings_have_a_glyph()
    {
        HashSet<char> letters = [.. GlyphTable.Letters];

        Assert.All(Enumerable.Range(32, 95), code => Assert.Contains((char)code, letters));
        Assert.All("\u00B0\u00D7\u00B1\u00B2\u2300\u00B5", letter => Assert.Contains(letter, letters));
    }

    [Fact]
    public void No_stroke_leaves_the_room_of_its_letter()
    {
        foreach (char letter in GlyphTable.Letters)
        {
            Glyph glyph = GlyphTable.Of(letter);
            foreach (Point2 p in glyph.Strokes.SelectMany(stroke => stroke.Flattened(Fine)))
            {
                Assert.True(
                    p.X >= -0.35 && p.X <= glyph.Width + 0.35 && p.Y >= -3.3 && p.Y <= 12,
                    $"'{letter}' reaches ({p.X:0.##}, {p.Y:0.##}), width {glyph.Width}");
            }
        }
    }

    [Fact]
    public void Capitals_and_digits_stand_ten_high_on_the_base_line()
    {
        foreach (char letter in "ABCDEFGHIJKLMNOPRSTUVWXYZ0123456789")
        {
            double[] heights = [.. GlyphTable.Of(letter).Strokes.SelectMany(stroke => stroke.Flattened(Fine)).Select(p => p.Y)];
            Assert.Equal(0, heights.Min(), 0.06);
            Assert.Equal(10, heights.Max(), 0.06);
        }
    }

    [Fact]
    public void Letters_of_a_height_have_a_stroke_a_tenth_of_it() => Assert.Equal(0.35, StrokeFont.PenOf(3.5, Colour.Of(0)).WidthMm, 12);

    [Fact]
    public void Digits_share_one_width_so_that_numbers_stand_in_columns()
    {
        Assert.Equal(StrokeFont.Width("0000", 3.5), StrokeFont.Width("1478", 3.5), 12);
    }

    [Fact]
    public void A_text_is_as_wide_as_its_outermost_strokes_say()
    {
        // "HH": two letters 6.2 wide with a space of 2.2 between, in tenths of 5 mm.
        Assert.Equal(0.5 * (6.2 + 2.2 + 6.2), StrokeFont.Width("HH", 5), 12);
        Assert.Equal(0, StrokeFont.Width(string.Empty, 5));
    }

    [Theory]
    [InlineData(nameof(TextAnchor.Start), 10, 13.1)]
    [InlineData(nameof(TextAnchor.Middle), 8.45, 11.55)]
    [InlineData(nameof(TextAnchor.End), 6.9, 10)]
    public void The_anchor_says_which_end_stands_at_the_place(string anchor, double left, double right)
    {
        double[] xs =
        [
            .. StrokeFont.Strokes(new TextMark
            {
                Text = "H",
                At = new Point2(10, 20),
                HeightMm = 5,
                Colour = Colour.Of(0),
                Anchor = Enum.Parse<TextAnchor>(anchor),
            })
                .SelectMany(s => s.Vertices)
                .Select(v => v.X),
        ];

        Assert.Equal(left, xs.Min(), 12);
        Assert.Equal(right, xs.Max(), 12);
    }

    [Fact]
    public void A_text_turned_by_a_quarter_reads_upwards()
    {
        Point2[] points =
        [
            .. StrokeFont.Strokes(new TextMark
            {
                Text = "I",
                At = new Point2(10, 20),
                HeightMm = 5,
                Colour = Colour.Of(0),
                Anchor = TextAnchor.Start,
                Angle = Math.PI / 2,
            })
                .SelectMany(s => s.Vertices)
                .Select(v => v.Point),
        ];

        Assert.Equal(10, points[0].X, 12);
        Assert.Equal(20, points[0].Y, 12);
        Assert.Equal(5, points[1].X, 12);
        Assert.Equal(20, points[1].Y, 12);
    }

    [Fact]
    public void A_character_without_a_glyph_shows_as_a_box() => Assert.Same(GlyphTable.Of(GlyphTable.Unknown), GlyphTable.Of('\u4E2D'));

    [Fact]
    public void A_text_too_wide_for_its_room_is_cut_with_dots()
    {
        Assert.Equal("short", StrokeFont.Fitted("short", 2.5, 100));

        string cut = StrokeFont.Fitted(new string('x', 200), 2.5, 40);
        Assert.EndsWith("x...", cut, StringComparison.Ordinal);
        Assert.InRange(StrokeFont.Width(cut, 2.5), 35, 40);
    }
}
