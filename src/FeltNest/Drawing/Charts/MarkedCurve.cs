using System.Globalization;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Charts;

/// <summary>A curve over x with single places marked and named above the plot.</summary>
internal sealed record MarkedCurve
{
    /// <summary>Title with the unit of y.</summary>
    public required string Title { get; init; }

    /// <summary>Title with the unit of x.</summary>
    public required string XTitle { get; init; }

    /// <summary>Places of the curve, least x first; may be empty.</summary>
    public required IReadOnlyList<Point2> Curve { get; init; }

    /// <summary>Places marked, with their names.</summary>
    public required IReadOnlyList<(string Name, Point2 At)> Marked { get; init; }

    /// <summary>Places of x marked by a dashed line.</summary>
    public required IReadOnlyList<double> Lines { get; init; }

    // Room around the plot for title, tick numbers and x title, and for one line of names above it, mm.
    private const double TitleRoom = 8;
    private const double LeftRoom = 14;
    private const double LowRoom = 12;
    private const double RightRoom = 4;
    private const double NameStep = 4.2;

    // Half a mark, length of a tick, room between two names of a line, mm.
    private const double Dot = 1.2;
    private const double Tick = 1.2;
    private const double NameRoom = 3;

    private static readonly Pen Grid = new(0.13, Colour.Of(0xD9DCDD));
    private static readonly Pen Line = new(0.45, Colour.Of(0x41606F));
    private static readonly Pen Leader = new(0.13, Ink.Soft);
    private static readonly Pen Dashed = new(0.18, Ink.Soft, 1.5, 1);
    private static readonly Colour Mark = Colour.Of(0x9C4A0B);

    /// <summary>The marks of the chart in a rectangle of the sheet.</summary>
    public IEnumerable<Mark> Draw(Box frame)
    {
        ChartAxis across = ChartAxis.Around(Curve.Concat(Marked.Select(m => m.At)).Select(p => p.X), 10);
        ChartAxis up = ChartAxis.Around(Curve.Concat(Marked.Select(m => m.At)).Select(p => p.Y), 5);
        double left = frame.MinX + LeftRoom;
        double right = frame.MaxX - RightRoom;
        (string Name, Point2 At, double X, int Level)[] names = Levels(x => left + (across.Share(x) * (right - left)), right);
        double top = frame.MaxY - TitleRoom - (names.Length == 0 ? 0 : (names.Max(n => n.Level) + 1) * NameStep);
        Box plot = new() { MinX = left, MinY = frame.MinY + LowRoom, MaxX = right, MaxY = top };
        Point2 Place(Point2 p) => new(plot.MinX + (across.Share(p.X) * plot.Width), plot.MinY + (up.Share(p.Y) * plot.Height));

        yield return new TextMark
        {
            Text = Title,
            At = new Point2(frame.MinX, frame.MaxY - Ink.Label),
            HeightMm = Ink.Label,
            Colour = Ink.Dark,
        };
        foreach (double y in up.Ticks())
        {
            Point2 at = Place(new(across.Low, y));
            yield return new PathMark([Chain.Open(at, Place(new(across.High, y)))], Grid);
            yield return new TextMark
            {
                Text = Text(y, up),
                At = at - new Point2(1.5, Ink.Note / 2),
                HeightMm = Ink.Note,
                Colour = Ink.Soft,
                Anchor = TextAnchor.End,
            };
        }

        foreach (double x in across.Ticks())
        {
            Point2 low = Place(new(x, up.Low));
            yield return new PathMark([Chain.Open(low, low - new Point2(0, Tick))], Ink.Narrow);
            yield return new TextMark
            {
                Text = Text(x, across),
                At = low - new Point2(0, Tick + Ink.Note + 1),
                HeightMm = Ink.Note,
                Colour = Ink.Soft,
                Anchor = TextAnchor.Middle,
            };
        }

        yield return new TextMark
        {
            Text = XTitle,
            At = new Point2((plot.MinX + plot.MaxX) / 2, frame.MinY + 1),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
            Anchor = TextAnchor.Middle,
        };
        yield return new PathMark(
            [Chain.Open(new Point2(plot.MinX, plot.MaxY), new Point2(plot.MinX, plot.MinY), new Point2(plot.MaxX, plot.MinY))], Ink.Narrow);
        foreach (double x in Lines.Where(x => x >= across.Low && x <= across.High))
        {
            yield return new PathMark([Chain.Open(Place(new(x, up.Low)), Place(new(x, up.High)))], Dashed);
        }

        if (Curve.Count > 1)
        {
            yield return new PathMark([Chain.Open([.. Curve.Select(Place)])], Line);
        }

        foreach ((string name, Point2 at, double x, int level) in names)
        {
            Point2 place = Place(at);
            double foot = top + (level * NameStep) + 1;
            yield return new PathMark([Chain.Open(new Point2(place.X, place.Y), new Point2(place.X, foot - 0.4))], Leader);
            yield return new PathMark([Chain.Circle(place, Dot)], null, Mark);
            yield return new TextMark { Text = name, At = new Point2(x, foot), HeightMm = Ink.Note, Colour = Mark };
        }
    }

    // Every name stands above its place on the lowest line where it meets neither another name nor the leader of one above it.
    private (string Name, Point2 At, double X, int Level)[] Levels(Func<double, double> place, double right)
    {
        List<(string Name, Point2 At, double X, int Level)> set = [];
        foreach ((string name, Point2 at) in Marked.OrderByDescending(m => m.At.X))
        {
            double width = StrokeFont.Width(name, Ink.Note);
            double x = Math.Min(place(at.X) + 1, right - width);
            bool Free(int level) =>
                set.TrueForAll(s => s.Level < level || (s.Level == level ? x + width + NameRoom < s.X : x + width + 1 < place(s.At.X)));
            int level = 0;
            while (!Free(level))
            {
                level++;
            }

            set.Add((name, at, x, level));
        }

        return [.. set];
    }

    private static string Text(double value, ChartAxis axis) => (value + 0.0).ToString(axis.Format, CultureInfo.InvariantCulture);
}
