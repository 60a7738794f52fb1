using System.Globalization;

namespace FeltNest.Cost.Tickets;

/// <summary>Holds the tickets of a period against their standards, one by one, and puts them together.</summary>
internal static class PeriodStudy
{
    private const string Unsaid = "not told";

    /// <summary>The tickets of a period.</summary>
    /// <param name="question">What is asked.</param>
    /// <exception cref="NoAnswerException">No ticket of the period can be held against a standard.</exception>
    /// <exception cref="InputException">Tickets in several currencies.</exception>
    public static PeriodUsage Run(PeriodQuestion question)
    {
        (CutTicket Ticket, TicketSplit? Split)[] all =
        [
            .. question.Tickets.OrderBy(t => t.Day, StringComparer.Ordinal).ThenBy(t => t.Entry)
                .Select(t => (t, TicketSplitting.Of(t, StandardOf(question.Standards, t)))),
        ];
        TicketSplit[] splits = [.. all.Select(t => t.Split).OfType<TicketSplit>()];
        if (splits.Length == 0)
        {
            throw new NoAnswerException(
                $"no ticket that came back from {question.Since} on tells strikes or felt, and gave balls: there is nothing to hold "
                    + "against a standard");
        }

        string[] currencies = [.. splits.Select(s => s.Ticket.Currency).Distinct()];
        if (currencies.Length > 1)
        {
            throw new InputException(
                $"the tickets of this period are in {string.Join(" and ", currencies)}: ask for days of one currency");
        }

        TicketGroup whole = new() { Name = "whole", Tickets = splits };
        TicketGroup[] groups = question.By == TicketGrouping.Cause ? [whole] : Grouped(splits, t => NameOf(t, question.By));
        TicketGroup[] points = question.By == TicketGrouping.Cause ? Grouped(splits, t => t.Day) : groups;
        return new PeriodUsage
        {
            Book = question.Book,
            Since = question.Since,
            Until = question.Until,
            By = question.By,
            Whole = whole,
            Groups = groups,
            Currency = currencies[0],
            Standards = [.. question.Standards.Where(s => splits.Any(t => t.Ticket.Ball == s.Ball && t.StandardVersion == s.Version))],
            Charts = TicketCharts.Of(points, splits),
            LeftOut = [.. all.Where(t => t.Split is null).Select(t => t.Ticket.Number).Distinct()],
        };
    }

    /// <summary>The standard that held for a ticket on its day; null for none.</summary>
    public static TicketStandard? StandardOf(IEnumerable<TicketStandard> standards, CutTicket ticket) => standards
        .Where(s => s.Ball == ticket.Ball && string.CompareOrdinal(s.From, ticket.Day) <= 0)
        .MaxBy(s => s.Version);

    private static TicketGroup[] Grouped(TicketSplit[] splits, Func<CutTicket, string> name) =>
    [
        .. splits.GroupBy(s => name(s.Ticket), StringComparer.Ordinal)
            .Select(g => new TicketGroup { Name = g.Key, Tickets = [.. g] }),
    ];

    private static string NameOf(CutTicket ticket, TicketGrouping by) => by switch
    {
        TicketGrouping.Roll => ticket.Roll,
        TicketGrouping.Lot => ticket.Lot,
        TicketGrouping.Supplier => ticket.Supplier ?? Unsaid,
        TicketGrouping.Press => ticket.Press,
        TicketGrouping.Operator => ticket.Operator ?? Unsaid,
        TicketGrouping.Shift => ticket.Shift ?? Unsaid,
        _ => WeekOf(ticket.Day),
    };

    private static string WeekOf(string day)
    {
        var date = DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture).ToDateTime(TimeOnly.MinValue);
        return FormattableString.Invariant($"{ISOWeek.GetYear(date)}-W{ISOWeek.GetWeekOfYear(date):00}");
    }
}
