using System.Globalization;
using System.Net;
using System.Text;
using FeltNest.Cost.Compare;
using FeltNest.Cost.Sheet;

namespace FeltNest.Report;

/// <summary>A comparison as one page that needs no other file.</summary>
internal static class ComparePage
{
    private const string Style =
        "body{font:15px/1.45 sans-serif;color:#25303b;max-width:72em;margin:2em auto;padding:0 "
            + "1em}table{border-collapse:collapse;margin:1em 0}"
        + "th,td{padding:.25em .7em;text-align:right;border-bottom:1px solid "
        + "#d9dcdd}th:first-child,td:first-child,.t{text-align:left}tr.best td{font-weight:bold;background:#f1f4e8}"
        + "img{width:100%;height:auto;border:1px solid #d9dcdd}p.note{color:#66727e}@media print{body{margin:0}}";

    /// <summary>The page's bytes.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="picture">Its sheet as SVG.</param>
    public static byte[] Html(Comparison comparison, byte[] picture)
    {
        string title = $"{comparison.Question.Lay.Part.Name}: felt and cost per thousand good balls";
        StringBuilder page = new();
        page.Append(
            CultureInfo.InvariantCulture,
            $"<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>{Safe(title)}</title><style>"
                + $"{Style}</style></head><body>\n<h1>{Safe(title)}</h1>\n");
        Ranking(page, comparison);
        page
            .Append("<img alt=\"Waste against width, and cost side by side\" src=\"data:image/svg+xml;base64,")
            .Append(Convert.ToBase64String(picture))
            .Append("\">\n");
        Accounts(page, comparison);
        Sheets(page, comparison);
        page.Append("<h2>All of it in words</h2>\n<pre>").Append(Safe(CompareReport.Text(comparison))).Append("</pre>\n</body></html>\n");
        return Encoding.UTF8.GetBytes(page.ToString());
    }

    private static void Ranking(StringBuilder page, Comparison comparison)
    {
        Head(
            page, "Side by side",
            ["", "name", "width, mm", "cuts per m", "waste, %", "m", "m2", "kg", "cost " + comparison.Best.Sheet?.Currency]);
        foreach (CompareRow row in comparison.Ranking)
        {
            Line(page, row.Rank == 1, [
                Text(row.Rank, "0"), row.Case.Name, Text(row.Case.WidthMm, "0.##"), Text(row.Yield.PanelsPerMetre, "0.00"),
                Text(row.Yield.WastePercent, "0.00"),
                Text(row.Account.PerThousandBalls.Metres, "0.00"), Text(row.Account.PerThousandBalls.SquareMetres, "0.00"),
                Text(row.Account.PerThousandBalls.Kilograms, "0.00"),
                Text((double?)row.Total, "0.00"),
            ]);
        }

        page.Append(
            "</table>\n<p class=\"note\">Metres, square metres and kilograms bought per thousand good balls. Waste: per cent of the "
                + "full width, one repeat, before roll ends and faults.</p>\n");
    }

    private static void Accounts(StringBuilder page, Comparison comparison)
    {
        Head(page, "Where the felt goes, per cent of the roll", ["name", .. comparison.Best.Account.Shares.Named.Select(s => s.Name)]);
        foreach (CompareRow row in comparison.Ranking)
        {
            Line(page, row.Rank == 1, [row.Case.Name, .. row.Account.Shares.Named.Select(s => Text(s.Percent, "0.00"))]);
        }

        page.Append("</table>\n");
    }

    private static void Sheets(StringBuilder page, Comparison comparison)
    {
        CompareRow[] priced = [.. comparison.Ranking.Where(r => r.Sheet is not null).Take(12)];
        if (priced.Length == 0)
        {
            return;
        }

        Head(
            page, $"Cost sheet, thousand good balls, {priced[0].Sheet!.Currency} (lines 1 to 9 in m2)",
            ["line", .. priced.Select(r => r.Case.Name)]);
        foreach (int n in (IEnumerable<int>)[.. Enumerable.Range(1, 10), .. Enumerable.Range(20, 6), .. Enumerable.Range(11, 9)])
        {
            Line(
                page, n == 19,
                [
                    n < 20 ? $"{n} {priced[0].Sheet!.Lines[n - 1].Name}" : $"of 10: {priced[0].Sheet!.Lines[n - 1].Name}",
                    .. priced.Select(r => Cell(r.Sheet!.Lines[n - 1])),
                ]);
        }

        page.Append("</table>\n");
    }

    private static string Cell(CostLine line)
    {
        if (line.Number <= 9)
        {
            return Text(line.Quantity, "0.000");
        }

        if (line.Amount is { } money)
        {
            return money.ToString("0.00", CultureInfo.InvariantCulture);
        }

        return "not given";
    }

    private static void Head(StringBuilder page, string title, string[] names)
    {
        page.Append(CultureInfo.InvariantCulture, $"<h2>{Safe(title)}</h2>\n<table><tr>");
        foreach (string name in names)
        {
            page.Append(CultureInfo.InvariantCulture, $"<th>{Safe(name)}</th>");
        }

        page.Append("</tr>\n");
    }

    private static void Line(StringBuilder page, bool best, string[] cells)
    {
        page.Append(best ? "<tr class=\"best\">" : "<tr>");
        foreach (string cell in cells)
        {
            page.Append(CultureInfo.InvariantCulture, $"<td>{Safe(cell)}</td>");
        }

        page.Append("</tr>\n");
    }

    private static string Text(double? value, string format) => value?.ToString(format, CultureInfo.InvariantCulture) ?? string.Empty;

    private static string Safe(string text) => WebUtility.HtmlEncode(text);
}
