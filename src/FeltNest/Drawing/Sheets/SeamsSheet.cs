using System.Globalization;
using FeltNest.Design;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of seam families side by side: the flat outlines over each other true to size, and their figures.</summary>
internal static class SeamsSheet
{
    // The sheet is at least A4 lying; margin and title, mm; then the table: height of a line and of its two lines of heads.
    private const double LeastWidth = 297;
    private const double LeastHeight = 210;
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double LineStep = 5.5;
    private const double HeadRoom = 12;

    // Green, brown, blue, slate, each with a dash of its own for grey prints.
    private static readonly Pen[] Pens =
    [
        new(0.4, Colour.Of(0x5E7A22)), new(0.4, Colour.Of(0x9C4A0B), 5, 1), new(0.4, Colour.Of(0x2A66AE), 2, 1),
        new(0.4, Colour.Of(0x41606F), 1, 1),
    ];

    private static readonly (string Name, string Unit, double Width, Func<SeamEntry, string> Value)[] Columns =
    [
        ("seam", "mm", 26, e => N(e.Panel.Sphere.SeamLengthMm, "0.00")),
        ("least radius", "mm", 26, e => N(e.Panel.Sphere.LeastRadiusMm, "0.00")),
        ("stretch", "%", 24, e => N(e.Panel.Strain.MaxStretchPercent, "0.00")),
        ("compression", "%", 28, e => N(e.Panel.Strain.MaxCompressionPercent, "0.00")),
        ("at the edge", "%", 26, e => N(e.Panel.Strain.EdgeMaxCompressionPercent, "0.00")),
        ("energy", "N mm", 24, e => N(e.Panel.Strain.EnergyNmm, "0.00")),
        ("panel", "cm\u00B2", 24, e => N(e.Panel.AreaMm2 / 100, "0.00")),
        ("felt", "m\u00B2 per 1000 balls", 36, e => N(e.Yield.PerThousandBalls.SquareMetres, "0.00")),
    ];

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(SeamComparison comparison)
    {
        FlatPanel[] panels = [.. comparison.Entries.Select(e => e.Panel)];
        double length = panels.Max(p => p.Outline.MaxX - p.Outline.MinX);
        double high = panels.Max(p => p.Outline.MaxY - p.Outline.MinY);
        double table = HeadRoom + (LineStep * panels.Length) + 18;
        double width = Math.Max(LeastWidth, length + (2 * Margin));
        double height = Math.Max(LeastHeight, high + table + TitleRoom + (2 * Margin) + 30);
        Point2 centre = new(width / 2, (Margin + table + height - Margin - TitleRoom) / 2);
        Mark[] marks =
        [
            new GroupMark("title", [.. Title(comparison, width, height)]),
            new GroupMark(
                "outlines",
                [
                    .. comparison.Entries.Select((e, i) =>
                        new PathMark([new Chain(e.Panel.Arcs.Vertices, true).Placed(1, 0, centre)], Pens[i])),
                ]),
            new GroupMark("scale-bar", [.. ScaleBar.Draw(new Point2(Margin + 4, Margin + table + 4), 100, 1)]),
            new GroupMark("table", [.. Table(comparison, Margin + table - 8)]),
        ];
        return new Sheet
        {
            Title = $"Seams of {comparison.Ball.Name}",
            Description = "flat panels of the seam families over each other, true to size",
            WidthMm = width,
            HeightMm = height,
            Symbols = [],
            Marks = marks,
        };
    }

    private static string N(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    // Long because it draws one table, column by column.
    private static IEnumerable<Mark> Table(SeamComparison comparison, double top)
    {
        const double name = Margin + 18;
        const double values = Margin + 46;
        double right = values;
        foreach ((string head, string unit, double wide, _) in Columns)
        {
            right += wide;
            yield return new TextMark
            {
                Text = head,
                At = new Point2(right, top - 3),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
                Anchor = TextAnchor.End,
            };
            yield return new TextMark
            {
                Text = unit,
                At = new Point2(right, top - 7),
                HeightMm = Ink.Note,
                Colour = Ink.Soft,
                Anchor = TextAnchor.End,
            };
        }

        yield return new PathMark([Chain.Open(new Point2(Margin, top - 9), new Point2(right, top - 9))], Ink.Narrow);
        for (int i = 0; i < comparison.Entries.Count; i++)
        {
            SeamEntry entry = comparison.Entries[i];
            double y = top - HeadRoom - (i * LineStep) - 2;
            yield return new PathMark([Chain.Open(new Point2(Margin, y + 1.2), new Point2(Margin + 14, y + 1.2))], Pens[i]);
            yield return new TextMark
            {
                Text = EnumWord.Of(entry.Ball.Seam.Curve),
                At = new Point2(name, y),
                HeightMm = Ink.Note,
                Colour = Pens[i].Colour,
            };
            right = values;
            foreach ((_, _, double wide, Func<SeamEntry, string> value) in Columns)
            {
                right += wide;
                yield return new TextMark
                {
                    Text = value(entry),
                    At = new Point2(right, y),
                    HeightMm = Ink.Note,
                    Colour = Ink.Dark,
                    Anchor = TextAnchor.End,
                };
            }
        }
    }

    private static IEnumerable<Mark> Title(SeamComparison comparison, double width, double height)
    {
        double top = height - Margin;
        double room = width - (2 * Margin);
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"Seams side by side: {comparison.Ball.Name}", Ink.Title, room),
            At = new Point2(Margin, top - Ink.Title),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"flat panels as cut, SCALE 1:1, mm   waist {comparison.WaistMm:0.##} mm on the sphere   "
                + $"{EnumWord.Of(comparison.Ball.Panel.Flattening)}, edge {EnumWord.Of(comparison.Ball.Panel.Edge)}   roll "
                + $"{comparison.Roll.RollWidthMm:0.##} mm, gap {comparison.Roll.GapMm:0.##} mm"
                + $"{(comparison.CutShort ? "   cut short" : string.Empty)}");
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(words, Ink.Note, room),
            At = new Point2(Margin, top - 12),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(width - Margin, top - 15))], Ink.Wide);
    }
}
