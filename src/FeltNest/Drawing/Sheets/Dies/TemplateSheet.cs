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

    /// <summary>Draws the sheet of a part as number <paramref name="number"/> of <paramref name="count"/>.</summary>
    public static Sheet Draw(DieDesign design, int part, int number, int count)
    {
        DieOrder order = design.Request.Order;
        DieEdge edge = design.Edges[part]!;
        Box extent = DieParts.Extent(edge);
        double half = order.Tolerances.PanelProfileMm / 2;
        PaperSize size = PaperSize.All.Where(s => s.Name != "A4")
            .FirstOrDefault(s => extent.Width + 24 < DieParts.ColumnTop(s).X - s.Space.MinX && extent.Height + 110 < s.Space.Height)
            ?? PaperSize.Of("A0");
        List<Mark> marks = DieParts.Base(size, order, new SheetPlace
        {
            Number = number,
            Count = count,
            Scale = "1:1",
            Part = DieParts.OfPart(design, part, "Template"),
        });
        Point2 top = DieParts.ColumnTop(size);
        double left = size.Space.MinX + DieParts.Rim;
        double right = top.X - DieParts.Rim;
        Point2 centre = new(((left + right) / 2) - ((extent.MinX + extent.MaxX) / 2), size.Space.MaxY - 22 - extent.MaxY);
        marks.Add(new PathMark([new Chain(edge.Arcs.Vertices, true).Placed(1, 0, centre)], Ink.Centre));
        marks.Add(
            new PathMark(
                [DieParts.Offset(edge, half).Placed(1, 0, centre), DieParts.Offset(edge, -half).Placed(1, 0, centre)],
                new Pen(0.25, Ink.Dark)));
        marks.AddRange(Places(edge, centre));
        marks.Add(new TextMark
        {
            Text = "panel view, nap side up",
            At = new Point2(left, size.Space.MaxY - 8),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
        });
        string f(double v) => v.ToString("0.###", CultureInfo.InvariantCulture);
        string[] words =
        [
            $"Lay the panel nap side up so that it lies evenly between the two full lines; they stand {f(half)} mm outside and inside "
                + $"the outline, the dash-dot line.",
            "ACCEPT: all of its edge lies between the two full lines. REJECT: its edge passes the outer line or the inner line anywhere.",
            "Print at 100 %: the bar must measure 100 mm and the length of the outline "
                + f(extent.Width)
                + " mm, or do not use this sheet.",
            "First cut card panels of every cavity, then felt; measure at the places numbered, relaxed, after at least an hour; mark "
                + "cavity, top or bottom ply. Points measured all round can be judged by the program (first article).",
        ];
        (IEnumerable<Mark> safety, double safetyHigh) = DieParts.BriefSafety(new Point2(left, size.Space.MinY + 4), right - left);
        marks.AddRange(safety);
        double below = centre.Y + extent.MinY - 14;
        marks.AddRange(TextBlock.Draw(new Point2(left, below), right - left, words));
        marks.AddRange(DieParts.Bar(new Point2(left + 2, size.Space.MinY + safetyHigh + 14)));
        marks.AddRange(Readings(top, extent, DieParts.TitleTop(size)));
        return new Sheet
        {
            Title = $"{order.Name}: {DieParts.OfPart(design, part, "template and first article")}",
            Description = "Template at 1:1 with the lines of the tolerance, and a table for the first panels.",
            WidthMm = size.WidthMm,
            HeightMm = size.HeightMm,
            Symbols = [],
            Marks = marks,
        };
    }

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
        string f(double v) => v.ToString("0.00", CultureInfo.InvariantCulture);
        double[] columns = [22, 22, 18, 18, 25, 25, 25, 25];
        string[] names = ["date", "strikes", "cavity", "ply", "length", "width", "worst place", "accepted"];
        double step = Math.Min(9, (top.Y - 24 - bottom) / (Blanks + 1));
        yield return new TextMark
        {
            Text = $"First article: length {f(extent.Width)}, width {f(extent.Height)} mm wanted",
            At = top - new Point2(0, 5),
            HeightMm = Ink.Label,
            Colour = Ink.Dark,
        };
        double y = top.Y - 10;
        double x = top.X;
        for (int c = 0; c < columns.Length; c++)
        {
            yield return new TextMark
            {
                Text = names[c],
                At = new Point2(x + 1.2, y - 5),
                HeightMm = Ink.Note,
                Colour = Ink.Soft,
            };
            x += columns[c];
        }

        List<Chain> lines = [];
        for (int r = 0; r <= Blanks; r++)
        {
            double level = y - 7 - (r * step);
            lines.Add(Chain.Open(new Point2(top.X, level), new Point2(x, level)));
        }

        double edge = top.X;
        foreach (double wide in columns)
        {
            lines.Add(Chain.Open(new Point2(edge, y - 7), new Point2(edge, y - 7 - (Blanks * step))));
            edge += wide;
        }

        yield return new PathMark(lines, Ink.Narrow);
    }
}
