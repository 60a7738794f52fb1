using System.Globalization;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel.Trace;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of a traced picture: the picture itself, and over it what was found.</summary>
internal static class TraceSheet
{
    // A4 lying; margin, title, and the column of figures, mm.
    private const double Width = 297;
    private const double Height = 210;
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double Column = 88;

    // Chords of the arcs, mm of panel.
    private const double Chord = 0.02;

    private static readonly Pen Edge = new(0.7, Colour.Of(0xC2185B));
    private static readonly Pen Mean = new(0.25, Colour.Of(0x0B5E9C));
    private static readonly Pen Warp = new(0.5, Colour.Of(0x0B5E9C));

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(string name, TracedPanel traced)
    {
        ColourPicture picture = traced.Flat.Picture;
        double wide = Width - (2 * Margin) - Column - 8;
        double high = Height - (2 * Margin) - TitleRoom - 8;
        double scale = Math.Min(wide / picture.Width, high / picture.Height);
        const double top = Height - Margin - TitleRoom;
        Box at = new()
        {
            MinX = Margin,
            MinY = top - (picture.Height * scale),
            MaxX = Margin + (picture.Width * scale),
            MaxY = top,
        };
        return new Sheet
        {
            Title = $"Traced from {name}",
            Description = "the picture, and over it the edges and marks that were found",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                new GroupMark("title", [.. Title(name)]),
                new PictureMark(picture, at),
                new GroupMark("found", [.. Found(traced, at, scale)]),
                new GroupMark(
                    "figures",
                    [.. FigureTable.Draw(new Point2(Width - Margin - Column, Height - Margin - TitleRoom), Column, Figures(traced))]),
                new GroupMark("words", [.. Words(traced)]),
            ],
        };
    }

    private static IEnumerable<Mark> Found(TracedPanel traced, Box at, double scale)
    {
        Point2 corner = new(at.MinX, at.MinY);
        Point2 Pixel(Point2 place) => corner + ((place + new Point2(0.5, 0.5)) * scale);
        foreach (Contour panel in traced.Found.Panels)
        {
            yield return new PathMark([Chain.Ring(panel.Places.Select(Pixel))], Edge);
        }

        Chain outline = new(traced.Outline.Vertices, true);
        yield return new PathMark(
            [Chain.Ring(outline.Flattened(Chord).Select(p => corner + (p * (scale / traced.Flat.PixelMm))))], Mean);
        if (traced.Marks is { } marks)
        {
            yield return new PathMark([Chain.Open(Pixel(marks.From), Pixel(marks.To))], Warp);
            if (marks.HasNap)
            {
                yield return new PathMark([Chain.Circle(Pixel(marks.To), 1.2)], Warp);
            }
        }
    }

    private static List<(string Name, string Value)> Figures(TracedPanel traced)
    {
        static string Number(double? value, string format, string unit) =>
            value is { } known ? $"{known.ToString(format, CultureInfo.InvariantCulture)} {unit}".TrimEnd() : "-";
        return
        [
            ("Picture", string.Empty),
            ("scale by", traced.Flat.MarksOffMm is null ? "resolution" : "reference marks"),
            ("a pixel", Number(traced.Flat.PixelMm, "0.0000", "mm")),
            ("marks off one flat sheet, rms", Number(traced.Flat.MarksOffMm, "0.000", "mm")),
            ("panel and ground apart", $"{Number(traced.Found.Contrast, "0", "of 255")}, {traced.Found.Seen}"),
            ("Panels", Number(traced.Found.Panels.Count, "0", string.Empty)),
            ("left aside", Number(traced.Found.LeftAside, "0", string.Empty)),
            ("grain taken out, rms", Number(traced.Smoothing?.RmsMm, "0.000", "mm")),
            ("spread of the panels, rms", Number(traced.Spread?.RmsMm, "0.000", "mm")),
            ("  at most", Number(traced.Spread?.GreatestMm, "0.000", "mm")),
            ("Outline", string.Empty),
            ("area", Number(traced.Outline.Area / 100, "0.00", "cm\u00B2")),
            ("edge length", Number(traced.Outline.Perimeter, "0.00", "mm")),
            ("warp to the picture's x", Number(traced.WarpAngleDeg, "0.0", "degrees")),
        ];
    }

    private static IEnumerable<Mark> Words(TracedPanel traced)
    {
        string words = traced.Spread is null
            ? "Red: edge seen. Blue: outline, and ink along the warp. Look closely before it is used."
            : "Red: edges seen. Blue: mean outline, laid on the first panel, and ink along the warp. Look closely before it is used.";
        yield return new TextMark { Text = words, At = new Point2(Margin, Margin), HeightMm = Ink.Note, Colour = Ink.Dark };
    }

    private static IEnumerable<Mark> Title(string name)
    {
        const double top = Height - Margin;
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"Traced from {name}", Ink.Title, Width - (2 * Margin)),
            At = new Point2(Margin, top - Ink.Title),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 9), new Point2(Width - Margin, top - 9))], Ink.Wide);
    }
}
