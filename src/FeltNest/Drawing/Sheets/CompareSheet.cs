using System.Globalization;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Sheet;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of a comparison: the saw-tooth of waste over width with the offers on it, and what a thousand balls cost, or use
/// where no price is known.</summary>
internal static class CompareSheet
{
    // A4 lying; margin, title and the room between charts, mm.
    private const double Width = 297;
    private const double Height = 210;
    private const double Margin = 12;
    private const double TitleRoom = 20;
    private const double Room = 6;

    // Most bars and most names: more cannot be read on the sheet.
    private const int MostBars = 12;
    private const int MostNames = 12;

    // Parts of a bar differ in lightness as well as in colour.
    private static readonly Colour[] Shades =
    [
        Colour.Of(0x8FA35B), Colour.Of(0x9C4A0B), Colour.Of(0x2A66AE), Colour.Of(0xD9A66C), Colour.Of(0x41606F), Colour.Of(0x9C83A8),
        Colour.Of(0x8FB3C9), Colour.Of(0x66727E), Colour.Of(0xD0C8A0),
    ];

    /// <summary>Draws the sheet.</summary>
    public static Sheet Draw(Comparison comparison)
    {
        double high = Height - Margin - TitleRoom;
        double half = Margin + ((high - Margin) * 0.45);
        string title = $"Felt and cost side by side: {comparison.Question.Lay.Part.Name}";
        Mark[] marks =
        [
            new GroupMark("title", [.. Title(title, comparison)]),
            new GroupMark(
                "waste",
                [.. Waste(comparison).Draw(new Box { MinX = Margin, MinY = half + (Room / 2), MaxX = Width - Margin, MaxY = high })]),
            new GroupMark(
                "bars",
                [.. Bars(comparison).Draw(new Box { MinX = Margin, MinY = Margin, MaxX = Width - Margin, MaxY = half - (Room / 2) })]),
        ];
        return new Sheet
        {
            Title = title,
            Description = "Waste of the layout against roll width, and bars of what a thousand good balls cost or use.",
            WidthMm = Width,
            HeightMm = Height,
            Symbols = [],
            Marks = marks,
        };
    }

    private static MarkedCurve Waste(Comparison comparison)
    {
        IEnumerable<CompareRow> named = comparison.Question.Scan ? comparison.Ranking.Take(1) : comparison.Ranking.Take(MostNames);
        string curve = comparison.Sweep.Count > 1
            ? FormattableString.Invariant(
                $"line: parallel rows, a die designed for each width, edge {comparison.Question.Lay.Trims.TotalMm / 2:0.#} mm")
            : string.Empty;
        string lines = comparison.Crossovers.Count > 0 ? "; dashed: number of rows changes" : string.Empty;
        return new MarkedCurve
        {
            Title = "Waste of the layout, % of the full width",
            XTitle = $"width the layout is for, mm{(curve.Length > 0 ? $"   ({curve}{lines})" : string.Empty)}",
            Curve = [.. comparison.Sweep.Select(p => new Point2(p.WidthMm, p.WastePercent))],
            Marked = [
                .. named.Select(r =>
                    (StrokeFont.Fitted($"{r.Rank}  {r.Case.Name}", Ink.Note, 60), new Point2(r.Case.WidthMm, r.Yield.WastePercent))),
            ],
            Lines = [.. comparison.Crossovers.Select(c => c.WidthMm)],
        };
    }

    private static StackedBars Bars(Comparison comparison)
    {
        CompareRow[] rows = [.. comparison.Ranking.Take(MostBars)];
        string some = comparison.Rows.Count > MostBars ? $", the best {MostBars} of {comparison.Rows.Count}" : string.Empty;
        if (!comparison.HasCosts)
        {
            return new StackedBars(
                $"Felt bought for a thousand good balls, m\u00B2{some}",
                [.. rows[0].Account.Shares.Named.Select((s, i) => (s.Name, Shades[i]))],
                [.. rows.Select(r => (
                    $"{r.Rank}  {r.Case.Name}",
                    (IReadOnlyList<double>)
                    [
                        .. r.Account.Shares.Named.Select(s => s.Percent / 100 * r.Account.PerThousandBalls.SquareMetres),
                    ],
                    r.Account.PerThousandBalls.SquareMetres.ToString("0.00", CultureInfo.InvariantCulture)))]);
        }

        // Net felt and the felt that is lost, each by its share of what the felt costs less what the waste brings; then the lines beside
        // the felt.
        return new StackedBars(
            $"Cost of a thousand good balls, {rows[0].Sheet!.Currency}{some}",
            [
                ("felt on balls", Shades[0]), ("felt lost, less waste sold", Shades[1]), ("set-up", Shades[2]),
                ("labour and machine", Shades[3]), ("die", Shades[4]), ("cutting board", Shades[5]),
                ("handling", Shades[6]), ("overhead", Shades[7]),
            ],
            [
                .. rows.Select(r =>
                    ($"{r.Rank}  {r.Case.Name}", Values(r, r.Sheet!), r.Sheet!.Total.ToString("0.00", CultureInfo.InvariantCulture))),
            ]);
    }

    private static IReadOnlyList<double> Values(CompareRow row, CostSheet sheet)
    {
        decimal onBalls = sheet.AmountOf(10) * (decimal)(row.Account.NetSquareMetres / row.Account.PerThousandBalls.SquareMetres);
        return [(double)onBalls, (double)(sheet.AmountOf(12) - onBalls), .. Enumerable.Range(13, 6).Select(n => (double)sheet.AmountOf(n))];
    }

    private static IEnumerable<Mark> Title(string title, Comparison comparison)
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
            $"gap {comparison.Question.Lay.GapMm:0.##} mm, rows {EnumWord.Of(comparison.Question.Lay.Rules.Rows)}   "
                + $"{comparison.Question.Costs?.Name ?? "no costs file"}   best: {comparison.Best.Case.Name}"
                + $"{(comparison.CutShort ? "   cut short" : string.Empty)}");
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
