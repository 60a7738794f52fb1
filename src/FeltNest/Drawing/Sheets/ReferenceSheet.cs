using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel.Trace;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of reference marks to print and to lay a panel on: it fits A4 and American letter paper.</summary>
internal static class ReferenceSheet
{
    // What A4 and letter paper have in common, mm.
    private const double Width = 210;
    private const double Height = 279.4;

    // Length to be measured after printing, mm.
    private const double Bar = 100;

    private static readonly Colour Black = Colour.Of(0x000000);
    private static readonly Colour White = Colour.Of(0xFFFFFF);

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw()
    {
        Point2 middle = new(Width / 2, Height / 2);
        return new Sheet
        {
            Title = "Sheet of reference marks",
            Description = "six marks that give a photo its scale and take its slant away; the panel lies inside them",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                .. MarkSheet.Marks.SelectMany(mark => MarkSheet.Radii.Select((radius, i) =>
                    (Mark)new PathMark([Chain.Circle(middle + mark, radius)], null, i % 2 == 0 ? Black : White))),
                new GroupMark("words", [.. Words(middle)]),
            ],
        };
    }

    private static IEnumerable<Mark> Words(Point2 middle)
    {
        string[] lines =
        [
            "Print at 100 %. Measure the line: it has to be 100.0 mm. Lay the sheet flat, the panel inside the marks, nap upwards,",
            "nothing else on it. On a white sheet a white panel is not seen. Photograph all six marks from above, with even light.",
        ];
        for (int i = 0; i < lines.Length; i++)
        {
            yield return new TextMark
            {
                Text = lines[i],
                At = new Point2(middle.X, middle.Y - MarkSheet.Room.Y - 10 - (i * TextBlock.LineStep)),
                HeightMm = Ink.Note - 0.7,
                Colour = Ink.Dark,
                Anchor = TextAnchor.Middle,
            };
        }

        Point2 left = new(middle.X - (Bar / 2), middle.Y + MarkSheet.Room.Y + 8);
        Point2 right = left + new Point2(Bar, 0);
        Point2 tick = new(0, 2);
        yield return new PathMark(
            [Chain.Open(left, right), Chain.Open(left - tick, left + tick), Chain.Open(right - tick, right + tick)], Ink.Narrow);
    }
}
