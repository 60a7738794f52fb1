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

        // Deviations are drawn so many times larger that the tolerance is about 6 mm of paper.
        double factor = Larger(6 / (panel.ToleranceMm / 2));
        Target[] whiskers =
        [
            .. panel.Points.Select(p =>
                new Target
                {
                    Foot = Paper(p.Place),
                    Normal = Normal(points, p.Place),
                    Length = p.OffMm * factor,
                    Fails = Math.Abs(p.OffMm) > panel.ToleranceMm / 2,
                }),
        ];
        List<Mark> marks =
        [
            new TextMark
            {
                Text = panel.Passed ? "PASS" : "FAIL",
                At = new Point2(Left, Height - 22),
                HeightMm = 10,
                Colour = panel.Passed ? Ink.Dark : Ink.Classes[1],
            },
            new TextMark
            {
                Text = StrokeFont.Fitted($"{name}: measured panel", Ink.Title, 200),
                At = new Point2(Left + 44, Height - 20),
                HeightMm = Ink.Title,
                Colour = Ink.Dark,
            },
            new PathMark(
                [new Chain([.. outline.Select(v => Paper(v.Point) is var p ? new ArcVertex(p.X, p.Y, v.Turn) : default)], true)], Ink.Wide,
                Ink.Cloth),
        ];
        foreach (Target whisker in whiskers)
        {
            Pen pen = new(0.35, whisker.Fails ? Colour.Of(0xB2402A) : Ink.Dark);
            marks.Add(new PathMark([Chain.Open(whisker.Foot, whisker.Foot + (whisker.Normal * whisker.Length))], pen));
            marks.Add(new PathMark([Chain.Circle(whisker.Foot, 0.4)], null, pen.Colour));
        }

        (Point2 worst, double off) = panel.Worst;
        string f(double v, string format) => (Math.Round(v, 3) + 0.0).ToString(format, CultureInfo.InvariantCulture);
        marks.Add(new PathMark([Chain.Circle(Paper(worst), 3)], Ink.Wide));
        marks.AddRange(FigureTable.Draw(
            new Point2(Left, 58), 128,
            [
                (
                    "worst place (ring)",
                    $"{f(off, "+0.000;-0.000")} mm at {f(Math.Round(worst.X, 1), "0.0")}, {f(Math.Round(worst.Y, 1), "0.0")}"),
                    ("allowed", $"\u00B1{f(panel.ToleranceMm / 2, "0.###")} mm"),
                    ("points outside the zone", $"{panel.Failing} of {panel.Points.Count}"),
                ("mean, above 0 is larger all round", $"{f(panel.MeanMm, "+0.000;-0.000")} mm"),
                ("root mean square", $"{f(panel.RmsMm, "0.000")} mm"),
                ("longest stretch without a point", $"{f(panel.WidestGapMm, "0.0")} mm"),
            ]));
        marks.AddRange(FigureTable.Draw(
            new Point2(Left + 138, 58), 128,
            [
                ("outline", $"SCALE {scale.Words}"), ("distances", $"drawn {f(factor, "0.##")} times as large as they are"),
                ("sign", "away from the panel: outside"), ("laid", "best rigid fit, nothing stretched"),
            ]));
        marks.AddRange(
            TextBlock.Draw(
                new Point2(Left, 26), Right - Left,
                [
                    "A pass is a matter of shape alone: whether die and press are fit to run is for qualified people, local codes and "
                        + "the machine maker to say.",
                ]));
        return new Sheet
        {
            Title = $"{name}: measured panel",
            Description = panel.Passed ? "The panel lies within its tolerance." : "The panel leaves its tolerance.",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks = marks,
        };
    }

    private static double Larger(double wanted) => new[] { 1.0, 2, 5, 10, 20, 50, 100, 200 }.LastOrDefault(f => f <= wanted, 1);

    private static Point2 Normal(IReadOnlyList<Point2> points, Point2 place)
    {
        int at = Enumerable.Range(0, points.Count).MinBy(i => (points[i] - place).Length);
        Point2 way = points[(at + 1) % points.Count] - points[(at + points.Count - 1) % points.Count];
        return -way.Left * (1 / way.Length);
    }

    private readonly record struct Target
    {
        public required Point2 Foot { get; init; }

        public required Point2 Normal { get; init; }

        public required double Length { get; init; }

        public required bool Fails { get; init; }
    }
}
