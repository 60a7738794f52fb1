using System.Globalization;
using FeltNest.Ball;
using FeltNest.Die;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Panel.Budget;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of a budget of the seam gap: the gap round the seam with its spread and the adhesive's range, the figures, and the
/// tolerances in the order to buy them down.</summary>
internal static class GapBudgetSheet
{
    // As wide as a lying A4; margin, title, chart and the way between blocks, mm.
    private const double Width = 297;
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double ChartHeight = 92;
    private const double Between = 6;
    private const double LineStep = 4.4;
    private const double TrialRoom = 10;

    private static readonly Pen Nominal = new(0.6, Ink.Dark);
    private static readonly Pen Root = new(0.35, Colour.Of(0x5E7A22));
    private static readonly Pen Worst = new(0.35, Colour.Of(0x9C4A0B), 2, 1);
    private static readonly Colour Bridged = Colour.Of(0xE4EBD3);

    // Long because it names the parts of the sheet in the order they are drawn.
    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(BallSpec ball, GapBudget budget)
    {
        (string Name, GapState State)[] states = budget.Shrinks
            ? [("at fitting", budget.AtFitting), ("after cure", budget.AfterCure)]
            : [("at fitting, and after cure", budget.AtFitting)];
        IReadOnlyList<(string, string)>[] columns =
        [
            [.. GapFigures.Lines(budget), .. NotStated(budget)],
            [.. states.SelectMany(state => GapFigures.Order(state.Name, budget, state.State))],
        ];
        (string Name, IReadOnlyList<string> Words)[] words =
            [.. states.Select(state => (state.Name, GapWords.Of(budget, state.State)))];
        double height = (2 * Margin) + TitleRoom + (states.Length * (ChartHeight + Between)) + (words.Sum(w => w.Words.Count) * LineStep)
            + (states.Length * Between) + columns.Max(FigureTable.Height) + TrialRoom;
        double y = height - Margin - TitleRoom;
        List<Mark> marks = [new GroupMark("title", [.. Title(ball, budget, height - Margin)])];
        for (int i = 0; i < states.Length; i++)
        {
            Box frame = new() { MinX = Margin, MinY = y - ChartHeight, MaxX = Width - Margin, MaxY = y };
            marks.Add(new GroupMark($"gap-{i + 1}", [.. Chart(states[i].Name, budget, states[i].State, frame)]));
            y -= ChartHeight + Between;
            foreach (string sentence in words[i].Words)
            {
                y -= LineStep;
                marks.Add(Text(sentence, new Point2(Margin, y + LineStep - Ink.Note), Ink.Dark));
            }

            y -= Between;
        }

        const double column = (Width - (2 * Margin) - 10) / 2;
        marks.Add(new GroupMark("figures",
        [
            .. FigureTable.Draw(new Point2(Margin, y), column, columns[0]),
            .. FigureTable.Draw(new Point2(Width - Margin - column, y), column, columns[1]),
        ]));
        marks.Add(new GroupMark("trial", [Text(SafetyWords.Trial, new Point2(Margin, Margin), Ink.Dark)]));
        return new Sheet
        {
            Title = $"Budget of the seam gap of {ball.Name}",
            Description = "the gap round the seam with its spread, and the tolerances in the order to buy them down",
            WidthMm = Width,
            HeightMm = height,
            Symbols = [],
            Marks = marks,
        };
    }

    private static IEnumerable<(string, string)> NotStated(GapBudget budget)
    {
        (string, string)[] lines = [.. budget.NotStated.Select(field => (field, "not stated"))];
        return lines.Length == 0 ? [] : lines.Prepend(("Not in the budget", string.Empty));
    }

    private static IEnumerable<Mark> Chart(string name, GapBudget budget, GapState state, Box frame)
    {
        string shaded = budget.Adhesive is null ? string.Empty : "; shaded: bridged by the adhesive";
        LineChart chart = new()
        {
            Title = $"Gap between the two edges {name}, mm (below 0: overlap{shaded})",
            XTitle = "mm round the seam from the waist of panel A",
            X = [.. state.Stations.Select(s => s.AlongMm), state.Stations.Sum(s => s.LengthMm)],
            Series =
            [
                Line("worst, greatest", s => s.WorstMostMm, Worst),
                Line("root sum square", s => s.GapMm + s.RootSumSquareMm, Root),
                Line("nothing off", s => s.GapMm, Nominal),
                Line("root sum square", s => s.GapMm - s.RootSumSquareMm, Root),
                Line("worst, least", s => s.WorstLeastMm, Worst),
            ],
            MarkX = null,
            Named = [("waist", 0), ("tip", At(1)), ("waist", At(2)), ("tip", At(3))],
        };
        double[] ends = budget.Adhesive is { } range ? [range.LeastMm, range.MostMm] : [];
        ChartPlot plot = chart.Plot(frame, ends);
        return ends.Length == 0 ? chart.Draw(frame, plot) : [Shaded(plot, ends), .. chart.Draw(frame, plot)];

        ChartSeries Line(string words, Func<GapStation, double> value, Pen pen) =>
            new(words, [.. state.Stations.Select(value), value(state.Stations[0])], pen, Level: true);

        double At(int quarter) => state.Stations[quarter * state.Stations.Count / 4].AlongMm;
    }

    // The adhesive's range over the whole seam.
    private static PathMark Shaded(ChartPlot plot, double[] ends)
    {
        Point2 low = plot.Place(plot.Across.Low, ends[0]);
        Point2 high = plot.Place(plot.Across.High, ends[1]);
        Box box = new() { MinX = low.X, MinY = low.Y, MaxX = high.X, MaxY = high.Y };
        return new PathMark([Chain.Rectangle(box)], null, Bridged);
    }

    private static IEnumerable<Mark> Title(BallSpec ball, GapBudget budget, double top)
    {
        yield return new TextMark
        {
            Text = StrokeFont.Fitted($"Budget of the seam gap: {ball.Name}", Ink.Title, Width - (2 * Margin)),
            At = new Point2(Margin, top - Ink.Title),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"fitted sphere of radius {ball.FittedRadiusMm:0.00} mm; tolerances read as {EnumWord.Of(budget.ReadAs)}; {budget.Balls} "
                + $"balls ")
            + "counted; felt, die and angle off alike on both panels, each panel placed for itself";
        yield return Text(words, new Point2(Margin, top - 12), Ink.Soft);
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(Width - Margin, top - 15))], Ink.Wide);
    }

    private static TextMark Text(string words, Point2 at, Colour colour) =>
        new() { Text = StrokeFont.Fitted(words, Ink.Note, Width - (2 * Margin)), At = at, HeightMm = Ink.Note, Colour = colour };
}
