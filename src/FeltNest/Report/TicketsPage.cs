using System.Globalization;
using System.Net;
using System.Text;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>All cutting tickets of a plan of orders in one page that needs no other file and no script: the address says which of them are
/// shown, and what is shown is what prints, one ticket a sheet of A4.</summary>
internal static class TicketsPage
{
    /// <summary>Name of the file.</summary>
    public const string FileName = "tickets.html";

    /// <summary>What is said where there is none.</summary>
    public const string NoTickets = "There are no tickets: none of the dies has a layout.";

    /// <summary>Class of a ticket in the page.</summary>
    public const string TicketClass = "ticket";

    // Only the tickets that the address names are shown; a page without a name shows its index, and prints it.
    private const string Style =
        "body{font:15px/1.5 sans-serif;color:#25303b;margin:0}nav{max-width:60em;margin:1em auto;padding:0 1em}"
        + "nav a{margin-right:.9em;white-space:nowrap}h1{font-size:1.4em}h2{font-size:1.05em;margin:.8em 0 .1em}svg "
        + "text{font-family:sans-serif}"
        + ".ticket{display:none;width:210mm;height:297mm;margin:1em auto;border:1px solid #d9dcdd;content-visibility:auto;"
        + "contain-intrinsic-size:210mm 297mm;stroke-linejoin:round}"
        + "main:target .ticket,section:target .ticket,.ticket:target{display:block}"
        + "@page{size:A4;margin:0}@media print{nav{display:none}body:not(:has(:target)) nav{display:block;margin:12mm}"
        + ".ticket{width:210mm;height:296.5mm;margin:0;border:0;break-inside:avoid;content-visibility:visible}}";

    /// <summary>The page's bytes.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">Rules of style that the tickets need.</param>
    /// <param name="shared">What the tickets share.</param>
    /// <param name="tickets">The ticket of each piece of work that has one, by its number.</param>
    public static byte[] Html(OrderPlan plan, string style, string shared, IReadOnlyDictionary<int, string> tickets)
    {
        IReadOnlyList<WorkDay> days = WorkDay.Of(plan);
        string title = Invariant($"Cutting tickets from {plan.Question.Rules.Start:yyyy-MM-dd}");
        StringBuilder page = new();
        StringBuilder sheets = new();
        foreach (WorkDay day in days)
        {
            sheets.Append(CultureInfo.InvariantCulture, $"<section id=\"{day.Id}\">\n");
            foreach (OrderCut cut in day.Cuts.Where(c => tickets.ContainsKey(c.Number)))
            {
                sheets.Append(tickets[cut.Number]);
            }

            sheets.Append("</section>\n");
        }

        page.Append(
            CultureInfo.InvariantCulture,
            $"<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>{title}</title><style>{Style}{style}</style>"
                + $"</head><body>\n<nav><h1>{title}</h1>\n");
        Index(page, plan, days, tickets);
        page.Append("</nav>\n").Append(shared).Append("<main id=\"all\">\n").Append(sheets).Append("</main>\n</body></html>\n");
        return Encoding.UTF8.GetBytes(page.ToString());
    }

    private static void Index(StringBuilder page, OrderPlan plan, IReadOnlyList<WorkDay> days, IReadOnlyDictionary<int, string> tickets)
    {
        if (tickets.Count == 0)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p>{NoTickets}</p>\n");
            return;
        }

        page.Append(
            CultureInfo.InvariantCulture,
            $"<p>Choose one ticket, a press's day, or all. What is shown is what prints, one ticket a sheet of A4. <a href=\"#all\">"
                + $"all {CountWords.Of(tickets.Count, "ticket")}</a><a href=\"#\">none</a><a href=\"orders.html\">the plan</a></p>\n");
        foreach (WorkDay day in days)
        {
            page.Append(
                CultureInfo.InvariantCulture, $"<h2>{WebUtility.HtmlEncode(day.Name)}</h2>\n<a href=\"#{day.Id}\">all of the day</a>");
            foreach (OrderCut cut in day.Cuts.Where(c => tickets.ContainsKey(c.Number)))
            {
                page.Append(
                    CultureInfo.InvariantCulture,
                    $"<a href=\"#{WorkDay.TicketOf(cut)}\">{cut.Number} {WebUtility.HtmlEncode(cut.Order.Name)}</a> ");
            }
        }
    }
}
