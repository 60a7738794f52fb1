using FeltNest.Geometry;

namespace FeltNest.Drawing.Parts;

/// <summary>Dimensions after ISO 129-1: extension lines past the dimension line, arrows, the number above the line and readable from below
/// or from the right.</summary>
internal static class Dimension
{
    // Length of an arrow, how far extension lines pass the dimension line and start off the outline, and the room between line and number:
    // mm.
    private const double Head = 2.5;
    private const double Past = 2;
    private const double Off = 1;
    private const double Room = 1;

    /// <summary>A level dimension at height <paramref name="y"/> between two points.</summary>
    public static IEnumerable<Mark> Level(Point2 a, Point2 b, double y, string text, double height = Ink.Label)
    {
        foreach (Mark mark in Extension(a, new Point2(a.X, y)).Concat(Extension(b, new Point2(b.X, y))))
        {
            yield return mark;
        }

        Point2 from = new(Math.Min(a.X, b.X), y);
        Point2 to = new(Math.Max(a.X, b.X), y);
        double width = StrokeWidth(text, height);
        // Too short for its number: the number stands to the right of the line, and the arrows point at it from outside.
        bool tight = to.X - from.X < width + (2 * Head);
        foreach (Mark mark in tight ? Outside(from, to) : Arrows.Line(from, to, Ink.Narrow, Head, both: true))
        {
            yield return mark;
        }

        yield return tight
            ? new TextMark
            {
                Text = text,
                At = new Point2(to.X + (3 * Head), y - (height / 2)),
                HeightMm = height,
                Colour = Ink.Dark,
            }
            : new TextMark
            {
                Text = text,
                At = new Point2((from.X + to.X) / 2, y + Room),
                HeightMm = height,
                Colour = Ink.Dark,
                Anchor = TextAnchor.Middle,
            };
    }

    /// <summary>An upright dimension at <paramref name="x"/> between two points.</summary>
    public static IEnumerable<Mark> Upright(Point2 a, Point2 b, double x, string text, double height = Ink.Label)
    {
        foreach (Mark mark in Extension(a, new Point2(x, a.Y)).Concat(Extension(b, new Point2(x, b.Y))))
        {
            yield return mark;
        }

        Point2 from = new(x, Math.Min(a.Y, b.Y));
        Point2 to = new(x, Math.Max(a.Y, b.Y));
        double width = StrokeWidth(text, height);
        bool tight = to.Y - from.Y < width + (2 * Head);
        bool crossed = to.Y - from.Y < 3 * Head;
        foreach (Mark mark in crossed ? Outside(from, to) : Arrows.Line(from, to, Ink.Narrow, Head, both: true))
        {
            yield return mark;
        }

        yield return tight
            ? new TextMark
            {
                Text = text,
                At = new Point2(x - Room - Head, ((from.Y + to.Y) / 2) - (height / 2)),
                HeightMm = height,
                Colour = Ink.Dark,
                Anchor = TextAnchor.End,
            }
            : new TextMark
            {
                Text = text,
                At = new Point2(x - Room, (from.Y + to.Y) / 2),
                HeightMm = height,
                Colour = Ink.Dark,
                Anchor = TextAnchor.Middle,
                Angle = Math.PI / 2,
            };
    }

    private static double StrokeWidth(string text, double height) => Lettering.StrokeFont.Width(text, height);

    private static IEnumerable<Mark> Extension(Point2 from, Point2 to)
    {
        Point2 way = to - from;
        if (way.Length > Off)
        {
            Point2 unit = way * (1 / way.Length);
            yield return new PathMark([Chain.Open(from + (unit * Off), to + (unit * Past))], Ink.Narrow);
        }
    }

    private static IEnumerable<Mark> Outside(Point2 from, Point2 to)
    {
        Point2 unit = (to - from) * (1 / (to - from).Length);
        yield return new PathMark([Chain.Open(from - (unit * 2 * Head), to + (unit * 2 * Head))], Ink.Narrow);
        yield return Arrows.Head(from - (unit * 2 * Head), from, Head, Ink.Dark);
        yield return Arrows.Head(to + (unit * 2 * Head), to, Head, Ink.Dark);
    }
}
