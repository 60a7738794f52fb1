using System.Globalization;
using FeltNest.Book;
using FeltNest.Runs.Book;

namespace FeltNest.Tests.Book;

/// <summary>Entries for tests: a roll of 50 m, a die of 10 panels a strike and 300 mm of feed, an order of 1,000 balls.</summary>
internal static class BookCases
{
    public static long Write(BookStore store, params BookDraft[] drafts) =>
        store.Write(BookRoom.Hand().Origin, book => drafts.Select(book.Add).ToArray()[^1]);

    public static BookDraft Roll(string name, decimal metres = 50) =>
        BookDraft.Of(EntryKind.RollReceived, SubjectKind.Roll, name, new RollBody
        {
            Felt = "woven",
            Lot = "L1",
            WidthMm = 1500,
            LengthM = metres,
            Price = 17.8m,
            PriceUnit = "m",
            Currency = "EUR",
            Available = true,
        });

    public static BookDraft Die(string name, int strikes = 5000) => BookDraft.Of(EntryKind.DieMade, SubjectKind.Die, name, new DieBody
    {
        Ball = "T2",
        Layout = "layout.json",
        Repeats = 1,
        MostWidthMm = 10_000,
        StrikesLeft = strikes,
        LifeStrikes = 60_000,
        ReRules = 2,
        ReRulePrice = 700,
        MakeDays = 0,
    });

    public static BookDraft Order(string name, int balls = 1000, EntryKind kind = EntryKind.OrderTaken) => BookDraft.Of(
        kind, SubjectKind.Order, name, new OrderBody
        {
            Ball = "T2",
            Balls = balls,
            Due = "2026-03-09",
            OneLot = true,
            ReserveBalls = 0,
            Priority = 1,
        });

    public static BookDraft Ticket(long number, string roll = "R1", string die = "D1", string order = "K1", int strikes = 100) =>
        BookDraft.Of(EntryKind.TicketPrinted, SubjectKind.Ticket, number.ToString(CultureInfo.InvariantCulture), new TicketBody
        {
            Plan = 1,
            Order = order,
            Ball = "T2",
            Roll = roll,
            Felt = "woven",
            Lot = "L1",
            Die = die,
            Press = "P1",
            Strikes = strikes,
            Panels = 10 * strikes,
            Balls = (int)(4.75 * strikes),
            FromM = 0.3m,
            ToM = 0.3m + (0.3m * strikes) + 0.1m,
            LeadM = 0.3m,
            WidthMm = 1500,
            FeedMm = 300,
            OverMm = 100,
            GroupPanels = [10],
            GoodShare = 0.95m,
            FaultPercent = 5,
            RejectPercent = 0,
            UnpairedPercent = 0,
            PricePerMetre = 17.8m,
            Currency = "EUR",
            Due = "2026-03-09",
            Start = "2026-03-02T06:00:00",
            End = "2026-03-02T06:20:00",
        });

    /// <summary>A room with one roll, die, order and ticket.</summary>
    public static void Furnish(BookStore store) => Write(store, Roll("R1"), Die("D1"), Order("K1"), Ticket(1));

    public static T State<T>(BookStore store, SubjectKind kind, string name) =>
        (T)store.Read(book => book.State(new Subject(kind, name)))!;

    public static TicketAsk Back(long number, int? strikes = null, int? good = null) =>
        new() { Number = number, Strikes = strikes, GoodPanels = good };

    public static IReadOnlyList<string> Faults(BookStore store) => new BookCheckRun(store).Violations;
}
