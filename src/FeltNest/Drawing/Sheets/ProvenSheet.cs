using System.Globalization;
using FeltNest.Ball;
using FeltNest.Die;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel.Proven;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of a fit to a proven panel: both outlines over each other, the difference enlarged and said so, and the values
/// found.</summary>
internal static class ProvenSheet
{
    // The sheet is at least A4 lying; margin, title, column of figures and the room between, mm.
    private const double LeastWidth = 297;
    private const double LeastHeight = 210;
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double Column = 92;
    private const double Room = 14;

    // The greatest difference is drawn at most this long, mm: seen at a glance, and short of folding the outline over itself.
    private const double MostDrawn = 6;

    // Beyond a hundred times even the arcs' own 0.01 mm would show as a wave.
    private static readonly int[] Factors = [100, 50, 20, 10, 5, 2, 1];

    private static readonly Colour Clay = Colour.Of(0x9C4A0B);

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(string outline, ProvenFit fit)
    {
        Outline panel = fit.Panel.Outline;
        double width = Math.Max(LeastWidth, panel.MaxX - panel.MinX + Column + Room + (2 * Margin) + 16);
        double height = Math.Max(LeastHeight, panel.MaxY - panel.MinY + TitleRoom + 60 + (2 * Margin));
        int factor = Array.Find(Factors, f => f * Math.Abs(fit.Greatest.OffMm) <= MostDrawn || f == 1);
        Point2 centre = new(Margin + ((width - (2 * Margin) - Column - Room) / 2), (height - TitleRoom + 16) / 2);
        double right = width - Margin - Column;
        Mark[] marks =
        [
            new GroupMark("title", [.. Title(outline, fit, width, height)]),
            new GroupMark("overlay", [.. Overlay(fit, centre, factor)]),
            new GroupMark("figures", [.. FigureTable.Draw(new Point2(right, height - Margin - TitleRoom), Column, Figures(fit))]),
            new GroupMark("scale-bar", [.. ScaleBar.Draw(new Point2(Margin + 4, Margin + 16), 100, 1)]),
            new GroupMark("finding", [.. Finding(fit, factor, width)]),
            new GroupMark("trial",
            [
                new TextMark { Text = SafetyWords.Trial, At = new Point2(Margin, Margin - 6), HeightMm = Ink.Note, Colour = Ink.Dark },
            ]),
        ];
        return new Sheet
        {
            Title = $"{fit.Ball.Name} fitted to {outline}",
            Description = fit.Weakest,
            WidthMm = width,
            HeightMm = height,
            Symbols = [],
            Marks = marks,
        };
    }

    private static IEnumerable<Mark> Overlay(ProvenFit fit, Point2 at, int factor)
    {
        yield return new PathMark([new Chain(fit.Panel.Arcs.Vertices, true).Placed(1, 0, at)], Ink.Wide, Ink.Copy);
        yield return new PathMark(
            [Chain.Ring(fit.Deviations.Select(d => at + d.Place + (d.Outward * (factor * d.OffMm))))], new Pen(0.35, Clay));
        ProvenDeviation greatest = fit.Greatest;
        Point2 place = at + greatest.Place;
        yield return new PathMark([Chain.Circle(place, 1.5)], new Pen(0.3, Clay));
        string words = string.Create(CultureInfo.InvariantCulture, $"{greatest.OffMm:+0.00;-0.00;0.00} mm");
        yield return new TextMark
        {
            Text = words,
            At = place - (greatest.Outward * 8) - new Point2(0, Ink.Note / 2),
            HeightMm = Ink.Note,
            Colour = Clay,
            Anchor = TextAnchor.Middle,
        };
    }

    private static List<(string Name, string Value)> Figures(ProvenFit fit)
    {
        List<(string, string)> lines = [("Values found", string.Empty)];
        foreach (ProvenValue value in fit.Values)
        {
            string unit = value.Unit.Length > 0 ? " " + value.Unit : string.Empty;
            lines.Add((value.Name, string.Create(CultureInfo.InvariantCulture, $"{value.Value:0.000} +/- {value.Spread:0.###}{unit}")));
            if (value.AtBound is { } end)
            {
                lines.Add(("  " + end, "!"));
            }
        }

        if (!fit.ShowsLimit && fit.Ball.Panel.Edge == EdgeRule.Mated)
        {
            lines.Add(
                ("edge limit: none shown below", string.Create(
                    CultureInfo.InvariantCulture, $"{fit.Panel.Strain.EdgeMaxCompressionPercent:0.00} %")));
        }

        lines.AddRange(
        [
            ("Measured against fitted", string.Empty),
            ("root mean square", string.Create(CultureInfo.InvariantCulture, $"{fit.RmsMm:0.000} mm")),
            ("greatest", string.Create(CultureInfo.InvariantCulture, $"{fit.Greatest.OffMm:+0.000;-0.000;0.000} mm")),
            ("Fitted panel", string.Empty),
            ("length", string.Create(CultureInfo.InvariantCulture, $"{fit.Panel.LengthMm:0.00} mm")),
            ("greatest width", string.Create(CultureInfo.InvariantCulture, $"{fit.Panel.WidthMm:0.00} mm")),
            ("waist", string.Create(CultureInfo.InvariantCulture, $"{fit.Panel.WaistMm:0.00} mm")),
        ]);
        return lines;
    }

    private static IEnumerable<Mark> Title(string outline, ProvenFit fit, double width, double height)
    {
        double top = height - Margin;
        double room = width - (2 * Margin);
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"Proven panel: {outline}", Ink.Title, room),
            At = new Point2(Margin, top - Ink.Title),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"fitted by {fit.Ball.Name}   seen from the nap side   SCALE 1:1   mm", Ink.Note, room),
            At = new Point2(Margin, top - 12),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(width - Margin, top - 15))], Ink.Wide);
    }

    // The whole of both sentences, on as many lines as they need.
    private static IEnumerable<Mark> Finding(ProvenFit fit, int factor, double width)
    {
        string enlarged = factor == 1
            ? "difference true to size"
            : string.Create(CultureInfo.InvariantCulture, $"its distance from the panel drawn {factor} times too large");
        string[] words = [$"Dark: fitted panel. Brown: measured outline, {enlarged}; the ring marks the greatest.", fit.Weakest];
        double room = width - (2 * Margin);
        return TextBlock.Draw(new Point2(Margin, Margin + TextBlock.Height(words, room)), room, words);
    }
}
