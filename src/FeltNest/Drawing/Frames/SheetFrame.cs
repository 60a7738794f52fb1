using System.Globalization;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Frames;

/// <summary>Frame, centring marks and grid of a drawing sheet after ISO 5457:1999 (from memory).</summary>
internal static class SheetFrame
{
    // Side of a field, reach of the centring marks beyond the frame, height of the grid's letters, and how far off the frame they stand:
    // mm.
    private const double Field = 50;
    private const double Reach = 10;
    private const double Letters = 3.5;
    private const double Off = 3;

    // Letters left out: they look like numerals.
    private const string Rows = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private static readonly Pen Line = new(0.7, Ink.Dark);
    private static readonly Pen Tick = new(0.35, Ink.Dark);

    /// <summary>The frame of a size.</summary>
    public static IEnumerable<Mark> Draw(PaperSize size)
    {
        Box space = size.Space;
        double middleX = size.WidthMm / 2;
        double middleY = size.HeightMm / 2;
        List<Mark> marks = [new PathMark([Chain.Rectangle(space)], Line)];
        marks.Add(new PathMark(
            [
                Chain.Open(new(middleX, space.MinY), new(middleX, space.MinY - Reach)),
                Chain.Open(new(middleX, space.MaxY), new(middleX, space.MaxY + Reach)),
                Chain.Open(new(space.MinX, middleY), new(space.MinX - Reach, middleY)),
                Chain.Open(new(space.MaxX, middleY), new(space.MaxX + Reach, middleY)),
            ],
            Line));
        bool small = size.Name == "A4";
        marks.AddRange(
            Side(
                size.FieldsAcross, middleX, space.MinX, space.MaxX, (i, at) => (new Point2(at, space.MaxY), new Point2(0, 1), Numeral(i))));
        marks.AddRange(
            Side(
                size.FieldsUp, middleY, space.MinY, space.MaxY,
                (i, at) => (new Point2(space.MaxX, at), new Point2(1, 0), Letter(size.FieldsUp, i))));
        if (!small)
        {
            marks.AddRange(
                Side(
                    size.FieldsAcross, middleX, space.MinX, space.MaxX,
                    (i, at) => (new Point2(at, space.MinY), new Point2(0, -1), Numeral(i))));
            marks.AddRange(
                Side(
                    size.FieldsUp, middleY, space.MinY, space.MaxY,
                    (i, at) => (new Point2(space.MinX, at), new Point2(-1, 0), Letter(size.FieldsUp, i))));
        }

        return marks;
    }

    private static string Numeral(int i) => (i + 1).ToString(CultureInfo.InvariantCulture);

    // Letters run downwards.
    private static string Letter(int count, int i) => Rows[count - 1 - i].ToString();

    // Ticks every field from the centring mark, and a name in the middle of each field.
    private static IEnumerable<Mark> Side(
        int fields, double middle, double from, double to, Func<int, double, (Point2 At, Point2 Out, string Name)> place)
    {
        for (int i = 0; i < fields; i++)
        {
            double low = Math.Max(from, middle + ((i - (fields / 2)) * Field));
            double high = i == fields - 1 ? to : Math.Min(to, middle + ((i + 1 - (fields / 2)) * Field));
            low = i == 0 ? from : low;
            (Point2 at, Point2 outward, string name) = place(i, (low + high) / 2);
            Point2 centre = at + (outward * (Off + (Letters / 2)));
            yield return new TextMark
            {
                Text = name,
                At = centre - new Point2(0, Letters / 2),
                HeightMm = Letters,
                Colour = Ink.Dark,
                Anchor = TextAnchor.Middle,
            };
            if (i > 0 && i != fields / 2)
            {
                (Point2 tick, _, _) = place(i, low);
                yield return new PathMark([Chain.Open(tick, tick + (outward * (Reach / 2)))], Tick);
            }
        }
    }
}
