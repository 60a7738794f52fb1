using System.Globalization;
using System.Net;
using System.Text;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>A plan of orders with its cutting tickets as one page that needs no other file and prints: the plan, then one ticket a
/// sheet.</summary>
internal static class OrderPage
{
    private const string Style =
        "body{font:15px/1.4 sans-serif;color:#25303b;max-width:72em;margin:2em auto;padding:0 "
            + "1em}table{border-collapse:collapse;margin:1em 0;width:100%}"
        + "th,td{padding:.2em .6em;text-align:right;border-bottom:1px solid #d9dcdd}th.t,td.t{text-align:left}tr.bad "
        + "td{font-weight:bold;background:#fbeeea}"
        + "p.big{font-size:1.5em;margin:.3em 0}p.note{color:#66727e}img.ticket{display:block;width:210mm;height:297mm;border:1px solid "
        + "#d9dcdd;margin:1em auto}"
        + "@page{size:A4;margin:12mm}@page ticket{margin:0}@media "
        + "print{body{margin:0;max-width:none;font-size:11px}tr{break-inside:avoid}"
        + "img.ticket{page:ticket;break-before:page;border:0;margin:0;width:100%;height:auto}}";

    /// <summary>The page's bytes.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="tickets">Its tickets as SVG, in the order of the work.</param>
    /// <param name="drawn">False where the tickets are missing because the run had to end.</param>
    public static byte[] Html(OrderPlan plan, IReadOnlyList<byte[]> tickets, bool drawn = true)
    {
        StringBuilder page = new();
        Head(page, plan);
        if (!drawn)
        {
            page.Append("<p class=\"note\">The run was interrupted: no cutting tickets are drawn. Run it again for them.</p>\n");
        }

        Orders(page, plan);
        Work(page, plan);
        Mountings(page, plan);
        Dies(page, plan);
        Purchases(page, plan);
        Remnants(page, plan);
        foreach (byte[] ticket in tickets)
        {
            page
                .Append("<img class=\"ticket\" alt=\"Cutting ticket\" src=\"data:image/svg+xml;base64,")
                .Append(Convert.ToBase64String(ticket))
                .Append("\">\n");
        }

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
            $"<p class=\"big\"><b>{plan.BallsServed}</b> of {plan.Question.Orders.Sum(o => (long)o.Balls)} balls, {plan.Late} orders "
                + $"late</p>\n");
        string cutShort = plan.Proof.CutShort ? "The search for a better plan was cut short. " : string.Empty;
        page.Append(
            CultureInfo.InvariantCulture, $"<p class=\"note\">{cutShort}{Safe(OrderReport.RestsOn(plan.Question))}</p>\n");
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
        foreach (string warning in OrderReport.Warnings(plan))
        {
            page.Append(CultureInfo.InvariantCulture, $"<p><b>{Safe(warning)}</b></p>\n");
        }
    }

    private static void Work(StringBuilder page, OrderPlan plan)
    {
        Head(
            page, "Work, press by press in the order of cutting", 6, "no", "press", "die", "order", "roll", "lot", "strikes", "from, m",
            "metres", "good balls", "start", "end");
        foreach (OrderCut cut in plan.Cuts)
        {
            Line(
                page, false, 6, Invariant($"{cut.Number}"), cut.Press.Name, cut.Die.Name, cut.Order.Name, cut.Roll.Name, cut.Roll.Lot,
                Invariant($"{cut.Strikes}"), Invariant($"{cut.FromM:0.00}"), Invariant($"{cut.Metres:0.00}"), Invariant($"{cut.GoodBalls}"),
                Invariant($"{plan.Question.Rules.MomentOf(cut.StartHour):ddd yyyy-MM-dd HH:mm}"),
                Invariant($"{plan.Question.Rules.MomentOf(cut.EndHour):ddd yyyy-MM-dd HH:mm}"));
        }

        page.Append("</table>\n");
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
            string ruled = work.ReRules > 0 ? Invariant($"rule it again {work.ReRules} times") : string.Empty;
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
        page.Append(CultureInfo.InvariantCulture, $"<h2>{Safe(title)}</h2>\n<table><tr>");
        for (int i = 0; i < names.Length; i++)
        {
            page.Append(CultureInfo.InvariantCulture, $"<th{(i < texts ? " class=\"t\"" : string.Empty)}>{Safe(names[i])}</th>");
        }

        page.Append("</tr>\n");
    }

    private static void Line(StringBuilder page, bool bad, int texts, params string[] cells)
    {
        page.Append(bad ? "<tr class=\"bad\">" : "<tr>");
        for (int i = 0; i < cells.Length; i++)
        {
            page.Append(CultureInfo.InvariantCulture, $"<td{(i < texts ? " class=\"t\"" : string.Empty)}>{Safe(cells[i])}</td>");
        }

        page.Append("</tr>\n");
    }

    private static string Safe(string text) => WebUtility.HtmlEncode(text);
}
