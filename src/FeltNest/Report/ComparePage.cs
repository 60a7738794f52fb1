using System.Globalization;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Sheet;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>A comparison as one page that needs no other file: all of it in tables and sentences.</summary>
internal static class ComparePage
{
    // Offers side by side on a sheet of paper.
    private const int MostSheets = 10;

    private const string Style =
        "body{font:15px/1.4 sans-serif;color:#25303b;max-width:72em;margin:2em auto;padding:0 1em}h1{font-size:1.4em}"
        + "h2{font-size:1.1em;margin:1em 0 .2em}table{border-collapse:collapse;margin:.3em 0}"
        + "th,td{padding:.15em .6em;text-align:right;border-bottom:1px solid #d9dcdd}th:first-child,td:first-child{text-align:left}"
        + "tr.best td{font-weight:bold;background:#f1f4e8}img{width:100%;height:auto;border:1px solid #d9dcdd}"
        + "p.note{color:#4a5660;margin:.15em 0}section{break-inside:avoid}h2{break-after:avoid}"
        + "@page{size:A4;margin:11mm}@media print{body{margin:0;max-width:none;padding:0;font-size:9.5px;line-height:1.28}"
        + "h1{margin:0}h2{margin:.7em 0 .1em}th,td{padding:.08em .45em}.parts{columns:2;column-gap:6mm}.parts table{width:100%}"
        + ".parts th,.parts td{padding:.08em .25em}"
        + "img{max-height:180mm;width:auto;max-width:100%}}";

    /// <summary>The page's bytes.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="picture">Its sheet as SVG.</param>
    public static byte[] Html(Comparison comparison, byte[] picture)
    {
        PageWriter page = new($"{comparison.Question.Lay.Part.Name}: felt and cost per thousand good balls", Style);
        Ranking(page, comparison);
        page.Picture(picture, "Waste against width, costs above the cheapest, and from the least felt to the felt bought");
        Accounts(page, comparison);
        Sheets(page, comparison);
        page.SideBySide();
        CompareReport.Findings(page, comparison);
        page.EndSideBySide();
        return page.Bytes();
    }

    private static void Ranking(PageWriter page, Comparison comparison)
    {
        page.Heading("Side by side");
        page.Table(
            ["", "name", "width, mm", "cuts per m", "waste, %", "m", "m2", "kg", "cost " + comparison.Best.Sheet?.Currency],
            comparison.Ranking.Take(CompareReport.MostRows).Select(row => (row.Rank == 1, (string[])
            [
                Invariant($"{row.Rank}"), row.Case.Name, Invariant($"{row.Case.WidthMm:0.##}"),
                Invariant($"{row.Yield.PanelsPerMetre:0.00}"),
                Invariant($"{row.Yield.WastePercent:0.00}"), Invariant($"{row.Account.PerThousandBalls.Metres:0.00}"),
                Invariant($"{row.Account.PerThousandBalls.SquareMetres:0.00}"), Invariant($"{row.Account.PerThousandBalls.Kilograms:0.00}"),
                Invariant($"{row.Total:0.00}"),
            ])));
        page.Note("Metres, square metres and kilograms bought per thousand good balls.");
        CompareReport.RankingNotes(page, comparison);
    }

    private static void Accounts(PageWriter page, Comparison comparison)
    {
        page.Heading("Where the felt goes, per cent of the roll");
        page.Table(
            ["name", .. comparison.Best.Account.Shares.Named.Select(s => s.Name)],
            comparison.Ranking.Take(MostSheets).Select(row => (
                row.Rank == 1, (string[])[row.Case.Name, .. row.Account.Shares.Named.Select(s => Invariant($"{s.Percent:0.00}"))])));
    }

    private static void Sheets(PageWriter page, Comparison comparison)
    {
        CompareRow[] priced = [.. comparison.Ranking.Where(r => r.Sheet is not null).Take(MostSheets)];
        if (priced.Length == 0)
        {
            return;
        }

        page.Heading($"Cost sheet, thousand good balls, {priced[0].Sheet!.Currency} (lines 1 to 9 in m2)");
        int[] order = [.. Enumerable.Range(1, 10), .. Enumerable.Range(20, 6), .. Enumerable.Range(11, 9)];
        IEnumerable<(bool, string[])> lines = order.Select(n =>
        {
            string name = priced[0].Sheet!.Lines[n - 1].Name;
            string words = n < 20 ? Invariant($"{n} {name}") : $"of 10: {name}";
            return (n == 19, (string[])[words, .. priced.Select(r => Cell(r.Sheet!.Lines[n - 1]))]);
        });
        (bool, string[]) ball = (false, ["per ball", .. priced.Select(r => Invariant($"{r.Sheet!.Total / 1000:0.00000}"))]);
        page.Table(["line", .. priced.Select(r => r.Case.Name)], [.. lines, ball]);
        if (priced[0].Sheet!.NotCounted.Count > 0)
        {
            page.Note($"Not in the total, as no figure was given: {string.Join(", ", priced[0].Sheet!.NotCounted)}.");
        }
    }

    private static string Cell(CostLine line)
    {
        if (line.Number <= 9)
        {
            return Invariant($"{line.Quantity:0.000}");
        }

        return line.Amount is { } money ? money.ToString("0.00", CultureInfo.InvariantCulture) : "not given";
    }
}
