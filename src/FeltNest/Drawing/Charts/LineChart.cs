using System.Globalization;
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

    // Room around the plot for title, tick numbers, x title and the names of the lines, mm.
    private const double TopRoom = 8;
    private const double LeftRoom = 16;
    private const double LowRoom = 12;
    private const double RightRoom = 30;

    // Dot of a value, length of a tick, and the least distance of two names, mm.
    private const double Dot = 0.7;
    private const double Tick = 1.2;
    private const double NameStep = 3.6;

    private static readonly Pen Grid = new(0.13, Colour.Of(0xD9DCDD));
    private static readonly Pen Marked = new(0.35, Ink.Dark, 2, 1);

    /// <summary>The marks of the chart in a rectangle of the sheet.</summary>
    public IEnumerable<Mark> Draw(Box frame)
    {
        Box plot = new()
        {
            MinX = frame.MinX + LeftRoom,
            MinY = frame.MinY + LowRoom,
            MaxX = frame.MaxX - RightRoom,
            MaxY = frame.MaxY - TopRoom,
        };
        ChartAxis across = ChartAxis.Around(X, 6);
        ChartAxis up = ChartAxis.Around(Series.SelectMany(s => s.Values), 5);
        Point2 Place(double x, double y) => new(plot.MinX + (across.Share(x) * plot.Width), plot.MinY + (up.Share(y) * plot.Height));

        yield return new TextMark
        {
            Text = Title,
            At = new Point2(frame.MinX, frame.MaxY - Ink.Label),
            HeightMm = Ink.Label,
            Colour = Ink.Dark,
        };
        foreach (double y in up.Ticks())
        {
            Point2 left = Place(across.Low, y);
            yield return new PathMark([Chain.Open(left, Place(across.High, y))], Grid);
            yield return new TextMark
            {
                Text = Text(y, up),
                At = left - new Point2(1.5, Ink.Note / 2),
                HeightMm = Ink.Note,
                Colour = Ink.Soft,
                Anchor = TextAnchor.End,
            };
        }

        foreach (double x in across.Ticks())
        {
            Point2 low = Place(x, up.Low);
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
        if (MarkX is { } mark)
        {
            yield return new PathMark([Chain.Open(Place(mark, up.Low), Place(mark, up.High))], Marked);
        }

        foreach (ChartSeries line in Series)
        {
            Point2[] places = [.. X.Zip(line.Values).Where(p => double.IsFinite(p.Second)).Select(p => Place(p.First, p.Second))];
            yield return new PathMark([Chain.Open(places)], line.Pen);
            if (!line.Level)
            {
                yield return new PathMark([.. places.Select(p => Chain.Circle(p, Dot))], null, line.Pen.Colour);
            }
        }

        foreach (Mark name in Names(plot, up))
        {
            yield return name;
        }
    }

    // Names beside the ends of their lines, pushed apart from below where lines end close together.
    private IEnumerable<Mark> Names(Box plot, ChartAxis up)
    {
        double free = double.NegativeInfinity;
        foreach (ChartSeries line in Series.Where(s => s.Name.Length > 0).OrderBy(s => s.Values[^1]))
        {
            double y = Math.Max(plot.MinY + (up.Share(line.Values[^1]) * plot.Height), free);
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

    private static string Text(double value, ChartAxis axis) => (value + 0.0).ToString(axis.Format, CultureInfo.InvariantCulture);
}
