using System.Globalization;
using FeltNest.Book;
using FeltNest.Cost.Tickets;

namespace FeltNest.Runs.Book;

/// <summary>The tickets of a period as they stand in the book, with the standards of their balls.</summary>
internal sealed class PeriodTickets
{
    private readonly BookTables book;
    private readonly Dictionary<string, RollState?> rolls = [];
    private readonly Dictionary<string, RollBody?> received = [];

    private PeriodTickets(BookTables book) => this.book = book;

    /// <summary>Reads them.</summary>
    /// <param name="store">The book.</param>
    /// <param name="since">First day, as 2026-03-02.</param>
    /// <param name="until">Last day, or null.</param>
    /// <param name="by">What they are put together by.</param>
    public static PeriodQuestion Of(BookStore store, string since, string? until, TicketGrouping by) =>
        store.Read(book => new PeriodQuestion
        {
            Book = Path.GetFileNameWithoutExtension(store.Name),
            Since = since,
            Until = until,
            By = by,
            Tickets = [.. new PeriodTickets(book).Read(since, until)],
            Standards =
        [
            .. book.States(SubjectKind.Standard, openOnly: false)
                .SelectMany(s => ((StandardState)s.State).Versions.Select(body => BookStandards.Of(s.Name, body))),
        ],
        });

    private IEnumerable<CutTicket> Read(string since, string? until)
    {
        Dictionary<string, int> made = [];
        foreach (BookEntry entry in StandingEntries.Of(book.OfKinds(EntryKind.TicketFilledIn, EntryKind.Undone)))
        {
            FillBody fill = BookJson.Read<FillBody>(entry.Body);
            string name = entry.Subject.Name;
            int before = made.GetValueOrDefault(name);
            made[name] = before + (fill.Strikes ?? 0);
            string day = fill.Day ?? entry.At[..10];
            bool asked = string.CompareOrdinal(day, since) >= 0 && (until is null || string.CompareOrdinal(day, until) <= 0);
            if (asked && book.State(entry.Subject) is TicketState ticket)
            {
                yield return Ticket(entry, ticket.Ticket, fill, day, first: before == 0);
            }
        }
    }

    // Long because a ticket has many figures, each from where the book keeps it.
    private CutTicket Ticket(BookEntry entry, TicketBody ticket, FillBody fill, string day, bool first)
    {
        RollState? roll = Known(rolls, fill.Roll, name => (RollState?)book.State(new Subject(SubjectKind.Roll, name)));
        RollBody? invoiced = Known(received, fill.Roll, Received);
        decimal share = invoiced is not null && roll is { ReceivedM: > 0 } ? invoiced.LengthM / roll.ReceivedM : 1;
        return new CutTicket
        {
            Number = long.Parse(entry.Subject.Name, CultureInfo.InvariantCulture),
            Entry = entry.Number,
            Day = day,
            Ball = ticket.Ball,
            Roll = fill.Roll,
            Lot = roll?.Roll.Lot ?? ticket.Lot,
            Supplier = roll?.Roll.Supplier ?? ticket.Supplier,
            Press = fill.Press,
            Operator = fill.Operator,
            Shift = fill.Shift,
            StrikePanels = ticket.GroupPanels.Sum(),
            FeedMm = ticket.FeedMm,
            OverM = first ? ticket.OverMm / 1000 : 0,
            LeadM = fill.LeadM,
            CutM = fill.CutM,
            HasPlaces = fill.FromM is not null,
            PlannedWidthMm = ticket.WidthMm,
            LeastWidthMm = ticket.LeastWidthMm,
            LayoutRows = ticket.Rows,
            InvoicedWidthMm = invoiced?.WidthMm ?? ticket.WidthMm,
            InvoicedShare = share,
            RollLengthM = roll?.ReceivedM ?? ticket.ToM,
            PricePerMetre = ticket.PricePerMetre,
            Currency = ticket.Currency,
            FaultPercent = ticket.FaultPercent,
            RejectPercent = ticket.RejectPercent,
            UnpairedPercent = ticket.UnpairedPercent,
            Strikes = fill.Strikes,
            GoodPanels = fill.GoodPanels,
            Rejects = fill.Rejects,
            UnpairedPanels = fill.UnpairedPanels,
            FaultPanels = fill.FaultPanels,
            FaultsSeen = fill.FaultsSeen,
            WidthMm = fill.WidthMm,
            Rows = fill.Rows,
        };
    }

    // As invoiced: before anybody measured it.
    private RollBody? Received(string roll) => StandingEntries.Of(book.OfSubject(new Subject(SubjectKind.Roll, roll)))
        .Where(e => e.Kind == EntryKind.RollReceived)
        .Select(e => BookJson.Read<RollBody>(e.Body))
        .FirstOrDefault();

    private static T? Known<T>(Dictionary<string, T?> known, string name, Func<string, T?> find)
        where T : class
    {
        if (!known.TryGetValue(name, out T? value))
        {
            known.Add(name, value = find(name));
        }

        return value;
    }
}
