using System.Globalization;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Charts;

/// <summary>The plot of a chart: its rectangle on the sheet and its two axes.</summary>
internal sealed record ChartPlot
{
    // Length of a tick, mm.
    private const double Tick = 1.2;

    private static readonly Pen Grid = new(0.13, Colour.Of(0xD9DCDD));

    /// <summary>Rectangle of the plot on the sheet, mm.</summary>
    public required Box Room { get; init; }

    /// <summary>The axis of x.</summary>
    public required ChartAxis Across { get; init; }

    /// <summary>The axis of y.</summary>
    public required ChartAxis Up { get; init; }

    /// <summary>Where two values lie on the sheet, mm.</summary>
    public Point2 Place(double x, double y) =>
        new(Room.MinX + (Across.Share(x) * Room.Width), Room.MinY + (Up.Share(y) * Room.Height));

    /// <summary>Title, grid, ticks with their numbers, and the two axes, in the rectangle of the whole chart.</summary>
    public IEnumerable<Mark> Axes(Box frame, string title, string xTitle)
    {
        Point2 corner = new(Room.MinX, Room.MinY);
        return
        [
            new TextMark
            {
                Text = title,
                At = new Point2(frame.MinX, frame.MaxY - Ink.Label),
                HeightMm = Ink.Label,
                Colour = Ink.Dark,
            },
            .. Up.Ticks().SelectMany(Level),
            .. Across.Ticks().SelectMany(Foot),
            new TextMark
            {
                Text = xTitle,
                At = new Point2((Room.MinX + Room.MaxX) / 2, frame.MinY + 1),
                HeightMm = Ink.Note,
                Colour = Ink.Soft,
                Anchor = TextAnchor.Middle,
            },
            new PathMark([Chain.Open(new Point2(Room.MinX, Room.MaxY), corner, new Point2(Room.MaxX, Room.MinY))], Ink.Narrow),
        ];
    }

    // The grid line of a value of y, its number before it.
    private IEnumerable<Mark> Level(double y)
    {
        Point2 left = Place(Across.Low, y);
        yield return new PathMark([Chain.Open(left, Place(Across.High, y))], Grid);
        yield return new TextMark
        {
            Text = Text(y, Up),
            At = left - new Point2(1.5, Ink.Note / 2),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
            Anchor = TextAnchor.End,
        };
    }

    // The tick of a value of x, its number below it.
    private IEnumerable<Mark> Foot(double x)
    {
        Point2 low = Place(x, Up.Low);
        yield return new PathMark([Chain.Open(low, low - new Point2(0, Tick))], Ink.Narrow);
        yield return new TextMark
        {
            Text = Text(x, Across),
            At = low - new Point2(0, Tick + Ink.Note + 1),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
            Anchor = TextAnchor.Middle,
        };
    }

    private static string Text(double value, ChartAxis axis) => (value + 0.0).ToString(axis.Format, CultureInfo.InvariantCulture);
}
