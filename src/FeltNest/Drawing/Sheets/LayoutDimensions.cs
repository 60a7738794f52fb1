using System.Globalization;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Drawing.Sheets;

/// <summary>The dimensions of a layout sheet: roll width, usable width, edge trim, row step, repeat, and the gap where it is
/// least.</summary>
internal static class LayoutDimensions
{
    // Rows whose centres are nearer than this across the roll, mm, are one row.
    private const double SameRow = 0.5;

    /// <summary>The marks, with the cloth's lower left corner on the sheet at a place.</summary>
    public static IEnumerable<Mark> Draw(RollLayout layout, ClothView view, Point2 corner)
    {
        double right = corner.X + view.PaperWidth;
        double width = view.PaperHeight;
        double lower = layout.Trims.LowerMm * view.Scale;
        double upper = layout.Trims.UpperMm * view.Scale;
        List<Mark> marks = [];
        marks.AddRange(Dimension.Upright(corner, corner + new Point2(0, width), corner.X - 17, Mm(layout.RollWidthMm), Ink.Note));
        if (lower + upper > 0)
        {
            marks.AddRange(Dimension.Upright(
                new Point2(corner.X, corner.Y + lower), new Point2(corner.X, corner.Y + width - upper), corner.X - 9,
                Mm(layout.UsableWidthMm), Ink.Note));
            marks.Add(
                new TextMark
                {
                    Text = Mm(layout.Trims.LowerMm),
                    At = new Point2(right + 2, corner.Y + (lower / 2) - (Ink.Note / 2)),
                    HeightMm = Ink.Note,
                    Colour = Ink.Dark,
                });
            marks.Add(
                new TextMark
                {
                    Text = Mm(layout.Trims.UpperMm),
                    At = new Point2(right + 2, corner.Y + width - (upper / 2) - (Ink.Note / 2)),
                    HeightMm = Ink.Note,
                    Colour = Ink.Dark,
                });
        }

        marks.AddRange(RepeatLength(layout, view, corner));
        marks.AddRange(RowStep(layout, view, corner, right));
        return marks;
    }

    // From a panel of the lowest row to its own copy one repeat on.
    private static IEnumerable<Mark> RepeatLength(RollLayout layout, ClothView view, Point2 corner)
    {
        LayoutRepeat repeat = layout.Bands[0].Repeat;
        PlacedPanel first = repeat.Panels.MinBy(p => (p.YMm, ClothView.Folded(p.XMm, repeat.LengthMm)));
        double x = ClothView.Folded(first.XMm, repeat.LengthMm);
        Point2 a = view.Paper(corner, x, first.YMm);
        Point2 b = view.Paper(corner, x + repeat.LengthMm, first.YMm);
        yield return new PathMark([Cross(a), Cross(b)], Ink.Narrow);
        foreach (Mark mark in Dimension.Level(a, b, corner.Y - 9, "repeat " + Mm(repeat.LengthMm), Ink.Note))
        {
            yield return mark;
        }
    }

    // Between the centres of the two lowest rows.
    private static IEnumerable<Mark> RowStep(RollLayout layout, ClothView view, Point2 corner, double right)
    {
        LayoutRepeat repeat = layout.Bands[0].Repeat;
        double[] rows = [.. Distinct(repeat.Panels.Select(p => p.YMm).Order())];
        if (rows.Length < 2)
        {
            yield break;
        }

        double x = right + 12;
        Point2 from = new(right, view.Paper(corner, 0, rows[0]).Y);
        Point2 to = new(right, view.Paper(corner, 0, rows[1]).Y);
        foreach (Mark mark in Dimension.Upright(from, to, x, string.Empty, Ink.Note))
        {
            yield return mark;
        }

        yield return new TextMark
        {
            Text = $"row step {Mm(rows[1] - rows[0])}",
            At = new Point2(x + 3.5, to.Y + 3),
            HeightMm = Ink.Note,
            Colour = Ink.Dark,
            Anchor = TextAnchor.Start,
            Angle = Math.PI / 2,
        };
    }

    private static IEnumerable<double> Distinct(IEnumerable<double> sorted)
    {
        double last = double.NegativeInfinity;
        foreach (double y in sorted)
        {
            if (y > last + SameRow)
            {
                yield return last = y;
            }
        }
    }

    private static Chain Cross(Point2 at) =>
        Chain.Open(at + new Point2(-1, 0), at + new Point2(1, 0), at, at + new Point2(0, 1), at + new Point2(0, -1));

    private static string Mm(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
