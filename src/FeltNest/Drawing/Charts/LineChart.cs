using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Charts;

/// <summary>A line chart: lines over one x axis, each named at its right end, with one place of x marked from top to bottom.</summary>
internal sealed record LineChart
{
    /// <summary>Title with the unit of y.</summary>
    public required string Title { get; init; }

    /// <summary>Title with the unit of x.</summary>
    public required string XTitle { get; init; }

    /// <summary>Places on the x axis.</summary>
    public required IReadOnlyList<double> X { get; init; }

    /// <summary>Lines.</summary>
    public required IReadOnlyList<ChartSeries> Series { get; init; }

    /// <summary>The place marked, or null.</summary>
    public required double? MarkX { get; init; }

    /// <summary>Places marked by a thin line with their names above the plot.</summary>
    public IReadOnlyList<(string Name, double At)> Named { get; init; } = [];

    // Room around the plot for title, tick numbers, x title and the names of the lines, mm.
    private const double TopRoom = 8;
    private const double LeftRoom = 16;
    private const double LowRoom = 12;
    private const double RightRoom = 30;

    // Dot of a value, and the least distance of two names, mm.
    private const double Dot = 0.7;
    private const double NameStep = 3.6;

    private static readonly Pen Marked = new(0.35, Ink.Dark, 2, 1);
    private static readonly Pen Thin = new(0.18, Ink.Soft, 1.5, 1);

    /// <summary>The marks of the chart in a rectangle of the sheet.</summary>
    public IEnumerable<Mark> Draw(Box frame) => Draw(frame, Plot(frame, []));

    /// <summary>The plot in a rectangle of the sheet, tall enough for further values.</summary>
    public ChartPlot Plot(Box frame, IEnumerable<double> further) => new()
    {
        Room = new Box
        {
            MinX = frame.MinX + LeftRoom,
            MinY = frame.MinY + LowRoom,
            MaxX = frame.MaxX - RightRoom,
            MaxY = frame.MaxY - TopRoom - (Named.Count == 0 ? 0 : NameStep),
        },
        Across = ChartAxis.Around(X, 6),
        Up = ChartAxis.Around(Series.SelectMany(s => s.Values).Concat(further), 5),
    };

    /// <summary>The marks of the chart on a plot of its own that has been made.</summary>
    public IEnumerable<Mark> Draw(Box frame, ChartPlot plot)
    {
        Mark[] marked = MarkX is { } mark
            ? [new PathMark([Chain.Open(plot.Place(mark, plot.Up.Low), plot.Place(mark, plot.Up.High))], Marked)]
            : [];
        return
        [
            .. plot.Axes(frame, Title, XTitle),
            .. marked,
            .. Named.SelectMany(place => Upright(plot, place.Name, place.At)),
            .. Series.SelectMany(line => Line(plot, line)),
            .. Names(plot.Room, plot.Up),
        ];
    }

    private static IEnumerable<Mark> Upright(ChartPlot plot, string name, double at)
    {
        Point2 top = plot.Place(at, plot.Up.High);
        bool first = at <= plot.Across.Low;
        yield return new PathMark([Chain.Open(plot.Place(at, plot.Up.Low), top)], Thin);
        yield return new TextMark
        {
            Text = name,
            At = top + new Point2(first ? 1 : 0, 1),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
            Anchor = first ? TextAnchor.Start : TextAnchor.Middle,
        };
    }

    // A line, with a dot at each of its values where it is not level.
    private IEnumerable<Mark> Line(ChartPlot plot, ChartSeries line)
    {
        Point2[] places = [.. X.Zip(line.Values).Where(p => double.IsFinite(p.Second)).Select(p => plot.Place(p.First, p.Second))];
        yield return new PathMark([Chain.Open(places)], line.Pen);
        if (!line.Level)
        {
            yield return new PathMark([.. places.Select(p => Chain.Circle(p, Dot))], null, line.Pen.Colour);
        }
    }

    // A line may end before the plot does.
    private static double Last(ChartSeries line) => line.Values.LastOrDefault(double.IsFinite);

    // Names beside the ends of their lines, pushed apart from below where lines end close together.
    private IEnumerable<Mark> Names(Box plot, ChartAxis up)
    {
        double free = double.NegativeInfinity;
        foreach (ChartSeries line in Series.Where(s => s.Name.Length > 0).OrderBy(Last))
        {
            double y = Math.Max(plot.MinY + (up.Share(Last(line)) * plot.Height), free);
            yield return new TextMark
            {
                Text = line.Name,
                At = new Point2(plot.MaxX + 2, y - (Ink.Note / 2)),
                HeightMm = Ink.Note,
                Colour = line.Pen.Colour,
            };
            free = y + NameStep;
        }
    }
}
