using FeltNest.Ball;
using FeltNest.Die;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel.Trial;
using FeltNest.Seam;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets.Trials;

/// <summary>The sheet of a trial wrap: gap against place round the seam, read and fitted, with the diagnosis below it.</summary>
internal static class TrialSheet
{
    // A4 lying; margin, title and the block of words, mm.
    private const double Width = 297;
    private const double Height = 210;
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double WordsRoom = 62;


    private static readonly Pen Fitted = new(0.6, Colour.Of(0x5E7A22));
    private static readonly Pen Edge = new(0.25, Colour.Of(0x5E7A22), 2, 1);
    private static readonly Pen Left = new(0.4, Colour.Of(0x2A66AE), 2, 1);
    private static readonly Pen Aim = new(0.3, Ink.Soft, 1.5, 1);
    private static readonly Colour Read = Colour.Of(0x9C4A0B);

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(BallSpec ball, string readings, TrialResult trial, IReadOnlyList<TrialReading> read)
    {
        const double high = Height - Margin - TitleRoom;
        Box chart = new() { MinX = Margin, MinY = Margin + WordsRoom, MaxX = Width - Margin, MaxY = high };
        return new Sheet
        {
            Title = $"Trial wrap of {ball.Name}: {readings}",
            Description = "gap against place round the seam, read and fitted, with the diagnosis",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                new GroupMark("title", [.. Title(ball, readings, trial.Finding)]),
                new GroupMark("gap", [.. Chart(ball, trial.Finding, read, chart)]),
                new GroupMark("diagnosis",
                [
                    .. TextBlock.Draw(
                        new Point2(Margin, Margin + WordsRoom - 4), Width - (2 * Margin),
                        [TrialWords.Rule, .. TrialWords.Of(trial.Finding), Panels(trial)]),
                ]),
                new GroupMark("trial", [Words(SafetyWords.Trial, new Point2(Margin, Margin - 8), Ink.Note, Ink.Dark)]),
            ],
        };
    }

    private static string Panels(TrialResult trial) => trial.Corrected is not { } corrected
        ? "No corrected panel is drawn."
        : Invariant($"Corrected panel: length {corrected.LengthMm:0.00} (was {trial.Cut.LengthMm:0.00}), width {corrected.WidthMm:0.00} ")
            + Invariant($"({trial.Cut.WidthMm:0.00}), waist {corrected.WaistMm:0.00} ({trial.Cut.WaistMm:0.00}) mm.");

    private static IEnumerable<Mark> Title(BallSpec ball, string readings, TrialFinding found)
    {
        const double top = Height - Margin;
        yield return Words(
            StrokeFont.Fitted($"Trial wrap: {readings}", Ink.Title, Width - (2 * Margin)), new Point2(Margin, top - Ink.Title), Ink.Title,
            Ink.Dark);
        string words = Invariant(
            $"on {ball.Name}; {found.Balls.Count} balls; noise of a reading {found.NoiseMm:0.000} mm on {found.Freedom} ")
            + "freedoms; dashed beside the fit: its 95 % interval";
        yield return Words(StrokeFont.Fitted(words, Ink.Note, Width - (2 * Margin)), new Point2(Margin, top - 12), Ink.Note, Ink.Soft);
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(Width - Margin, top - 15))], Ink.Wide);
    }

    private static IEnumerable<Mark> Chart(BallSpec ball, TrialFinding found, IReadOnlyList<TrialReading> read, Box frame)
    {
        SeamCurve seam = SeamCurve.For(ball.Seam, ball.FittedRadiusMm);
        double[] along = [.. TrialPlaces.Lengths(seam).Append(seam.Length).Select(length => length * ball.FinishedDiameterMm / 2)];
        LineChart chart = Lines(found, along);
        ChartPlot plot = chart.Plot(frame, read.Select(reading => reading.GapMm));
        Mark[] dots =
        [
            new PathMark([.. read.Select(r => Chain.Circle(plot.Place(along[r.Place - 1], r.GapMm), 0.9))], null, Read),
            .. Numbers(plot, along),
        ];
        return [.. chart.Draw(frame, plot), .. dots];
    }

    // The last place is the first one again.
    private static LineChart Lines(TrialFinding found, double[] along)
    {
        TrialPlace[] round = [.. found.Places, found.Places[0]];
        return new LineChart
        {
            Title = "Gap between the two edges, mm (below 0: lap); dots: readings",
            XTitle = "mm along the seam from place 1, over the felt",
            X = along,
            Series =
            [
                new ChartSeries("panels alone", [.. round.Select(p => p.Fitted.Mm)], Fitted),
                new ChartSeries("", [.. round.Select(p => p.Fitted.Mm + p.Fitted.IntervalMm)], Edge, Level: true),
                new ChartSeries("", [.. round.Select(p => p.Fitted.Mm - p.Fitted.IntervalMm)], Edge, Level: true),
                new ChartSeries("expected left", [.. round.Select(p => found.LeftMm(p) ?? double.NaN)], Left, Level: true),
                new ChartSeries("aimed at", [.. round.Select(_ => found.AimMm)], Aim, Level: true),
            ],
            MarkX = null,
        };
    }

    // The numbers of the places above the plot, waists and tips in full.
    private static IEnumerable<Mark> Numbers(ChartPlot plot, double[] along)
    {
        for (int place = 1; place <= TrialPlaces.Count; place++)
        {
            Point2 foot = plot.Place(along[place - 1], plot.Up.Low);
            yield return Words(Invariant($"{place}"), foot + new Point2(0, 1), Ink.Note, Ink.Soft) with { Anchor = TextAnchor.Middle };
            if (TrialPlaces.WaistOf(place) is { } panel)
            {
                yield return new PathMark([Chain.Open(foot, plot.Place(along[place - 1], plot.Up.High))], Ink.Faint);
                yield return Words(
                    $"waist of {panel}", plot.Place(along[place - 1], plot.Up.High) + new Point2(1, -3), Ink.Note, Ink.Soft);
            }
        }
    }

    private static TextMark Words(string text, Point2 at, double height, Colour colour) => new()
    {
        Text = text,
        At = at,
        HeightMm = height,
        Colour = colour,
    };
}
