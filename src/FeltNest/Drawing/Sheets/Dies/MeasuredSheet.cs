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
        Point2 centre = new((Left + Right) / 2, 124);
        Point2 Paper(Point2 p) => centre + ((p - middle) * scale.Factor);
        ArcVertex Corner(ArcVertex v) => Paper(v.Point) is var p ? new ArcVertex(p.X, p.Y, v.Turn) : default;

        // Deviations are drawn so many times larger that the tolerance is about 6 mm of paper.
        double factor = Larger(6 / (panel.Rule.ToleranceMm / 2));
        return new Sheet
        {
            Title = $"{name}: measured panel",
            Description = $"Measured points, the zone allowed and the verdict: {ConformityWords.Of(panel.Verdict)}.",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                .. Verdict(name, panel),
                new PathMark([new Chain([.. outline.Select(Corner)], true)], Ink.Wide, Ink.Cloth),
                .. Zone(points, Paper, panel.Rule.ToleranceMm / 2 * factor),
                .. panel.Points.SelectMany(p =>
                    Deviation(
                        Paper(p.Place), Normal(points, p.Place) * (p.OffMm * factor), Math.Abs(p.OffMm) > panel.Rule.ToleranceMm / 2)),
                new PathMark([Chain.Circle(Paper(panel.Worst.Place), 3)], Ink.Wide),
                new PathMark([Chain.Circle(Paper(panel.WidestGapPlace), 3)], new Pen(Ink.Wide.WidthMm, Ink.Dark, 2, 1)),
                .. FigureTable.Draw(new Point2(Left, 68), 128, Found(panel)),
                .. FigureTable.Draw(new Point2(Left + 138, 68), 128, Drawn(panel, scale, factor)),
                .. TextBlock.Draw(new Point2(Left, 26), Right - Left, Caution),
            ],
        };
    }

    // The zone allowed, as many times as wide as it is, like the distances.
    private static IEnumerable<Mark> Zone(IReadOnlyList<Point2> points, Func<Point2, Point2> paper, double halfOnPaper)
    {
        foreach (double side in (double[])[1, -1])
        {
            ArcVertex[] line =
            [
                .. points.Select(p => paper(p) + (Normal(points, p) * (side * halfOnPaper))).Select(p => new ArcVertex(p.X, p.Y, 0)),
            ];
            yield return new PathMark([new Chain(line, true)], new Pen(0.18, Ink.Soft, 3, 1.5));
        }
    }

    private static IEnumerable<Mark> Verdict(string name, MeasuredPanel panel)
    {
        yield return new TextMark
        {
            Text = ConformityWords.Of(panel.Verdict),
            At = new Point2(Left, Height - 20),
            HeightMm = 7,
            Colour = panel.Verdict == Conformity.Conforms ? Ink.Dark : Ink.Classes[1],
        };
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"{name}: measured panel", Ink.Title, 200),
            At = new Point2(Left, Height - 29),
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

    private static IReadOnlyList<(string Name, string Value)> Found(MeasuredPanel panel) =>
    [
        ("zone that holds all points", $"{F(panel.ZoneMm, "0.000")} mm wide, {F(panel.Rule.ToleranceMm, "0.###")} allowed"),
        ("worst place (ring)", $"{F(panel.Worst.OffMm, "+0.000;-0.000")} mm at {At(panel.Worst.Place)}"),
        ("points outside the zone", $"{panel.Failing} of {panel.Points.Count}"),
        ("longest stretch unmeasured (dashed)", $"{F(panel.WidestGapMm, "0.0")} mm at {At(panel.WidestGapPlace)}"),
        ("may hide between points", $"{F(panel.HiddenMm, "0.000")} mm at {F(panel.Rule.Steepness, "0.###")} mm a mm"),
        (
            "points enough for this edge",
            panel.SpacingWantedMm is { } spacing ? $"{panel.PointsWanted}, {F(spacing, "0.0")} mm apart" : "none: too near the limit"),
        (
            "uncertainty, k = 2",
            panel.Rule.UncertaintyMm is { } expanded ? $"{F(expanded, "0.000")} mm" : "unknown: no proof by ISO 14253-1"),
    ];

    private static IReadOnlyList<(string Name, string Value)> Drawn(MeasuredPanel panel, DrawingScale scale, double factor)
    {
        double half = panel.Rule.ToleranceMm / 2;
        return
        [
            ("outline", $"SCALE {scale.Words}"),
            ("distances and zone", $"drawn {F(factor, "0.##")} times as large"),
            ("sign", "away from the panel: outside"),
            ("laid", panel.Rule.InFrame ? "in the frame of the drawing" : "best zone, nothing stretched"),
            ("accepted to", $"\u00B1{F(half - panel.GuardMm, "0.###")} mm"),
            ("rejected from", $"\u00B1{F(half + panel.RejectGuardMm, "0.###")} mm"),
            (
                "least squares, information",
                $"worst {F(panel.SquaresWorstMm, "+0.000;-0.000")}, mean {F(panel.SquaresMeanMm, "+0.000;-0.000")}"),
        ];
    }

    private static string At(Point2 place) => $"{F(Math.Round(place.X, 1), "0.0")}, {F(Math.Round(place.Y, 1), "0.0")}";

    private static string F(double value, string format) => (Math.Round(value, 3) + 0.0).ToString(format, CultureInfo.InvariantCulture);

    private static double Larger(double wanted) => new[] { 1.0, 2, 5, 10, 20, 50, 100, 200 }.LastOrDefault(f => f <= wanted, 1);

    private static Point2 Normal(IReadOnlyList<Point2> points, Point2 place)
    {
        int at = Enumerable.Range(0, points.Count).MinBy(i => (points[i] - place).Length);
        Point2 way = points[(at + 1) % points.Count] - points[(at + points.Count - 1) % points.Count];
        return -way.Left * (1 / way.Length);
    }
}
