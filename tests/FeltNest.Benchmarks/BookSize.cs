using System.Diagnostics;
using System.Globalization;
using FeltNest.Book;
using FeltNest.Files.Csv;
using FeltNest.Runs.Book;

namespace FeltNest.Benchmarks;

/// <summary>A book of many tickets: how long questions, a plan's inputs and one more entry take.</summary>
internal static class BookSize
{
    private const int Rolls = 2000;
    private const int Dies = 50;
    private const int Orders = 5000;

    /// <summary>Fills a new book at a place, and prints the times.</summary>
    public static void Print(string place, int tickets)
    {
        BookOrigin origin = new() { By = "bench", At = "2026-03-02T06:00:00" };
        using BookStore store = Books.Start(place);
        Timed("filled", () => Fill(store, origin, tickets));
        BookDesk desk = new(store, new BookHand { By = "bench", At = "2026-03-02T06:00:00" });
        Timed("rolls", () => BookShow.Of(store, "rolls", null, false, 200));
        Timed("orders, open", () => BookShow.Of(store, "orders", null, true, 200));
        Timed("tickets, open, the last 200", () => BookShow.Of(store, "tickets", null, true, 200));
        Timed("tickets, all of them", () => BookShow.Of(store, "tickets", null, false, int.MaxValue).Text());
        Timed("entries about one roll", () => BookShow.Of(store, "rolls", "R7", false, 200));
        Timed("entries about one die", () => BookShow.Of(store, "dies", "D7", false, 200));
        Timed("the last 200 entries", () => BookShow.Of(store, "entries", null, false, 200));
        Timed("a plan's inputs", () => BookLists.Of(store).Texts(new ListReading()));
        Timed(
            "a ticket comes back",
            () => TicketEntries.FilledIn(desk, new TicketAsk { Number = tickets - 1, Strikes = 10, MeantSo = true, More = true }));
        long last = store.Read(book => book.LastEntry());
        Timed("it is corrected", () => Corrections.Correct(desk, last, [new("strikes", "9")], "counted again", true));
        Timed("it is taken back", () => Corrections.Undo(desk, null, true));
        Timed("check", () => new BookCheckRun(store).Violations.Count);
        string copy = Path.Combine(Path.GetTempPath(), $"book-copy-{Environment.ProcessId}.db");
        Timed("copy", () =>
        {
            store.CopyTo(copy);
            return 0;
        });
        File.Delete(copy);
    }

    private static void Timed<T>(string what, Func<T> work)
    {
        Stopwatch watch = Stopwatch.StartNew();
        TimeSpan before = Environment.CpuUsage.TotalTime;
        work();
        double processor = (Environment.CpuUsage.TotalTime - before).TotalSeconds;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{what,-30}{watch.Elapsed.TotalSeconds,10:0.000} s{processor,10:0.000} s of processor"));
    }

    private static long Fill(BookStore store, BookOrigin origin, int tickets)
    {
        store.Write(origin, book =>
        {
            for (int i = 0; i < Rolls; i++)
            {
                book.Add(BookDraft.Of(EntryKind.RollReceived, SubjectKind.Roll, $"R{i}", Roll()));
            }

            for (int i = 0; i < Dies; i++)
            {
                book.Add(BookDraft.Of(EntryKind.DieMade, SubjectKind.Die, $"D{i}", Die()));
            }

            for (int i = 0; i < Orders; i++)
            {
                book.Add(BookDraft.Of(EntryKind.OrderTaken, SubjectKind.Order, $"K{i}", Order()));
            }

            return 0;
        });
        return store.Write(origin, book =>
        {
            for (int i = 1; i <= tickets; i++)
            {
                TicketBody ticket = Ticket(i);
                string number = i.ToString(CultureInfo.InvariantCulture);
                book.Add(BookDraft.Of(EntryKind.TicketPrinted, SubjectKind.Ticket, number, ticket));
                if (i <= tickets * 0.99)
                {
                    book.Add(BookDraft.Of(EntryKind.TicketFilledIn, SubjectKind.Ticket, number, Filled(ticket)));
                }
            }

            return book.Last;
        });
    }

    private static RollBody Roll() => new()
    {
        Felt = "woven",
        Lot = "L1",
        WidthMm = 1500,
        LengthM = 5000,
        Price = 17.8m,
        PriceUnit = "m",
        Currency = "EUR",
        Available = true,
    };

    private static DieBody Die() => new()
    {
        Ball = "T2",
        Layout = "layout.json",
        Repeats = 1,
        MostWidthMm = 10_000,
        StrikesLeft = 900_000,
        LifeStrikes = 60_000,
        ReRules = 2,
        ReRulePrice = 700,
        MakeDays = 0,
    };

    private static OrderBody Order() => new()
    {
        Ball = "T2",
        Balls = 9000,
        Due = "2026-03-09",
        OneLot = true,
        ReserveBalls = 0,
        Priority = 1,
    };

    private static TicketBody Ticket(int number) => new()
    {
        Plan = 1 + (number / 100),
        Order = $"K{number % Orders}",
        Ball = "T2",
        Roll = $"R{number % Rolls}",
        Felt = "woven",
        Lot = "L1",
        Die = $"D{number % Dies}",
        Press = "P1",
        Strikes = 100,
        Panels = 1000,
        Balls = 475,
        FromM = 0.3m,
        ToM = 30.4m,
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
    };

    private static FillBody Filled(TicketBody ticket) => TicketFill.Of(
        ticket, new FillBody
        {
            Order = ticket.Order,
            Roll = ticket.Roll,
            Die = ticket.Die,
            Press = ticket.Press,
            Strikes = 100,
            GoodPanels = 940,
            CutM = 0,
            LeadM = 0,
            Balls = 0,
            Over = false,
        }, 0, first: true);
}
