using System.Globalization;
using FeltNest.Book;
using FeltNest.Files;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Book;

/// <summary>What stands in the book, as tables.</summary>
internal static class BookShow
{
    /// <summary>Words for what can be shown.</summary>
    public static IReadOnlyList<string> Words { get; } = ["rolls", "dies", "orders", "tickets", "plans", "standards", "entries"];

    private static readonly SubjectKind[] Kinds =
        [SubjectKind.Roll, SubjectKind.Die, SubjectKind.Order, SubjectKind.Ticket, SubjectKind.Plan, SubjectKind.Standard];

    /// <summary>A table.</summary>
    /// <param name="store">The book.</param>
    /// <param name="word">What is shown.</param>
    /// <param name="name">The entries of one of them instead; null for the list.</param>
    /// <param name="openOnly">Only that of which work is still to come.</param>
    /// <param name="most">So many lines at most, the last ones.</param>
    /// <param name="whole">Whether all that is known is wanted too, for JSON.</param>
    /// <exception cref="InputException">There is none of that name.</exception>
    public static BookTable Of(BookStore store, string word, string? name, bool openOnly, int most, bool whole = false)
    {
        int at = Words.ToList().IndexOf(word);
        return store.Read(book => (at < Kinds.Length, name) switch
        {
            (false, null) => Entries([.. book.LastEntries(most).Reverse()], book.LastEntry()),
            (false, _) => Entries([book.Entry(NumberOf(name!)) ?? throw None(word, name!)], 1),
            (true, null) => Listed(book, Kinds[at], openOnly, most, whole),
            (true, _) => OfOne(book, Kinds[at], name!),
        });
    }

    private static long NumberOf(string name) => long.TryParse(name, out long number) ? number : 0;

    private static InputException None(string word, string name) => new($"{word}: there is no '{OneLine.Of(name)}' in the book");

    private static BookTable OfOne(BookTables book, SubjectKind kind, string name)
    {
        IReadOnlyList<BookEntry> entries = book.OfSubject(new Subject(kind, name));
        return entries.Count > 0 ? Entries(entries, entries.Count) : throw None(EnumWord.Of(kind), name);
    }

    private static BookTable Entries(IReadOnlyList<BookEntry> entries, long all)
    {
        BookTable table = new("entry", "kind", "what", "name", "at", "by", "from", "corrects", "why") { Hidden = all - entries.Count };
        foreach (BookEntry entry in entries)
        {
            table.Add(
                Invariant($"{entry.Number}"), entry.Body, EnumWord.Of(entry.Kind).Replace('-', ' '), EnumWord.Of(entry.Subject.Kind),
                Short(entry.Subject), entry.At, entry.By, entry.Source, entry.Corrects is { } other ? Invariant($"{other}") : null,
                entry.Why);
        }

        return table;
    }

    // A list is named by its hash, of which a few letters tell enough.
    private static string Short(Subject subject) => subject.Kind == SubjectKind.List && subject.Name.Length > 14
        ? subject.Name[..14]
        : subject.Name;

    private static BookTable Listed(BookTables book, SubjectKind kind, bool openOnly, int most, bool whole)
    {
        BookTable table = kind switch
        {
            SubjectKind.Roll => new("roll", "felt", "lot", "widthMm", "receivedM", "cutM", "scrappedM", "leftM"),
            SubjectKind.Die => new("die", "ball", "strikesLeft", "struck", "reRules", "press", "state"),
            SubjectKind.Order => new("order", "ball", "balls", "done", "left", "due", "state"),
            SubjectKind.Ticket =>
                new("ticket", "order", "roll", "lot", "die", "press", "strikes", "made", "balls", "due", "start", "state"),
            SubjectKind.Standard => new("standard", "version", "from", "widthMm", "faults %", "rejects %", "unpaired %"),
            _ => new("plan", "start", "orders", "tickets", "balls", "short", "at", "by"),
        };
        IReadOnlyList<(string Name, string? State, string?[] Cells)> lines = book.Kept(
            kind, openOnly, most, (name, text) => (name, whole ? text : null, Cells(BookFold.State(kind, text))));
        foreach ((string name, string? state, string?[] cells) in lines)
        {
            table.Add(name, state, cells);
        }

        table.Hidden = book.Count(kind, openOnly) - lines.Count;
        return table;
    }

    private static string?[] Cells(object state) => state switch
    {
        RollState r =>
        [
            r.Roll.Felt, r.Roll.Lot, N(r.Roll.WidthMm), N(r.ReceivedM), N(r.CutM), N(r.ScrappedM), N(r.LeftM),
        ],
        DieState d => [d.Die.Ball, N(d.Left), N(d.Struck), N(d.Die.ReRules), d.Press, d.Die.MakePrice is null ? "there" : "to be made"],
        OrderState o => [o.Order.Ball, N(o.Order.Balls), N(o.Done), N(o.Left), o.Order.Due, StateOf(o)],
        TicketState t =>
        [
            t.Ticket.Order, t.Ticket.Roll, t.Ticket.Lot, t.Ticket.Die, t.Ticket.Press, N(t.Ticket.Strikes), N(t.Strikes), N(t.Balls),
            t.Ticket.Due, t.Ticket.Start, t.Withdrawn ? "withdrawn" : EnumWord.Of(t.Phase),
        ],
        PlanState p => [p.Plan.Start, N(p.Plan.Orders), N(p.Plan.Tickets), N(p.Plan.Balls), N(p.Plan.ShortBalls), p.At, p.By],
        StandardState s => Cells(s.Versions[^1]),
        _ => [],
    };

    private static string?[] Cells(StandardBody s) =>
        [N(s.Version), s.From, N(s.WidthMm), N(s.FaultPercent), N(s.RejectPercent), N(s.UnpairedPercent)];

    private static string StateOf(OrderState order) => (order.Closed, order.Left) switch
    {
        (true, _) => "closed",
        (_, <= 0) => "done",
        _ => "open",
    };

    private static string N(long value) => value.ToString(CultureInfo.InvariantCulture);

    private static string N(decimal value) => Invariant($"{value:0.###}");
}
