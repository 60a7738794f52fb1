using System.Globalization;
using FeltNest.Die.Proof;
using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets.Dies;

/// <summary>A measured panel on its outline: how far each point lies off, drawn larger, and the verdict.</summary>
internal static class MeasuredSheet
{
    private const double Width = 297;
    private const double Height = 210;
    private const double Left = 20;
    private const double Right = 287;

    private static readonly string[] Caution =
    [
        "A pass is a matter of shape alone: whether die and press are fit to run is for qualified people, local codes and the "
            + "machine maker to say.",
    ];

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(string name, IReadOnlyList<ArcVertex> outline, MeasuredPanel panel)
    {
        IReadOnlyList<Point2> points = new Chain(outline, true).Flattened(0.01);
        double wide = points.Max(p => p.X) - points.Min(p => p.X);
        double high = points.Max(p => p.Y) - points.Min(p => p.Y);
        DrawingScale scale = DrawingScale.Fitting(wide, high, Right - Left - 40, 90, 2);
        Point2 middle = new((points.Max(p => p.X) + points.Min(p => p.X)) / 2, (points.Max(p => p.Y) + points.Min(p => p.Y)) / 2);
        Point2 centre = new((Left + Right) / 2, 118);
        Point2 Paper(Point2 p) => centre + ((p - middle) * scale.Factor);
        ArcVertex Corner(ArcVertex v) => Paper(v.Point) is var p ? new ArcVertex(p.X, p.Y, v.Turn) : default;

        // Deviations are drawn so many times larger that the tolerance is about 6 mm of paper.
        double factor = Larger(6 / (panel.ToleranceMm / 2));
        return new Sheet
        {
            Title = $"{name}: measured panel",
            Description = panel.Passed ? "The panel lies within its tolerance." : "The panel leaves its tolerance.",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                .. Verdict(name, panel),
                new PathMark([new Chain([.. outline.Select(Corner)], true)], Ink.Wide, Ink.Cloth),
                .. panel.Points.SelectMany(p =>
                    Deviation(Paper(p.Place), Normal(points, p.Place) * (p.OffMm * factor), Math.Abs(p.OffMm) > panel.ToleranceMm / 2)),
                new PathMark([Chain.Circle(Paper(panel.Worst.Place), 3)], Ink.Wide),
                .. FigureTable.Draw(new Point2(Left, 58), 128, Found(panel)),
                .. FigureTable.Draw(new Point2(Left + 138, 58), 128, Drawn(scale, factor)),
                .. TextBlock.Draw(new Point2(Left, 26), Right - Left, Caution),
            ],
        };
    }

    private static IEnumerable<Mark> Verdict(string name, MeasuredPanel panel)
    {
        yield return new TextMark
        {
            Text = panel.Passed ? "PASS" : "FAIL",
            At = new Point2(Left, Height - 22),
            HeightMm = 10,
            Colour = panel.Passed ? Ink.Dark : Ink.Classes[1],
        };
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"{name}: measured panel", Ink.Title, 200),
            At = new Point2(Left + 44, Height - 20),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
    }

    // How far a measured place lies off the outline, from its foot.
    private static IEnumerable<Mark> Deviation(Point2 foot, Point2 off, bool fails)
    {
        Pen pen = new(0.35, fails ? Colour.Of(0xB2402A) : Ink.Dark);
        yield return new PathMark([Chain.Open(foot, foot + off)], pen);
        yield return new PathMark([Chain.Circle(foot, 0.4)], null, pen.Colour);
    }

    private static IReadOnlyList<(string Name, string Value)> Found(MeasuredPanel panel)
    {
        (Point2 worst, double off) = panel.Worst;
        string place = $"{F(Math.Round(worst.X, 1), "0.0")}, {F(Math.Round(worst.Y, 1), "0.0")}";
        return
        [
            ("worst place (ring)", $"{F(off, "+0.000;-0.000")} mm at {place}"),
            ("allowed", $"\u00B1{F(panel.ToleranceMm / 2, "0.###")} mm"),
            ("points outside the zone", $"{panel.Failing} of {panel.Points.Count}"),
            ("mean, above 0 is larger all round", $"{F(panel.MeanMm, "+0.000;-0.000")} mm"),
            ("root mean square", $"{F(panel.RmsMm, "0.000")} mm"),
            ("longest stretch without a point", $"{F(panel.WidestGapMm, "0.0")} mm"),
        ];
    }

    private static IReadOnlyList<(string Name, string Value)> Drawn(DrawingScale scale, double factor) =>
    [
        ("outline", $"SCALE {scale.Words}"),
        ("distances", $"drawn {F(factor, "0.##")} times as large as they are"),
        ("sign", "away from the panel: outside"),
        ("laid", "best rigid fit, nothing stretched"),
    ];

    private static string F(double value, string format) => (Math.Round(value, 3) + 0.0).ToString(format, CultureInfo.InvariantCulture);

    private static double Larger(double wanted) => new[] { 1.0, 2, 5, 10, 20, 50, 100, 200 }.LastOrDefault(f => f <= wanted, 1);

    private static Point2 Normal(IReadOnlyList<Point2> points, Point2 place)
    {
        int at = Enumerable.Range(0, points.Count).MinBy(i => (points[i] - place).Length);
        Point2 way = points[(at + 1) % points.Count] - points[(at + points.Count - 1) % points.Count];
        return -way.Left * (1 / way.Length);
    }
}
