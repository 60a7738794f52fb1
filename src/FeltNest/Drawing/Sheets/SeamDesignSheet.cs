using System.Globalization;
using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Seam;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of seams designed for least felt: felt over the limit of stretch in the plane and on the roll, and below it the
/// panels and balls along the front.</summary>
internal static class SeamDesignSheet
{
    // A little off the pole, so that waist and tip both show.
    private static readonly BallSide Side = new(new SpherePoint(0.35, -0.62, 0.7), new SpherePoint(0.62, 0.35, 0));

    // A4 lying; margin, title, height of the row of balls, foot, and the room between charts, mm.
    private const double Width = 297;
    private const double Height = 210;
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double RowHeight = 78;
    private const double FootRoom = 12;
    private const double Room = 8;

    // Balls shown at most; marks between the first and the last are left out evenly.
    private const int MostShown = 4;

    private static readonly (SeamFamily Family, Pen Pen)[] Pens =
    [
        (SeamFamily.Shaped, new(0.6, Colour.Of(0x5E7A22))), (SeamFamily.TwoHarmonic, new(0.4, Colour.Of(0x9C4A0B), 5, 1)),
        (SeamFamily.FourArc, new(0.4, Colour.Of(0x2A66AE), 2, 1)), (SeamFamily.Elastica, new(0.4, Colour.Of(0x41606F), 1, 1)),
    ];

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(SeamFront front)
    {
        double middle = Width / 2;
        double low = Margin + FootRoom + RowHeight;
        const double high = Height - Margin - TitleRoom;
        Mark[] marks =
        [
            new GroupMark("title", [.. Title(front)]),
            new GroupMark("roll", [.. Chart(front, "on the roll", mark => mark.Roll.RollSquareMetres, front.Given.RollSquareMetres)
                .Draw(new Box { MinX = Margin, MinY = low, MaxX = middle - (Room / 2), MaxY = high })]),
            new GroupMark("plane", [.. Chart(
                front, "in the endless plane", mark => mark.Plane.PlaneSquareMetres, front.Given.PlaneSquareMetres)
                .Draw(new Box { MinX = middle + (Room / 2), MinY = low, MaxX = Width - Margin, MaxY = high })]),
            new GroupMark("balls", [.. Balls(front)]),
            new GroupMark("caution", [.. Foot()]),
        ];
        return new Sheet
        {
            Title = $"Seams for least felt: {front.Question.Ball.Name}",
            Description = "felt against the limit of stretch, with panels and balls along the front",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks = marks,
        };
    }

    private static LineChart Chart(SeamFront front, string where, Func<SeamMark, double> felt, double given)
    {
        double[] limits = [.. front.Marks.Select(mark => mark.StretchLimitPercent).Distinct().Order()];
        IEnumerable<ChartSeries> lines = Pens.Select(pen => new ChartSeries(
            EnumWord.Of(pen.Family),
            [
                .. limits.Select(limit =>
                    front.Of(pen.Family).Where(m => m.StretchLimitPercent == limit).Select(felt).FirstOrDefault(double.NaN)),
            ],
            pen.Pen));
        return new LineChart
        {
            Title = $"Felt per thousand balls {where}, m\u00B2",
            XTitle = "greatest stretch allowed, %",
            X = limits,
            Series =
            [
                .. lines.Where(line => double.IsFinite(line.Values[^1])),
                new ChartSeries("as given", [.. limits.Select(_ => given)], new Pen(0.3, Ink.Dark, 1.5, 1), Level: true),
            ],
            MarkX = null,
        };
    }

    // The ball as given, and marks along the front whose seams differ.
    private static IEnumerable<Mark> Balls(SeamFront front)
    {
        SeamMark[] distinct = [.. front.Of(SeamFamily.Shaped).DistinctBy(mark => mark.Roll.Ball)];
        int shown = Math.Min(MostShown, distinct.Length);
        IEnumerable<(string Name, SeamChoice Choice)> cells = Enumerable.Range(0, shown)
            .Select(i => distinct[shown == 1 ? 0 : i * (distinct.Length - 1) / (shown - 1)])
            .Select(mark => (
                string.Create(CultureInfo.InvariantCulture, $"{mark.StretchLimitPercent:0.##} % of stretch allowed"), mark.Roll))
            .Prepend(("as given", front.Given));
        double wide = (Width - (2 * Margin)) / (MostShown + 1);
        int at = 0;
        foreach ((string name, SeamChoice choice) in cells)
        {
            double centre = Margin + (wide * (at++ + 0.5));
            foreach (Mark mark in Cell(name, choice, centre, wide))
            {
                yield return mark;
            }
        }
    }

    private static IEnumerable<Mark> Cell(string name, SeamChoice choice, double x, double wide)
    {
        // The panel at three tenths of its size and the ball at half, so that both fit a fifth of the sheet.
        const double panelScale = 0.3;
        const double ballScale = 0.5;
        const double top = Margin + FootRoom + RowHeight - 6;
        double panelY = top - 8 - (panelScale * choice.Panel.WidthMm / 2);
        double ballY = Margin + FootRoom + 12 + (ballScale * choice.Ball.FittedRadiusMm / 2);
        yield return Words(StrokeFont.Fitted(name, Ink.Note, wide - 2), x, top - 2, Ink.Dark);
        yield return new PathMark(
            [Chain.Ring(choice.Panel.Outline.Points).Placed(panelScale, 0, new Point2(x, panelY))], Ink.Wide);
        SeamCurve seam = SeamCurve.For(choice.Ball.Seam, choice.Ball.FittedRadiusMm);
        foreach (Mark mark in SeamOnBall.Draw(seam, Side, new Point2(x, ballY + 4), ballScale * choice.Ball.FittedRadiusMm))
        {
            yield return mark;
        }

        string[] figures =
        [
            string.Create(CultureInfo.InvariantCulture, $"{choice.RollSquareMetres:0.00} m\u00B2 on the roll"),
            string.Create(
                CultureInfo.InvariantCulture,
                $"radius {choice.Panel.Sphere.LeastRadiusMm:0.0}, gap {choice.Panel.Fit?.LargestGapMm:0.00} mm"),
        ];
        yield return Words(figures[0], x, Margin + FootRoom + 3.5, Ink.Dark);
        yield return Words(StrokeFont.Fitted(figures[1], Ink.Note, wide - 1), x, Margin + FootRoom - 0.5, Ink.Soft);
    }

    private static TextMark Words(string text, double x, double y, Colour colour) => new()
    {
        Text = text,
        At = new Point2(x, y),
        HeightMm = Ink.Note,
        Colour = colour,
        Anchor = TextAnchor.Middle,
    };

    private static IEnumerable<Mark> Title(SeamFront front)
    {
        const double top = Height - Margin;
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"Seams for least felt: {front.Question.Ball.Name}", Ink.Title, Width - (2 * Margin)),
            At = new Point2(Margin, top - Ink.Title),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(Setting(front), Ink.Note, Width - (2 * Margin)),
            At = new Point2(Margin, top - 12),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(Width - Margin, top - 15))], Ink.Wide);
    }

    private static string Setting(SeamFront front)
    {
        SeamLimits limits = front.Question.Limits;
        string text = string.Create(
            CultureInfo.InvariantCulture,
            $"roll {front.Roll.RollWidthMm:0.##} mm, gap {front.Roll.GapMm:0.##} mm   edge compression at most "
                + $"{front.Question.Ball.Felt.MaxEdgeCompressionPercent:0.##} %");
        return text
            + Part(limits.CompressionPercent, "   compression at most {0:0.##} %")
            + Part(limits.LeastRadiusMm, "   radius at least {0:0.##} mm")
            + Part(limits.LeastRunMm, "   runs at least {0:0.##} mm apart") + Part(limits.MostGapMm, "   gap felt at most {0:0.##} mm")
            + (front.CutShort ? "   cut short" : string.Empty);

        static string Part(double? limit, string words) =>
            limit is { } value ? string.Format(CultureInfo.InvariantCulture, words, value) : string.Empty;
    }

    private static IEnumerable<Mark> Foot()
    {
        string[] lines = [.. SeamFront.Caution.Split(". ")];
        for (int i = 0; i < lines.Length; i++)
        {
            yield return new TextMark
            {
                Text = StrokeFont.Fitted(lines[i], Ink.Note, Width - (2 * Margin)),
                At = new Point2(Margin, Margin + (4.5 * (lines.Length - 1 - i)) - 2),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
            };
        }
    }
}
