using System.Globalization;
using FeltNest.Cost.Families;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of a family: what a year costs with one width, two and more, and what each ball costs on every width.</summary>
internal static class FamilySheet
{
    // A4 lying; margin, title and the room between charts, mm; room for the name of a line.
    private const double Width = 297;
    private const double Height = 210;
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double Room = 6;
    private const double NameRoom = 26;

    private static readonly Colour[] Shades =
    [
        Colour.Of(0x9C4A0B), Colour.Of(0x2A66AE), Colour.Of(0x5E7A22), Colour.Of(0x41606F), Colour.Of(0x7A4E92), Colour.Of(0x9A7B00),
        Colour.Of(0xA03048), Colour.Of(0x25303B),
    ];

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(FamilyAnswer answer)
    {
        double high = Height - Margin - TitleRoom;
        double half = Margin + ((high - Margin) * 0.6);
        Box upper = new() { MinX = Margin, MinY = half + (Room / 2), MaxX = Width - Margin, MaxY = high };
        Box lower = new() { MinX = Margin, MinY = Margin, MaxX = Width - Margin, MaxY = half - (Room / 2) };
        const string title = "Widths to stock for a family of balls";
        return new Sheet
        {
            Title = title,
            Description = "Bars of what a year costs with so many widths, and lines of what each ball costs on every width.",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks =
            [
                new GroupMark("title", [.. Title(title, answer)]),
                new GroupMark("plans", [.. Plans(answer, upper)]),
                new GroupMark("balls", [.. Balls(answer, lower)]),
            ],
        };
    }

    // What is above the least that any plan could cost: each ball on its best width, and no width kept.
    private static IEnumerable<Mark> Plans(FamilyAnswer answer, Box frame)
    {
        FamilyPair[] freest = [.. answer.Pairs.GroupBy(pair => pair.Ball).Select(own => own.MinBy(pair => pair.PerYear)!)];
        decimal least = freest.Sum(pair => pair.PerYear);
        if (answer.Plans.All(plan => plan.Total <= least))
        {
            return [];
        }

        return new DifferenceBars(
            Invariant($"A year above {least:0} {answer.Question.Costs.Currency}, each ball on its cheapest width and none kept"),
            [("balls not on their cheapest width", Shades[1]), ("keeping widths", Shades[0])],
            [
                .. answer.Plans.Select(plan => (
                    Name(plan),
                    (IReadOnlyList<double>)[(double)(plan.Running + plan.Dies - least), (double)plan.Stock],
                    Invariant($"{plan.Total - least:0}"))),
            ]).Draw(frame);
    }

    private static string Name(StockPlan plan) =>
        plan.MostWidths == plan.Widths.Count ? plan.Allowed : $"{plan.Allowed}, takes {plan.Widths.Count}";

    // Only widths on which every ball can be cut: a line with a hole would end nowhere.
    private static IEnumerable<Mark> Balls(FamilyAnswer answer, Box frame)
    {
        FamilyRequest question = answer.Question;
        FamilyPair[][] widths =
        [
            .. answer.Pairs.GroupBy(pair => pair.Width)
                .Where(on => on.Count() == question.Balls.Count)
                .Select(on => on.OrderBy(pair => pair.Ball).ToArray())
                .OrderBy(on => question.Widths[on[0].Width].WidthMm),
        ];
        if (widths.Length < 2)
        {
            return [];
        }

        return new LineChart
        {
            Title = "Each ball above its cheapest width, % of a year's cost, no width's keeping in it",
            XTitle = "width the layouts are planned on, mm   (upright: stocked, where any number is allowed)",
            X = [.. widths.Select(on => question.Widths[on[0].Width].WidthMm)],
            Series = [.. question.Balls.Select((ball, i) => Line(ball, i, [.. widths.Select(on => on[i].PerYear)]))],
            MarkX = null,
            Named =
            [
                .. answer.Best.Widths.Select(width => question.Widths[width])
                    .Select(width => (StrokeFont.Fitted(width.Name, Ink.Note, NameRoom), width.WidthMm)),
            ],
        }.Draw(frame);
    }

    private static ChartSeries Line(FamilyBall ball, int number, decimal[] costs)
    {
        decimal least = costs.Min();
        return new ChartSeries(
            StrokeFont.Fitted(ball.Name, Ink.Note, NameRoom),
            [.. costs.Select(cost => least == 0 ? 0 : (double)(100 * ((cost / least) - 1)))],
            new Pen(0.4, Shades[number % Shades.Length]));
    }

    private static IEnumerable<Mark> Title(string title, FamilyAnswer answer)
    {
        const double top = Height - Margin;
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(title, Ink.Title, Width - (2 * Margin)),
            At = new Point2(Margin, top - Ink.Title),
            HeightMm = Ink.Title,
            Colour = Ink.Dark,
        };
        string words = string.Create(
            CultureInfo.InvariantCulture,
            $"{answer.Question.Balls.Count} balls on {answer.Question.Widths.Count} widths   {answer.Question.Costs.Name}   any number of "
                + $"widths: {string.Join(", ", answer.Best.Widths.Select(width => answer.Question.Widths[width].Name))}");
        yield return new TextMark
        {
            Text = StrokeFont.Fitted(words, Ink.Note, Width - (2 * Margin)),
            At = new Point2(Margin, top - 12),
            HeightMm = Ink.Note,
            Colour = Ink.Soft,
        };
        yield return new PathMark([Chain.Open(new Point2(Margin, top - 15), new Point2(Width - Margin, top - 15))], Ink.Wide);
    }
}
