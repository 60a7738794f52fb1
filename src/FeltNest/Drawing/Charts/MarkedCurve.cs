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

    // Half a mark, room between two names of a line, mm.
    private const double Dot = 1.2;
    private const double NameRoom = 3;

    private static readonly Pen Line = new(0.45, Colour.Of(0x41606F));
    private static readonly Pen Leader = new(0.13, Ink.Soft);
    private static readonly Pen Dashed = new(0.18, Ink.Soft, 1.5, 1);
    private static readonly Colour Spot = Colour.Of(0x9C4A0B);

    /// <summary>The marks of the chart in a rectangle of the sheet.</summary>
    public IEnumerable<Mark> Draw(Box frame)
    {
        ChartAxis across = ChartAxis.Around(Curve.Concat(Marked.Select(m => m.At)).Select(p => p.X), 10);
        double left = frame.MinX + LeftRoom;
        double right = frame.MaxX - RightRoom;
        (string Name, Point2 At, double X, int Level)[] names = Levels(x => left + (across.Share(x) * (right - left)), right);
        double top = frame.MaxY - TitleRoom - (names.Length == 0 ? 0 : (names.Max(n => n.Level) + 1) * NameStep);
        ChartPlot plot = new()
        {
            Room = new Box { MinX = left, MinY = frame.MinY + LowRoom, MaxX = right, MaxY = top },
            Across = across,
            Up = ChartAxis.Around(Curve.Concat(Marked.Select(m => m.At)).Select(p => p.Y), 5),
        };
        return
        [
            .. plot.Axes(frame, Title, XTitle),
            .. Lines.Where(x => x >= across.Low && x <= across.High).Select(x => Upright(plot, x)),
            .. Curve.Count > 1 ? [new PathMark([Chain.Open([.. Curve.Select(p => plot.Place(p.X, p.Y))])], Line)] : Array.Empty<Mark>(),
            .. names.SelectMany(n => Named(n.Name, plot.Place(n.At.X, n.At.Y), new Point2(n.X, top + (n.Level * NameStep) + 1))),
        ];
    }

    // A dashed line at a place of x, from the foot of the plot to its top.
    private static PathMark Upright(ChartPlot plot, double x) =>
        new([Chain.Open(plot.Place(x, plot.Up.Low), plot.Place(x, plot.Up.High))], Dashed);

    // A place with its mark, its name above the plot, and the leader between them.
    private static IEnumerable<Mark> Named(string name, Point2 place, Point2 foot)
    {
        yield return new PathMark([Chain.Open(new Point2(place.X, place.Y), new Point2(place.X, foot.Y - 0.4))], Leader);
        yield return new PathMark([Chain.Circle(place, Dot)], null, Spot);
        yield return new TextMark { Text = name, At = foot, HeightMm = Ink.Note, Colour = Spot };
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
}
