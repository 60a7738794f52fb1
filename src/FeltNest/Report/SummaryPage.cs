using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Handover;

namespace FeltNest.Report;

/// <summary>A comparison for the one who decides, on one page that needs no other file.</summary>
internal static class SummaryPage
{
    private const string Style =
        "body{font:16px/1.45 sans-serif;color:#25303b;max-width:48em;margin:2em auto;padding:0 1em}h1{font-size:1.4em}"
        + "h2{font-size:1.1em;margin:1.1em 0 .2em}table{border-collapse:collapse;width:100%}th,td{padding:.2em .6em;text-align:right;"
        + "border-bottom:1px solid #d9dcdd}th:nth-child(2),td:nth-child(2){text-align:left}tr.best td{font-weight:bold;background:#f1f4e8}"
        + "p.advice{font-size:1.15em;font-weight:bold;border-left:4px solid #8fa35b;padding-left:.7em}ul{margin:.3em 0;padding-left:1.3em}"
        + "@page{size:A4;margin:14mm}@media print{body{margin:0;max-width:none;font-size:12.5px;padding:0}section{break-inside:avoid}}";

    /// <summary>The page's bytes.</summary>
    public static byte[] Html(Comparison comparison)
    {
        CompareSummary summary = CompareSummary.Of(comparison);
        PageWriter page = new(summary.Title, Style);
        page.Paragraph(summary.Recommendation, "advice");
        Part("It holds as long as", summary.Conditions);
        page.Heading("Ranking, a thousand good balls");
        page.Table(
            CompareSummary.RankingNames(comparison), CompareSummary.Ranking(comparison).Select((cells, i) => (i == 0, cells)));
        Part("Money at stake", summary.Stake);
        Part("Risks", summary.Risks);
        Part("What is missing", summary.Missing);
        return page.Bytes();

        void Part(string title, IReadOnlyList<string> sentences)
        {
            if (sentences.Count > 0)
            {
                page.Heading(title);
                page.List(sentences);
            }
        }
    }
}
