using System.Globalization;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Sheet;
using FeltNest.Drawing.Charts;
using FeltNest.Drawing.Lettering;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout.Limits;

namespace FeltNest.Drawing.Sheets;

/// <summary>The sheet of a comparison: the saw-tooth of waste over width with the offers on it, what a thousand balls cost, or use where
/// no price is known, above the best, and the way from the least possible felt to the felt bought.</summary>
internal static class CompareSheet
{
    // As wide as a lying A4; heights of the charts of waste and of steps, margin, title and the room between charts, mm.
    private const double Width = 297;
    private const double WasteHeight = 92;
    private const double StepsHeight = 92;
    private const double BarsLeast = 17;
    private const double BarStep = 9;
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
        int bars = Math.Min(MostBars, comparison.Rows.Count);
        double foot = Margin + StepsHeight + Room;
        double middle = foot + BarsLeast + (bars * BarStep) + Room;
        double high = middle + WasteHeight;
        double height = high + TitleRoom + Margin;
        string title = $"Felt and cost side by side: {comparison.Question.Lay.Part.Name}";
        Mark[] marks =
        [
            new GroupMark("title", [.. Title(title, comparison, height - Margin)]),
            new GroupMark("waste", [.. Waste(comparison).Draw(Across(middle, high))]),
            new GroupMark("bars", [.. Bars(comparison).Draw(Across(foot, middle - Room))]),
            .. Steps(comparison.Best),
        ];
        return new Sheet
        {
            Title = title,
            Description = "Waste of the layout against roll width, bars of what a thousand good balls cost or use above the best, and "
                + "the way "
                + "from the least possible felt to the felt bought.",
            WidthMm = Width,
            HeightMm = height,
            Symbols = [],
            Marks = marks,
        };
    }

    private static Box Across(double low, double high) => new() { MinX = Margin, MinY = low, MaxX = Width - Margin, MaxY = high };

    // Felt on the left; its money, where there is some, on the right.
    private static IEnumerable<Mark> Steps(CompareRow best)
    {
        Box whole = Across(Margin, Margin + StepsHeight);
        if (best.Sheet is not { } sheet)
        {
            yield return new GroupMark("felt", [.. CompareFelt.Felt(best).Draw(whole)]);
            yield break;
        }

        double middle = Width * 0.55;
        yield return new GroupMark("felt", [.. CompareFelt.Felt(best).Draw(whole with { MaxX = middle - (Room / 2) })]);
        yield return new GroupMark("landed", [.. CompareFelt.Money(best, sheet).Draw(whole with { MinX = middle + (Room / 2) })]);
    }

    private static MarkedCurve Waste(Comparison comparison)
    {
        IEnumerable<CompareRow> named = comparison.Question.Scan ? comparison.Ranking.Take(1) : comparison.Ranking.Take(MostNames);
        string curve = comparison.Sweep.Count > 1
            ? FormattableString.Invariant($"line: parallel rows, a die for each width, edge {EdgeOf(comparison.Question.Lay.Trims)} mm")
            : string.Empty;
        string lines = comparison.Crossovers.Count > 0 ? "; dashed: number of rows changes" : string.Empty;
        return new MarkedCurve
        {
            Title = "Waste of the layout, % of the full width",
            XTitle = $"width the layout is for, mm{(curve.Length > 0 ? $"   ({curve}{lines})" : string.Empty)}",
            Curve = [.. comparison.Sweep.Select(p => new Point2(p.WidthMm, p.WastePercent))],
            Marked = [
                .. named.Select(r =>
                    (StrokeFont.Fitted(NameOf(r, comparison), Ink.Note, 60), new Point2(r.Case.WidthMm, r.Yield.WastePercent))),
            ],
            Lines = [.. comparison.Crossovers.Select(c => c.WidthMm)],
        };
    }

    // An offer with trims of its own lies off the curve, which is of the usual ones: its name says so.
    private static string NameOf(CompareRow row, Comparison comparison)
    {
        string own = row.Case.Trims == comparison.Question.Lay.Trims ? string.Empty : $" (edge {EdgeOf(row.Case.Trims)})";
        return FormattableString.Invariant($"{row.Rank}  {row.Case.Name}{own}");
    }

    private static string EdgeOf(EdgeTrims trims) => FormattableString.Invariant($"{trims.TotalMm / 2:0.##}");

    private static DifferenceBars Bars(Comparison comparison)
    {
        CompareRow[] rows = [.. comparison.Ranking.Take(MostBars)];
        string some = comparison.Rows.Count > MostBars ? $", the best {MostBars} of {comparison.Rows.Count}" : string.Empty;
        if (!comparison.HasCosts)
        {
            return new DifferenceBars(
                $"Felt bought for a thousand good balls above {rows[0].Case.Name}, m\u00B2{some}",
                [.. rows[0].Account.Shares.Named.Select((s, i) => (s.Name, Shades[i]))],
                [.. rows.Select(row => (
                    $"{row.Rank}  {row.Case.Name}", Above(AreasOf(row), AreasOf(rows[0])),
                    SumOf(row.Account.PerThousandBalls.SquareMetres, rows[0].Account.PerThousandBalls.SquareMetres)))]);
        }

        return new DifferenceBars(
            $"Cost of a thousand good balls above {rows[0].Case.Name}, {rows[0].Sheet!.Currency}{some}",
            [("felt, less waste sold", Shades[0]), ("strikes and board", Shades[1]), ("die", Shades[2]), ("the rest", Shades[3])],
            [.. rows.Select(row => (
                $"{row.Rank}  {row.Case.Name}", Above(MoneyOf(row), MoneyOf(rows[0])),
                SumOf((double)row.Total!.Value, (double)rows[0].Total!.Value)))]);
    }

    private static IReadOnlyList<double> Above(double[] values, double[] best) => [.. values.Zip(best, (value, least) => value - least)];

    private static double[] AreasOf(CompareRow row) =>
        [.. row.Account.Shares.Named.Select(s => s.Percent / 100 * row.Account.PerThousandBalls.SquareMetres)];

    private static double[] MoneyOf(CompareRow row)
    {
        CostParts parts = CostParts.Of(row.Sheet!);
        return [(double)parts.Felt, (double)parts.Strikes, (double)parts.Die, (double)parts.Rest];
    }

    // The difference, and behind it what it is of.
    private static string SumOf(double value, double best) => value == best
        ? value.ToString("0.00", CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{value - best:+0.00;-0.00;0.00} ({value:0.00})");

    private static IEnumerable<Mark> Title(string title, Comparison comparison, double top)
    {
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
