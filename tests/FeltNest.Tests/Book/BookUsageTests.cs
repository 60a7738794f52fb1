using System.Text.Json.Nodes;
using FeltNest.Book;
using FeltNest.Cost.Tickets;
using FeltNest.Runs.Book;
using FeltNest.Tests.Cli;
using Xunit;
using static FeltNest.Tests.Book.BookCases;

namespace FeltNest.Tests.Book;

/// <summary>Usage over time out of the book: tickets, corrections, standards that never change old days.</summary>
public sealed class BookUsageTests
{
    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public void Tickets_of_the_days_asked_for_come_with_their_last_correction(string kind)
    {
        using BookRoom room = new(kind);
        using BookStore store = Furnished(room);
        using BookDesk desk = BookRoom.Desk(store);
        TicketEntries.FilledIn(desk, Full(1, 100, "2026-03-02"));
        TicketEntries.FilledIn(desk, Full(2, 60, "2026-03-09"));
        TicketEntries.FilledIn(desk, Full(2, 40, "2026-03-10") with { More = true });
        Corrections.Correct(desk, 7, [new("goodPanels", "940"), new("faultsSeen", "4")], "miscounted", false);

        PeriodQuestion all = PeriodTickets.Of(store, "2026-03-01", null, TicketGrouping.Week);
        PeriodQuestion first = PeriodTickets.Of(store, "2026-03-02", "2026-03-08", TicketGrouping.Week);

        Assert.Equal(3, all.Tickets.Count);
        CutTicket ticket = Assert.Single(first.Tickets);
        Assert.Equal((1, 940, 4, "mill-A"), (ticket.Number, ticket.GoodPanels, ticket.FaultsSeen, ticket.Supplier));

        // What a run takes beyond its feeds is taken once: 0.1 m.
        Assert.Equal([0.1m, 0.1m, 0m], all.Tickets.Select(t => t.OverM));
        Assert.Equal(["2026-W10", "2026-W11"], PeriodStudy.Run(all).Groups.Select(g => g.Name));
        TicketEntries.FilledIn(desk, Full(3, 10, "2026-03-11"));
        Corrections.Undo(desk, "wrong ticket", false);
        Assert.Equal(3, PeriodTickets.Of(store, "2026-03-01", null, TicketGrouping.Roll).Tickets.Count);
    }

    // Received with 500 m, measured as 480 m: for each metre used 500 / 480 are paid.
    [Fact]
    public void Felt_that_a_tape_misses_is_invoiced_all_the_same()
    {
        using BookRoom room = new(BookRoom.Sqlite);
        using BookStore store = Furnished(room);
        using BookDesk desk = BookRoom.Desk(store);
        RollEntries.Measured(desk, "R1", new RollMeasure { LeftM = 480 });
        TicketEntries.FilledIn(desk, Full(1, 100, "2026-03-02"));

        CutTicket ticket = Assert.Single(PeriodTickets.Of(store, "2026-03-01", null, TicketGrouping.Roll).Tickets);

        Assert.Equal((500m / 480, 480m), (ticket.InvoicedShare, ticket.RollLengthM));
    }

    [Fact]
    public void A_new_version_of_a_standard_changes_no_day_before_it()
    {
        using BookRoom room = new(BookRoom.Sqlite);
        using BookStore store = Furnished(room);
        using BookDesk desk = BookRoom.Desk(store);
        Write(store, Standard(1, "2026-03-01", 2));
        TicketEntries.FilledIn(desk, Full(1, 100, "2026-03-02"));
        TicketEntries.FilledIn(desk, Full(2, 100, "2026-03-09"));
        decimal before = Old(store);
        Write(store, Standard(2, "2026-03-05", 30));

        Assert.Equal(before, Old(store));
        Assert.Equal([1, 2], PeriodStudy.Run(PeriodTickets.Of(store, "2026-03-01", null, TicketGrouping.Cause)).Whole.Tickets
            .Select(t => t.StandardVersion));
    }

    [Fact]
    public void A_standard_may_not_reach_back()
    {
        using BookRoom room = new(BookRoom.Sqlite);
        using BookStore store = Furnished(room);
        using BookDesk desk = BookRoom.Desk(store);
        StandardAsk asked = new()
        {
            Ball = "T2",
            LayoutFile = Layout(room),
            CostsFile = FeltNest.Tests.Files.RepositoryFile.PathOf("shapes", "demo", "costs.json"),
            From = "2026-03-01",
        };

        InputException past = Assert.Throws<InputException>(() => StandardEntries.Set(desk, asked));
        BookSaid said = StandardEntries.Set(desk, asked with { From = "2026-03-02" });
        InputException same = Assert.Throws<InputException>(() => StandardEntries.Set(desk, asked with { From = "2026-03-02" }));

        Assert.Contains("no version reaches back", past.Message, StringComparison.Ordinal);
        Assert.Contains("version 1, from 2026-03-02 on", said.Line, StringComparison.Ordinal);
        Assert.Contains("a new one begins later", same.Message, StringComparison.Ordinal);
        Assert.Empty(Faults(store));
    }

    [Fact]
    public async Task A_period_is_written_and_passes_its_check()
    {
        using BookRoom room = new(BookRoom.Sqlite);
        using (BookStore store = Furnished(room))
        {
            using BookDesk desk = BookRoom.Desk(store);
            Write(store, Standard(1, "2026-03-01", 2));
            TicketEntries.FilledIn(desk, Full(1, 100, "2026-03-02"));
            TicketEntries.FilledIn(desk, Full(2, 100, "2026-03-03") with
            {
                GoodPanels = 950,
                Rejects = new Dictionary<string, int> { ["edge"] = 30 },
            });
            TicketEntries.FilledIn(desk, Back(3, 50));
        }

        CommandRun run = await CommandRun.Of(
            "usage", "--book", room.Place, "--since", "2026-03-01", "--by", "press", "--out", room.Path("out"), "--json");

        Assert.True(run.Code == 0, run.Err);
        JsonNode usage = JsonNode.Parse(run.Out)!;
        Assert.Equal("P1", (string)usage["groups"]![0]!["name"]!);
        Assert.Equal(3, (int)usage["whole"]!["tickets"]!);
        Assert.Equal(
            ["charts.png", "charts.svg", "pareto.png", "pareto.svg", "usage.csv", "usage.html", "usage.json"],
            Directory.GetFiles(room.Path("out")).Select(Path.GetFileName).Order());
        CommandRun check = await CommandRun.Of("check", room.Path("out/usage.json"));
        Assert.True(check.Code == 0, check.Out + check.Err);
    }

    [Theory]
    [InlineData("--since is missing", "--book", "room.db")]
    [InlineData("give the book too", "--since", "2026-03-01")]
    [InlineData("the book says it", "layout.json", "--book", "room.db", "--since", "2026-03-01")]
    [InlineData("a day as 2026-03-02", "--book", "room.db", "--since", "1.3.2026")]
    [InlineData("cause, roll, lot, supplier, press, operator, shift, week", "--book", "room.db", "--since", "2026-03-01", "--by", "moon")]
    public async Task What_is_asked_for_the_wrong_way_is_refused(string problem, params string[] options)
    {
        CommandRun run = await CommandRun.Of(["usage", .. options]);

        Assert.Equal(2, run.Code);
        Assert.Contains(problem, run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_period_without_tickets_has_no_answer()
    {
        using BookRoom room = new(BookRoom.Sqlite);
        Furnished(room).Dispose();

        CommandRun run = await CommandRun.Of("usage", "--book", room.Place, "--since", "2026-03-01", "--out", room.Path("out"));

        Assert.Equal(3, run.Code);
        Assert.False(Directory.Exists(room.Path("out")));
    }

    internal static TicketAsk Full(long number, int strikes, string day) => Back(number, strikes, (10 * strikes) - 30) with
    {
        FaultPanels = 20,
        Rejects = new Dictionary<string, int> { ["edge"] = 10 },
        UnpairedPanels = 0,
        WidthMm = 1500,
        Day = day,
        Operator = "op-1",
        Shift = "early",
    };

    private static decimal Old(BookStore store) =>
        PeriodStudy.Run(PeriodTickets.Of(store, "2026-03-01", "2026-03-04", TicketGrouping.Cause)).Whole.StandardM2;

    private static BookDraft Standard(int version, string from, decimal faults) => BookDraft.Of(
        EntryKind.StandardSet, SubjectKind.Standard, "T2",
        BookStandards.Kept(
            FeltNest.Tests.Cost.Tickets.TicketCases.Standard with { Version = version, From = from, FaultPercent = faults }));

    private static BookStore Furnished(BookRoom room)
    {
        BookStore store = room.Started();
        BookDraft roll = Roll("R1", 500);
        Write(
            store, roll with { Body = BookJson.Write(BookJson.Read<RollBody>(roll.Body) with { Supplier = "mill-A" }) },
            BookCases.Die("D1"),
            Order("K1", 5000), Ticket(1), Ticket(2), Ticket(3));
        return store;
    }

    private static string Layout(BookRoom room)
    {
        string path = room.Path("layout.json");
        File.WriteAllBytes(path, FeltNest.Files.Layouts.LayoutWriter.Write(
            FeltNest.Tests.Rolls.RollCases.Squares, FeltNest.Yield.YieldAccount.Of(FeltNest.Tests.Rolls.RollCases.Squares)));
        return path;
    }
}
