using FeltNest.Cost.Charts;
using FeltNest.Cost.Tickets;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets;

/// <summary>The control charts of a period, one below the other: points within their limits are noise, those outside a cause.</summary>
internal static class ControlSheet
{
    private const double Width = 190;
    private const double Margin = 6;
    private const double Height = 38;
    private const double LeftRoom = 16;
    private const double RightRoom = 4;
    private const double TopRoom = 7;
    private const double LowRoom = 9;

    // Half a point, half a cause, the ring around it, and the length of a name below the chart, mm.
    private const double Dot = 0.7;
    private const double Cause = 1.3;
    private const double NameRoom = 20;

    private static readonly Pen Line = new(0.25, Colour.Of(0x41606F));
    private static readonly Pen Limit = new(0.25, Colour.Of(0x9C4A0B), 1.5, 1);
    private static readonly Colour Spot = Colour.Of(0x9C4A0B);

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(PeriodUsage usage)
    {
        int count = Math.Max(1, usage.Charts.Count);
        double height = (count * Height) + (2 * Margin);
        return new Sheet
        {
            Title = $"Cause or noise: {usage.Book}",
            Description = "Control charts; dashed lines are the limits of noise, filled diamonds with a name are causes.",
            WidthMm = Width,
            HeightMm = height,
            Symbols = [],
            Marks =
            [
                .. usage.Charts.Select((chart, i) => new GroupMark(Invariant($"chart-{i + 1}"), [.. Chart(chart, new Box
                {
                    MinX = Margin,
                    MinY = height - Margin - ((i + 1) * Height),
                    MaxX = Width - Margin,
                    MaxY = height - Margin - (i * Height) - 1,
                })])),
                .. usage.Charts.Count == 0 ? Empty(height) : [],
            ],
        };
    }

    private static TextMark[] Empty(double height) =>
    [
        new TextMark
        {
            Text = "Two days, groups or tickets with counts are needed for a chart.",
            At = new Point2(Margin, height / 2),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        },
    ];

    private static IEnumerable<Mark> Chart(ControlChart chart, Box frame)
    {
        IReadOnlyList<ChartPoint> points = chart.Points;
        double scale = chart.Kind == ChartKind.Share ? 100 : 1;
        ChartPlot plot = new()
        {
            Room = new Box
            {
                MinX = frame.MinX + LeftRoom,
                MinY = frame.MinY + LowRoom,
                MaxX = frame.MaxX - RightRoom,
                MaxY = frame.MaxY - TopRoom,
            },
            Across = new ChartAxis { Low = 0, High = points.Count + 1, Step = points.Count + 1 },
            Up = ChartAxis.Around(points.SelectMany(p => (double[])[scale * p.Value, scale * p.Low, scale * p.High]), 4),
        };
        string unit = chart.Kind == ChartKind.Share ? "%" : chart.Unit;
        return
        [
            .. plot.Axes(frame, Invariant($"{chart.Name}, {unit}"), string.Empty).Where(mark => !IsFoot(mark, plot)),
            Path(plot, points, p => scale * chart.Centre, Ink.Faint), Steps(plot, points, p => scale * p.High),
            Steps(plot, points, p => scale * p.Low),
            Path(plot, points, p => scale * p.Value, Line),
            .. points.SelectMany((p, i) => Point(plot.Place(i + 1, scale * p.Value), p)),
            .. Names(plot, points),
        ];
    }

    // The numbers of the points say nothing: their names stand there.
    private static bool IsFoot(Mark mark, ChartPlot plot) => mark is TextMark text && text.At.Y < plot.Room.MinY - 2;

    private static PathMark Path(ChartPlot plot, IReadOnlyList<ChartPoint> points, Func<ChartPoint, double> value, Pen pen) =>
        new([Chain.Open([.. points.Select((p, i) => plot.Place(i + 1, value(p)))])], pen);

    // Limits are those of each point: a step wide.
    private static PathMark Steps(ChartPlot plot, IReadOnlyList<ChartPoint> points, Func<ChartPoint, double> value) => new(
        [
            Chain.Open([.. points.SelectMany((p, i) => (Point2[])[plot.Place(i + 0.5, value(p)), plot.Place(i + 1.5, value(p))])]),
        ],
        Limit);

    private static IEnumerable<Mark> Point(Point2 at, ChartPoint point)
    {
        if (!point.IsCause)
        {
            return [new PathMark([Chain.Circle(at, Dot)], null, Line.Colour)];
        }

        return
        [
            new PathMark([Chain.Circle(at, Cause)], null, Spot),
            new TextMark
            {
                Text = StrokeFont.Fitted(point.Name, Ink.Note, NameRoom),
                At = at + new Point2(Cause + 0.8, 0.4),
                HeightMm = Ink.Note,
                Colour = Spot,
            },
        ];
    }

    private static IEnumerable<Mark> Names(ChartPlot plot, IReadOnlyList<ChartPoint> points)
    {
        int every = Math.Max(1, (int)Math.Ceiling(points.Count * NameRoom / plot.Room.Width));
        for (int i = 0; i < points.Count; i += every)
        {
            Point2 foot = plot.Place(i + 1, plot.Up.Low);
            yield return new TextMark
            {
                Text = StrokeFont.Fitted(points[i].Name, Ink.Note, NameRoom),
                At = foot - new Point2(0, Ink.Note + 1.6),
                HeightMm = Ink.Note,
                Colour = Ink.Soft,
                Anchor = TextAnchor.Middle,
            };
        }
    }
}
