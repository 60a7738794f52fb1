using System.Globalization;
using FeltNest.Die;
using FeltNest.Die.Edge;
using FeltNest.Die.Order;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>Template at 1:1 to lay a cut blank on: the outline between the two lines its edge must stay between, numbered places to
/// measure, and a table for the readings.</summary>
internal static class TemplateSheet
{
    // Places to measure, and rows for blanks: first, last and some between.
    private const int Stations = 12;
    private const int Blanks = 14;

    // Names and widths of the columns of the table, mm.
    private static readonly (string Name, double Wide)[] Columns =
    [
        ("date", 22), ("strikes", 22), ("cavity", 18), ("ply", 18), ("length", 25), ("width", 25), ("worst place", 25), ("accepted", 25),
    ];

    /// <summary>Draws the sheet of a part as number <paramref name="number"/> of <paramref name="count"/>.</summary>
    public static Sheet Draw(DieDesign design, int part, int number, int count)
    {
        DieOrder order = design.Request.Order;
        DieEdge edge = design.Edges[part]!;
        Box extent = DieParts.Extent(edge);
        PaperSize size = SizeFor(extent);
        Point2 top = DieParts.ColumnTop(size);
        double left = size.Space.MinX + DieParts.Rim;
        double right = top.X - DieParts.Rim;
        Point2 centre = new(((left + right) / 2) - ((extent.MinX + extent.MaxX) / 2), size.Space.MaxY - 22 - extent.MaxY);
        double half = order.Tolerances.PanelProfileMm / 2;
        (IEnumerable<Mark> safety, double safetyHigh) = DieParts.BriefSafety(new Point2(left, size.Space.MinY + 4), right - left);
        string template = DieParts.OfPart(design, part, "Template");
        return new Sheet
        {
            Title = $"{order.Name}: {DieParts.OfPart(design, part, "template and first article")}",
            Description = "Template at 1:1 with the lines of the tolerance, and a table for the first panels.",
            WidthMm = size.WidthMm,
            HeightMm = size.HeightMm,
            Symbols = [],
            Marks =
            [
                .. DieParts.Base(size, order, new SheetPlace { Number = number, Count = count, Scale = "1:1", Part = template }),
                .. Lines(edge, half, centre),
                .. Places(edge, centre),
                Note("panel view, nap side up", new Point2(left, size.Space.MaxY - 8), Ink.Dark),
                .. safety,
                .. TextBlock.Draw(new Point2(left, centre.Y + extent.MinY - 14), right - left, Words(half, extent)),
                .. DieParts.Bar(new Point2(left + 2, size.Space.MinY + safetyHigh + 14)),
                .. Readings(top, extent, DieParts.TitleTop(size)),
            ],
        };
    }

    // The least sheet above A4 with room for the outline, the words below it and the table beside it.
    private static PaperSize SizeFor(Box extent) =>
        PaperSize.All.Where(s => s.Name != "A4")
            .FirstOrDefault(s => extent.Width + 24 < DieParts.ColumnTop(s).X - s.Space.MinX && extent.Height + 110 < s.Space.Height)
            ?? PaperSize.Of("A0");

    // The outline, and the two lines that the edge must stay between.
    private static IEnumerable<Mark> Lines(DieEdge edge, double half, Point2 centre)
    {
        yield return new PathMark([new Chain(edge.Arcs.Vertices, true).Placed(1, 0, centre)], Ink.Centre);
        yield return new PathMark(
            [DieParts.Offset(edge, half).Placed(1, 0, centre), DieParts.Offset(edge, -half).Placed(1, 0, centre)],
            new Pen(0.25, Ink.Dark));
    }

    private static string[] Words(double half, Box extent) =>
    [
        $"Lay the panel nap side up so that it lies evenly between the two full lines; they stand {F(half, "0.###")} mm outside and inside "
            + $"the outline, the dash-dot line.",
        "ACCEPT: all of its edge lies between the two full lines. REJECT: its edge passes the outer line or the inner line anywhere.",
        "Print at 100 %: the bar must measure 100 mm and the length of the outline "
            + F(extent.Width, "0.###")
            + " mm, or do not use this sheet.",
        "First cut card panels of every cavity, then felt; measure at the places numbered, relaxed, after at least an hour; mark "
            + "cavity, top or bottom ply. Points measured all round can be judged by the program (first article).",
    ];

    private static IEnumerable<Mark> Places(DieEdge edge, Point2 centre)
    {
        double total = edge.Arcs.Perimeter;
        double step = total / Stations;
        double next = step / 2;
        double along = 0;
        int number = 1;
        foreach (EdgePiece piece in edge.Pieces)
        {
            for (; next < along + piece.LengthMm && number <= Stations; next += step)
            {
                double share = (next - along) / piece.LengthMm;
                Point2 at = piece.At(share) + centre;
                Point2 outward = -piece.Direction(share).Left;
                yield return new PathMark([Chain.Open(at + (outward * 1.5), at + (outward * 5))], Ink.Narrow);
                yield return new TextMark
                {
                    Text = number++.ToString(CultureInfo.InvariantCulture),
                    At = at + (outward * 7.5) - new Point2(0, Ink.Note / 2),
                    HeightMm = Ink.Note,
                    Colour = Ink.Dark,
                    Anchor = TextAnchor.Middle,
                };
            }

            along += piece.LengthMm;
        }
    }

    private static IEnumerable<Mark> Readings(Point2 top, Box extent, double bottom)
    {
        yield return new TextMark
        {
            Text = $"First article: length {F(extent.Width, "0.00")}, width {F(extent.Height, "0.00")} mm wanted",
            At = top - new Point2(0, 5),
            HeightMm = Ink.Label,
            Colour = Ink.Dark,
        };
        double y = top.Y - 10;
        double x = top.X;
        foreach ((string name, double wide) in Columns)
        {
            yield return Note(name, new Point2(x + 1.2, y - 5), Ink.Soft);
            x += wide;
        }

        double step = Math.Min(9, (top.Y - 24 - bottom) / (Blanks + 1));
        yield return new PathMark(Grid(new Point2(top.X, y - 7), x, step), Ink.Narrow);
    }

    // The lines of the empty table, from its upper left corner to its right edge.
    private static List<Chain> Grid(Point2 corner, double right, double step)
    {
        List<Chain> lines = [];
        for (int r = 0; r <= Blanks; r++)
        {
            double level = corner.Y - (r * step);
            lines.Add(Chain.Open(new Point2(corner.X, level), new Point2(right, level)));
        }

        double edge = corner.X;
        foreach ((_, double wide) in Columns)
        {
            lines.Add(Chain.Open(new Point2(edge, corner.Y), new Point2(edge, corner.Y - (Blanks * step))));
            edge += wide;
        }

        return lines;
    }

    private static TextMark Note(string words, Point2 at, Colour colour) => new()
    {
        Text = words,
        At = at,
        HeightMm = Ink.Note,
        Colour = colour,
    };

    private static string F(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
