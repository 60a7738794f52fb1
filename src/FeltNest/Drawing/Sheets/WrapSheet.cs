using System.Globalization;
using FeltNest.Ball;
using FeltNest.Die;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel.Wrap;
using FeltNest.Seam;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of a flat outline laid on a ball with its edge free: the edge on the sphere from two sides, two copies, and the gap
/// along it.</summary>
internal static class WrapSheet
{
    // A4 lying; margin and title, mm.
    private const double Width = 297;
    private const double Height = 210;
    private const double Margin = 12;
    private const double TitleRoom = 20;

    private static readonly Pen First = new(0.5, Colour.Of(0x5E7A22));
    private static readonly Pen Second = new(0.5, Colour.Of(0x9C4A0B));
    private static readonly Pen Level = new(0.3, Ink.Soft, 1.5, 1);

    // Long because it names the two views and the parts of the sheet in the order they are drawn.
    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(BallSpec ball, string outline, WrapResult wrap)
    {
        double scale = Math.Min(1, 34 / ball.FittedRadiusMm);
        double round = ball.FittedRadiusMm * scale;
        double high = Height - Margin - TitleRoom;
        double middle = high - round - 10;
        View above = new()
        {
            At = new Point2(Margin + 40, middle),
            RoundMm = round,
            Scale = scale,
            Turned = p => (p.X, p.Y, p.Z),
        };
        View side = new()
        {
            At = new Point2(Margin + 120, middle),
            RoundMm = round,
            Scale = scale,
            Turned = p => (p.X, p.Z, -p.Y),
        };
        IReadOnlyList<SpherePoint> edge = wrap.EdgeFree.TurnedEdge;

        // The second copy is the first half-turned about the axis (1, -1, 0).
        SpherePoint[] copy = [.. edge.Select(p => new SpherePoint(-p.Y, -p.X, -p.Z))];
        Box chart = new() { MinX = Margin, MinY = Margin, MaxX = Width - Margin, MaxY = middle - round - 12 };
        return new Sheet
        {
            Title = $"Wrap of {outline} on {ball.Name}",
            Description = "the edge on the sphere and the gap two copies leave",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                new GroupMark("title", [.. Title(ball, outline)]),
                new GroupMark("from-above", [.. Seen("seen along the pole", above, edge, copy)]),
                new GroupMark("from-the-side", [.. Seen("seen across the waist", side, edge, copy)]),
                new GroupMark(
                    "figures", [.. FigureTable.Draw(new Point2(Margin + 172, high - 4), Width - (2 * Margin) - 172, Figures(wrap))]),
                new GroupMark("gap", [.. Gap(wrap).Draw(chart)]),
                new GroupMark("trial",
                [
                    new TextMark { Text = SafetyWords.Trial, At = new Point2(Margin, Margin - 8), HeightMm = Ink.Note, Colour = Ink.Dark },
                ]),
            ],
        };
    }

    // Near half of each edge in full, far half dashed.
    private static IEnumerable<Mark> Seen(string title, View view, IReadOnlyList<SpherePoint> one, IReadOnlyList<SpherePoint> two)
    {
        yield return new PathMark([Chain.Circle(view.At, view.RoundMm)], Ink.Faint);
        foreach ((IReadOnlyList<SpherePoint> line, Pen pen) in new[] { (one, First), (two, Second) })
        {
            foreach (bool near in new[] { false, true })
            {
                IReadOnlyList<Chain> runs = [.. Runs(view, line, near)];
                if (runs.Count > 0)
                {
                    yield return new PathMark(runs, near ? pen : new Pen(0.25, pen.Colour, 1, 1));
                }
            }
        }

        yield return new TextMark
        {
            Text = title,
            At = view.At - new Point2(0, view.RoundMm + 5),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
            Anchor = TextAnchor.Middle,
        };
    }

    // The stretches of an edge that lie on the near half of the ball, or on the far one.
    private static IEnumerable<Chain> Runs(View view, IReadOnlyList<SpherePoint> line, bool near)
    {
        List<Point2> run = [];
        for (int i = 0; i <= line.Count; i++)
        {
            (double x, double y, double depth) = view.Turned(line[i % line.Count]);
            if (depth >= 0 == near && i < line.Count)
            {
                run.Add(view.At + (new Point2(x, y) * view.Scale));
                continue;
            }

            if (run.Count > 1)
            {
                yield return Chain.Open([.. run]);
            }

            run.Clear();
        }
    }

    private static LineChart Gap(WrapResult wrap)
    {
        (double Place, double Gap)[] met =
        [
            .. wrap.EdgeFree.Gaps.Index()
                .Where(station => station.Item is not null)
                .Select(station => (100.0 * station.Index / wrap.EdgeFree.Gaps.Count, station.Item!.Value)),
        ];
        double[] places = [.. met.Select(g => g.Place)];
        return new LineChart
        {
            Title = "Gap between the two edges, mm (below 0: overlap)",
            XTitle = "place along the edge from the waist, % of its stations",
            X = places,
            Series = [
                new ChartSeries("gap", [.. met.Select(g => g.Gap)], First, Level: true),
                new ChartSeries("closed", [.. places.Select(_ => 0.0)], Level, Level: true),
            ],
            MarkX = null,
        };
    }

    private static List<(string Name, string Value)> Figures(WrapResult wrap)
    {
        static string Number(double? value, string format, string unit) =>
            value is { } met ? met.ToString(format, CultureInfo.InvariantCulture) + " " + unit : "not met";
        List<(string, string)> lines =
        [
            ("Edge free", string.Empty),
            ("largest gap", Number(wrap.EdgeFree.LargestGapMm, "0.00", "mm")),
            ("largest overlap", Number(wrap.EdgeFree.LargestOverlapMm, "0.00", "mm")),
            ("elastic energy", Number(wrap.EdgeFree.EnergyNmm, "0.00", "N mm")),
            ("Edge drawn to the seam", string.Empty),
        ];
        if (wrap.EdgeHeld is { } held)
        {
            lines.Add(("greatest stretch", Number(held.MaxStretchPercent, "0.0", "%")));
            lines.Add(("greatest compression", Number(held.MaxCompressionPercent, "0.0", "%")));
            lines.Add(("greatest edge pull", Number(held.EdgePullNPerMm, "0.000", "N/mm")));
            lines.Add(("elastic energy", Number(held.EnergyNmm, "0.00", "N mm")));
        }
        else
        {
            lines.Add(("cannot be drawn to it", "-"));
        }

        return lines;
    }

    private static IEnumerable<Mark> Title(BallSpec ball, string outline)
    {
        const double top = Height - Margin;
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"Wrap: {outline}", Ink.Title, Width - (2 * Margin)),
            At = new Point2(Margin, top - Ink.Title),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"on {ball.Name}, fitted sphere of radius {ball.FittedRadiusMm:0.00} mm, edge free; far side dashed; two copies in two "
                + $"colours");
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(words, Ink.Note, Width - (2 * Margin)),
            At = new Point2(Margin, top - 12),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(Width - Margin, top - 15))], Ink.Wide);
    }

    // The ball from one side: its centre and radius on the sheet, mm, the scale, and how its points are turned to be seen.
    private sealed record View
    {
        public required Point2 At { get; init; }

        public required double RoundMm { get; init; }

        public required double Scale { get; init; }

        public required Func<SpherePoint, (double X, double Y, double Depth)> Turned { get; init; }
    }
}
