using FeltNest.Cost.Tickets;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>The tickets of a period for handing over: one A4 page that needs no other file.</summary>
internal static class PeriodPage
{
    // Most groups on the page: the files hold all.
    private const int MostGroups = 8;

    private const string Style =
        "body{font:15px/1.35 sans-serif;color:#25303b;max-width:48em;margin:1.5em auto;padding:0 1em}h1{font-size:1.35em;margin:.2em 0}"
        + "h2{font-size:1.05em;margin:.7em 0 .15em}table{border-collapse:collapse;width:100%}th,td{padding:.1em .5em;text-align:right;"
        + "border-bottom:1px solid #d9dcdd}th:first-child,td:first-child{text-align:left}img{width:100%;display:block}"
        + "p.advice{font-size:1.1em;font-weight:bold;border-left:4px solid #8fa35b;padding-left:.7em;margin:.4em 0}"
        + "ul{margin:.2em 0;padding-left:1.3em}@page{size:A4;margin:10mm}"
        + "@media print{body{margin:0;max-width:none;font-size:10.5px;line-height:1.25;padding:0}section{break-inside:avoid}"
        + "img{max-height:115mm;object-fit:contain}section:first-of-type img{max-height:64mm}}";

    /// <summary>The page's bytes.</summary>
    /// <param name="usage">The period.</param>
    /// <param name="pareto">Picture of the causes (SVG).</param>
    /// <param name="charts">Picture of the charts (SVG).</param>
    public static byte[] Html(PeriodUsage usage, byte[] pareto, byte[] charts)
    {
        TicketGroup whole = usage.Whole;
        PageWriter page = new(PeriodReport.Title(usage), Style);
        page.Paragraph(
            Invariant($"{whole.MorePercent:+0.00;-0.00;0.00} % felt above standard for {whole.Balls:0} good balls from ")
                + Invariant($"{whole.Tickets.Count} tickets: {whole.ActualMoney - whole.StandardMoney:+0.00;-0.00;0.00} {usage.Currency}"),
            "advice");
        page.Heading("Causes");
        page.Picture(pareto, "Causes of the difference, the greatest first");
        if (usage.By != TicketGrouping.Cause)
        {
            page.Heading(Invariant($"By {EnumWord.Of(usage.By)}, those furthest above standard first"));
            page.Table(
                [EnumWord.Of(usage.By), "tickets", "good balls", "above standard %", usage.Currency],
                usage.Groups.OrderByDescending(g => g.MorePercent).Take(MostGroups).Select(g => (false, Cells(g))));
        }

        page.Heading("Cause or noise");
        page.Picture(charts, "Control charts");
        page.List(PeriodReport.Verdicts(usage));
        page.Heading("What it rests on");
        page.List(
        [
            .. usage.Standards.Select(s => Invariant($"standard of {s.Ball}, version {s.Version}, from {s.From} on: ")
                + Invariant($"{s.M2PerThousandBalls:0.##} m2 a thousand good balls")),
            .. PeriodReport.Notes(usage),
        ]);
        return page.Bytes();
    }

    private static string[] Cells(TicketGroup group) =>
    [
        group.Name, Invariant($"{group.Tickets.Count}"), Invariant($"{group.Balls:0}"), Invariant($"{group.MorePercent:+0.00;-0.00;0.00}"),
        Invariant($"{group.ActualMoney - group.StandardMoney:+0.00;-0.00;0.00}"),
    ];
}
