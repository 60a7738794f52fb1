using System.Globalization;
using System.Net;
using System.Text;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>A plan of orders for the people at the presses as a page that prints: what to make and buy first, the work press by press and
/// day by day, orders, dies, what goes back to stock. It holds no money. Its tickets are in <see cref="TicketsPage"/>.</summary>
internal static class OrderPage
{
    private const string Style =
        "body{font:15px/1.4 sans-serif;color:#25303b;max-width:72em;margin:2em auto;padding:0 1em}"
        + "table{border-collapse:collapse;margin:1em 0;width:100%}th,td{padding:.2em .6em;text-align:right;border-bottom:1px solid #d9dcdd}"
        + "th.t,td.t{text-align:left}tr.bad td{font-weight:bold;background:#fbeeea}summary{font-weight:bold;margin:.6em 0;cursor:pointer}"
        + "p.big{font-size:1.5em;margin:.3em 0}p.note{color:#66727e}"
        + "@page{size:A4;margin:12mm}@media print{body{margin:0;max-width:none;font-size:11px}tr{break-inside:avoid}a{color:inherit;"
        + "text-decoration:none}summary{break-after:avoid}}";

    // Longest table of work: a longer one goes on in the next.
    private const int MostRows = 50;

    /// <summary>The page's bytes.</summary>
    /// <param name="plan">The plan.</param>
    public static byte[] Html(OrderPlan plan)
    {
        StringBuilder page = new();
        Head(page, plan);
        First(page, plan);
        Purchases(page, plan);
        Orders(page, plan);
        Changes(page, plan);
        Work(page, plan);
        Mountings(page, plan);
        Dies(page, plan);
        Remnants(page, plan);
        page.Append("</body></html>\n");
        return Encoding.UTF8.GetBytes(page.ToString());
    }

    private static void Head(StringBuilder page, OrderPlan plan)
    {
        OrderRules rules = plan.Question.Rules;
        string title = Invariant($"Orders from {rules.Start:yyyy-MM-dd}: what to cut from which roll");
        page.Append(
            CultureInfo.InvariantCulture,
            $"<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>{Safe(title)}</title><style>"
                + $"{Style}</style></head><body>\n<h1>{Safe(title)}</h1>\n");
        if (SearchWords.BadlyShort(plan) is { } badly)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p class=\"big\"><b>{Safe(badly)}</b></p>\n");
        }

        page.Append(
            CultureInfo.InvariantCulture,
            $"<p class=\"big\"><b>{plan.BallsServed}</b> of {plan.Question.Orders.Sum(o => (long)o.Balls)} balls, "
                + $"{CountWords.Of(plan.Late, "order")} late</p>\n");
        page.Append(
            CultureInfo.InvariantCulture,
            $"<p class=\"note\">{Safe(OrderReport.RestsOn(plan.Question))}</p>\n<p><a href=\"{TicketsPage.FileName}\">All cutting tickets"
                + $"</a>; the number of a piece leads to its own.</p>\n");
    }

    // What must be done before anything can be cut with a die.
    private static void First(StringBuilder page, OrderPlan plan)
    {
        foreach (DieWork work in plan.Dies.Where(d => d.Make))
        {
            page.Append(CultureInfo.InvariantCulture, $"<p class=\"big\">Make this die first: <b>{Safe(work.Die.Name)}</b></p>\n");
        }

        foreach (DieWork work in plan.Dies.Where(d => d.ReRules > 0))
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"<p class=\"big\">Rule die <b>{Safe(work.Die.Name)}</b> again {CountWords.Times(work.ReRules)} before it is worn</p>\n");
        }
    }

    private static void Orders(StringBuilder page, OrderPlan plan)
    {
        Head(page, "Orders", 3, "order", "ball", "lots", "balls wanted", "good balls", "short", "due", "done", "days late", "reserve");
        foreach (OrderResult r in plan.Results)
        {
            string lots = string.Join(", ", plan.Cuts.Where(c => c.Order == r.Order).Select(c => c.Roll.Lot).Distinct());
            Line(
                page, r.ShortBalls > 0 || r.DaysLate > 0 || r.ReserveShortBalls > 0, 3, r.Order.Name, r.Order.Ball, lots,
                Invariant($"{r.Order.Balls}"), Invariant($"{r.GoodBalls}"), Invariant($"{r.ShortBalls}"),
                Invariant($"{r.Order.Due:yyyy-MM-dd}"),
                Invariant($"{r.Done:yyyy-MM-dd}"), Invariant($"{r.DaysLate}"),
                r.Order.ReserveBalls == 0
                    ? string.Empty
                    : Invariant($"{Math.Min(r.ReservedBalls, r.Order.ReserveBalls)} of {r.Order.ReserveBalls}"));
        }

        page.Append("</table>\n");
        foreach (string warning in OrderReport.ForTheShop(plan))
        {
            page.Append(CultureInfo.InvariantCulture, $"<p><b>{Safe(warning)}</b></p>\n");
        }
    }

    private static void Changes(StringBuilder page, OrderPlan plan)
    {
        if (plan.Changes is not { Count: > 0 } changes)
        {
            return;
        }

        Head(page, "Changed against the plan before", 5, "order", "what", "before", "now", "why");
        foreach (PlanChange change in changes)
        {
            Line(page, false, 5, change.Order, EnumWord.Of(change.What), change.Before, change.After, change.Reason);
        }

        page.Append("</table>\n");
    }

    private static void Work(StringBuilder page, OrderPlan plan)
    {
        page.Append("<h2>Work, press by press and day by day</h2>\n");
        foreach (WorkDay day in WorkDay.Of(plan))
        {
            foreach (OrderCut[] cuts in day.Cuts.Chunk(MostRows))
            {
                WorkOf(page, plan, day, cuts);
            }
        }
    }

    private static void WorkOf(StringBuilder page, OrderPlan plan, WorkDay day, OrderCut[] cuts)
    {
        page.Append(
            CultureInfo.InvariantCulture,
            $"<details open><summary>{Safe(day.Name)}: {cuts[0].Number} to {cuts[^1].Number} (<a href=\"{TicketsPage.FileName}#{day.Id}\">"
                + $"tickets of the day</a>)</summary>\n");
        Table(page, 5, "no", "die", "order", "roll", "lot", "strikes", "from, m", "metres", "good balls", "start", "end");
        foreach (OrderCut cut in cuts)
        {
            DateTime end = plan.Question.Rules.MomentOf(cut.EndHour);
            string ends = plan.Question.Rules.DayOf(cut.EndHour) == day.Day ? Invariant($"{end:HH:mm}") : Invariant($"{end:ddd HH:mm}");
            page.Append(
                CultureInfo.InvariantCulture,
                $"<tr><td class=\"t\"><a href=\"{TicketsPage.FileName}#{WorkDay.TicketOf(cut)}\">{cut.Number}</a></td>");
            Cells(
                page, 4, cut.Die.Name, cut.Order.Name, cut.Roll.Name, cut.Roll.Lot, Invariant($"{cut.Strikes}"),
                Invariant($"{cut.FromM:0.00}"), Invariant($"{cut.Metres:0.00}"), Invariant($"{cut.GoodBalls}"),
                Invariant($"{plan.Question.Rules.MomentOf(cut.StartHour):HH:mm}"), ends);
        }

        page.Append("</table></details>\n");
    }

    private static void Mountings(StringBuilder page, OrderPlan plan)
    {
        Head(page, "Dies to mount, press by press", 2, "press", "die", "from", "to");
        foreach (Mounting mounting in plan.Mountings)
        {
            string from = Invariant($"{plan.Question.Rules.MomentOf(mounting.StartHour):ddd yyyy-MM-dd HH:mm}");
            string to = Invariant($"{plan.Question.Rules.MomentOf(mounting.EndHour):ddd yyyy-MM-dd HH:mm}");
            Line(page, false, 2, mounting.Press.Name, mounting.Die.Name, from, mounting.Paid ? to : "stands there already");
        }

        page.Append("</table>\n");
    }

    private static void Dies(StringBuilder page, OrderPlan plan)
    {
        Head(
            page, "Dies", 3, "first press", "die", "before it cuts", "mounted", "strikes", "left afterwards");
        foreach (DieWork work in plan.Dies)
        {
            string made = work.Make ? "make it first" : string.Empty;
            string ruled = work.ReRules > 0 ? $"rule it again {CountWords.Times(work.ReRules)}" : string.Empty;
            string first = string.Join(", ", new[] { made, ruled }.Where(w => w.Length > 0));
            Line(
                page, first.Length > 0, 3, work.Press.Name, work.Die.Name, first, Invariant($"{work.Mountings}"),
                Invariant($"{work.Strikes}"),
                Invariant($"{work.StrikesAfter}"));
        }

        page.Append("</table>\n");
    }

    private static void Purchases(StringBuilder page, OrderPlan plan)
    {
        if (plan.Purchases.Count == 0)
        {
            return;
        }

        Head(page, "To buy", 1, "offer", "rolls", "metres");
        foreach (RollPurchase bought in plan.Purchases)
        {
            Line(page, false, 1, bought.Offer.Roll.Name, Invariant($"{bought.Rolls}"), Invariant($"{bought.Metres:0.##}"));
        }

        page.Append("</table>\n");
    }

    private static void Remnants(StringBuilder page, OrderPlan plan)
    {
        Head(page, "Back to stock", 3, "roll", "felt", "lot", "width, mm", "length, m", "age, days", "reserved");
        foreach (KeptRemnant kept in plan.Remnants)
        {
            string age = kept.Roll.Received is { } day ? Invariant($"{plan.Question.Rules.Start.DayNumber - day.DayNumber}") : string.Empty;
            string held = string.Join(", ", kept.Reserved.Select(r => Invariant($"{r.Metres:0.00} m for {r.Order.Name}")));
            Line(
                page, false, 3, kept.Roll.Name, kept.Roll.Felt, kept.Roll.Lot, Invariant($"{kept.Roll.WidthMm:0.#}"),
                Invariant($"{kept.LengthM:0.00}"), age, held);
        }

        page.Append("</table>\n");
    }

    private static void Head(StringBuilder page, string title, int texts, params string[] names)
    {
        page.Append(CultureInfo.InvariantCulture, $"<h2>{Safe(title)}</h2>\n");
        Table(page, texts, names);
    }

    private static void Table(StringBuilder page, int texts, params string[] names)
    {
        page.Append("<table><tr>");
        for (int i = 0; i < names.Length; i++)
        {
            page.Append(CultureInfo.InvariantCulture, $"<th{(i < texts ? " class=\"t\"" : string.Empty)}>{Safe(names[i])}</th>");
        }

        page.Append("</tr>\n");
    }

    private static void Line(StringBuilder page, bool bad, int texts, params string[] cells)
    {
        page.Append(bad ? "<tr class=\"bad\">" : "<tr>");
        Cells(page, texts, cells);
    }

    private static void Cells(StringBuilder page, int texts, params string[] cells)
    {
        for (int i = 0; i < cells.Length; i++)
        {
            page.Append(CultureInfo.InvariantCulture, $"<td{(i < texts ? " class=\"t\"" : string.Empty)}>{Safe(cells[i])}</td>");
        }

        page.Append("</tr>\n");
    }

    private static string Safe(string text) => WebUtility.HtmlEncode(text);
}
