using System.Globalization;
using FeltNest.Ball;
using FeltNest.Die;
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
    private static readonly int[] Factors = [50, 20, 10, 5, 2, 1];

    // Long because it names the two views and the parts of the sheet in the order they are drawn.
    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(BallSpec ball, string outline, PieceResult wrap)
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
            Side = new BallSide(new SpherePoint(0, 0, 1), new SpherePoint(1, 0, 0)),
        };
        View side = new()
        {
            At = new Point2(Margin + 120, middle),
            RoundMm = round,
            Scale = scale,
            Side = new BallSide(new SpherePoint(0, -1, 0), new SpherePoint(1, 0, 0)),
        };
        IReadOnlyList<SpherePoint> edge = wrap.AsCut.TurnedEdge;
        int factor = Factor(wrap.AsCut);
        SpherePoint[] copy = Enlarged(edge, wrap.AsCut.Gaps, factor);
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
                new GroupMark("title", [.. Title(ball, outline, factor)]),
                new GroupMark("from-above", [.. Seen("seen along the pole", above, edge, copy)]),
                new GroupMark("from-the-side", [.. Seen("seen across the waist", side, edge, copy)]),
                new GroupMark(
                    "figures", [.. FigureTable.Draw(new Point2(Margin + 172, high - 4), Width - (2 * Margin) - 172, Figures(wrap))]),
                new GroupMark("gap", [.. WrapGapChart.Of(wrap, First, Second).Draw(chart)]),
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
                IReadOnlyList<Chain> runs =
                [
                    .. view.Side.Lines(line, near).Select(run => Chain.Open([.. run.Select(p => view.At + (p * view.Scale))])),
                ];
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

    // The most that keeps the greatest gap, enlarged, a fifth of the ball's radius.
    private static int Factor(EdgeFreeWrap free)
    {
        double radius = free.Edge[0].Length;
        double greatest = Math.Max(free.LargestGapMm ?? 0, free.LargestOverlapMm ?? 0);
        return Array.Find(Factors, f => f * greatest <= radius / 5 || f == 1);
    }

    // The second edge: off the first by the gap, so many times enlarged; off by nothing where it is not met.
    private static SpherePoint[] Enlarged(IReadOnlyList<SpherePoint> edge, IReadOnlyList<double?> gaps, int factor)
    {
        int n = edge.Count;
        return [.. edge.Select((here, i) =>
        {
            double radius = here.Length;
            SpherePoint chord = edge[(i + 1) % n] - edge[(i + n - 1) % n];
            SpherePoint outward = chord.Cross(here);
            (double sin, double cos) = Math.SinCos(factor * (gaps[i] ?? 0) / radius);
            return (cos * here) + (radius * sin / outward.Length * outward);
        })];
    }

    private static List<(string Name, string Value)> Figures(PieceResult wrap)
    {
        static string Number(double? value, string format, string unit) =>
            value is { } met ? met.ToString(format, CultureInfo.InvariantCulture) + " " + unit : "not met";
        List<(string, string)> lines =
        [
            ("As cut, at fitting, edge free", string.Empty),
            ("largest gap", Number(wrap.AsCut.LargestGapMm, "0.00", "mm")),
            ("largest overlap", Number(wrap.AsCut.LargestOverlapMm, "0.00", "mm")),
            ("After cure, edge free", string.Empty),
            ("largest gap", Number(wrap.AfterCure.LargestGapMm, "0.00", "mm")),
            ("largest overlap", Number(wrap.AfterCure.LargestOverlapMm, "0.00", "mm")),
            ("Edge drawn to the seam", string.Empty),
        ];
        if (wrap.EdgeHeld is { } held)
        {
            lines.Add(("greatest stretch", Number(held.MaxStretchPercent, "0.0", "%")));
            lines.Add(("greatest compression", Number(held.MaxCompressionPercent, "0.0", "%")));
            lines.Add(("greatest edge pull", Number(held.EdgePullNPerMm, "0.000", "N/mm")));
        }
        else
        {
            lines.Add(("cannot be drawn to it", "-"));
        }

        if (wrap.Smoothing is { } smoothing)
        {
            lines.Add(("Edge smoothed, rms", Number(smoothing.RmsMm, "0.000", "mm")));
            lines.Add(("  at most", Number(smoothing.GreatestMm, "0.000", "mm")));
        }

        return lines;
    }

    private static IEnumerable<Mark> Title(BallSpec ball, string outline, int factor)
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
            $"on {ball.Name}, fitted sphere of radius {ball.FittedRadiusMm:0.00} mm, as cut, edge free; far side dashed; second "
                + $"edge brown, the gap drawn {factor} times too large");
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(words, Ink.Note, Width - (2 * Margin)),
            At = new Point2(Margin, top - 12),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(Width - Margin, top - 15))], Ink.Wide);
    }

    // The ball from one side: its centre and radius on the sheet, mm, the scale, and the side.
    private sealed record View
    {
        public required Point2 At { get; init; }

        public required double RoundMm { get; init; }

        public required double Scale { get; init; }

        public required BallSide Side { get; init; }
    }
}
