using CsCheck;
using FeltNest.Book;
using FeltNest.Runs.Book;
using Xunit;
using static FeltNest.Tests.Book.BookCases;

namespace FeltNest.Tests.Book;

/// <summary>Present figures follow from entries: two cases by hand, and long random histories.</summary>
public sealed class BookLedgerTests
{
    // 100 strikes: 100 x 0.3 + 0.1 m cut and 0.3 m lost before; 938 panels with a partner: 469 balls. Corrected to 99 strikes:
    // 29.8 m, 465 balls.
    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public void A_ticket_takes_felt_strikes_and_balls_and_its_correction_takes_their_place(string kind)
    {
        using BookRoom room = new(kind);
        using BookStore store = room.Started();
        using BookDesk desk = BookRoom.Desk(store);
        Furnish(store);

        BookSaid said = TicketEntries.FilledIn(desk, Back(1, 100, 940) with { UnpairedPanels = 2 });

        Assert.Equal("entry 5: ticket 1 cut; roll R1: 19.6 m left; order K1: 469 of 1000 balls", said.Line);
        RequireRoll(store, received: 50, cut: 30.1m, scrapped: 0.3m, left: 19.6m);
        Assert.Equal((4900, 100), (Die(store).Left, Die(store).Struck));
        Assert.Equal("P1", Die(store).Press);
        Assert.Equal((469, 531), (Order(store).Done, Order(store).Left));

        Corrections.Correct(desk, 5, [new("strikes", "99"), new("goodPanels", "930"), new("unpairedPanels", "")], "typed wrong", false);

        RequireRoll(store, received: 50, cut: 29.8m, scrapped: 0.3m, left: 19.9m);
        Assert.Equal((4901, 465, 535), (Die(store).Left, Order(store).Done, Order(store).Left));
        Assert.Equal(TicketPhase.Begun, State<TicketState>(store, SubjectKind.Ticket, "1").Phase);

        Corrections.Undo(desk, "right after all", false);

        RequireRoll(store, received: 50, cut: 30.1m, scrapped: 0.3m, left: 19.6m);

        RollEntries.Scrapped(desk, "R1", null, "wet");

        RequireRoll(store, received: 50, cut: 30.1m, scrapped: 19.9m, left: 0);
        Assert.Empty(Faults(store));
    }

    // 40 m, measured as 39.5, 4.5 cut as a sample, 35.2 found at the rack: 39.7 received in the end. 100 strikes, 120 made: 20 beyond the
    // rule, then 60,000 new ones.
    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public void What_is_measured_scrapped_struck_and_ruled_without_tickets_adds_up(string kind)
    {
        using BookRoom room = new(kind);
        using BookStore store = room.Started();
        using BookDesk desk = BookRoom.Desk(store);
        Write(store, Roll("R1", 40), BookCases.Die("D1", 100), BookCases.Order("K1"));

        RollEntries.Measured(desk, "R1", new RollMeasure { LeftM = 39.5m });
        RollEntries.Cut(desk, "R1", new CutBody { LengthM = 4.5m, Order = "K1", Balls = 300, Die = "D1", Strikes = 120 }, "sample");
        BookSaid back = RollEntries.Measured(desk, "R1", new RollMeasure { LeftM = 35.2m, PutBack = true });
        DieEntries.Ruled(desk, "D1", null, null);
        Write(store, BookCases.Order("K1", 800, EntryKind.OrderChanged));

        Assert.Equal("roll R1 back in stock: 35.2 m left, +0.2 m against the book", back.Line);
        RequireRoll(store, received: 39.7m, cut: 4.5m, scrapped: 0, left: 35.2m);
        DieState die = Die(store);
        Assert.Equal((60_100, 120, -20, 60_000, 1), (die.Given, die.Struck, die.GivenUp, die.Left, die.Die.ReRules));
        Assert.Equal((300, 500), (Order(store).Done, Order(store).Left));
        Assert.Equal(
            "order K1 closed: 300 of 800 balls done, 500 balls short", OrderEntries.Closed(desk, "K1", "no more felt").Line);
        Assert.Empty(Faults(store));
    }

    [Fact]
    public void A_ticket_that_is_moved_from_roll_to_roll_counts_on_the_last_one_alone()
    {
        using BookRoom room = new(BookRoom.Sqlite);
        using BookStore store = room.Started();
        using BookDesk desk = BookRoom.Desk(store);
        Furnish(store);
        Write(store, Roll("R2"), Roll("R3"));
        TicketEntries.FilledIn(desk, Back(1, 100, 940));

        Corrections.Correct(desk, 7, [new("roll", "R2")], "another roll", false);
        Corrections.Correct(desk, 7, [new("roll", "R3")], "no, this one", false);

        Assert.Equal([50, 50, 19.6m], new[] { "R1", "R2", "R3" }.Select(r => State<RollState>(store, SubjectKind.Roll, r).LeftM));
        Assert.Empty(Faults(store));
    }

    [Fact]
    public void Any_history_adds_up_and_its_kept_figures_follow_from_its_entries() => Gen.Int.Sample(
        seed => RequireSound(BookRoom.Sqlite, seed, 1000), iter: Runs.Count(1), threads: 1);

    [Fact, Trait("tier", "long")]
    public void Any_history_adds_up_in_a_database_too() => Gen.Int.Sample(
        seed => RequireSound(BookRoom.Postgres, seed, 1000), iter: Runs.Count(4), threads: 1);

    [Fact, Trait("tier", "long")]
    public void Many_histories_add_up() => Gen.Int.Sample(
        seed => RequireSound(BookRoom.Sqlite, seed, 1000), iter: Runs.Count(20), threads: 1);

    [Fact]
    public void A_figure_that_does_not_follow_is_found()
    {
        using BookRoom room = new(BookRoom.Sqlite);
        using BookStore store = room.Started();
        using BookDesk desk = BookRoom.Desk(store);
        Furnish(store);
        TicketEntries.FilledIn(desk, Back(1, 100, 940));
        store.Write(BookRoom.Hand().Origin, book =>
        {
            Subject roll = new(SubjectKind.Roll, "R1");
            book.Tables.Keep(roll, 1, (RollState)book.Tables.State(roll)! with { LeftM = 19.7m });
            return 0;
        });

        Assert.Equal(
            [
                "roll R1: the figures kept are not those that follow from the entries",
                "roll R1: left, um (received - cut - scrapped): 19700000 is kept, the entries give 19600000",
            ],
            Faults(store));
    }

    private static void RequireSound(string kind, int seed, int entries)
    {
        using BookRoom room = new(kind);
        using BookStore store = room.Started();
        RandomHistory history = new(store, seed);
        while (history.Entries < entries)
        {
            history.Go();
        }

        Assert.Empty(Faults(store));
        Assert.True(history.Corrected > 20 && history.Undone > 20, $"{history.Corrected} corrected, {history.Undone} undone");
        IReadOnlyList<(string Name, object State)> rolls = store.Read(book => book.States(SubjectKind.Roll, openOnly: false));
        Assert.All(rolls.Select(r => (RollState)r.State), r => Assert.Equal(r.ReceivedM, r.CutM + r.LeftM + r.ScrappedM));
    }

    private static void RequireRoll(BookStore store, decimal received, decimal cut, decimal scrapped, decimal left)
    {
        RollState roll = State<RollState>(store, SubjectKind.Roll, "R1");
        Assert.Equal((received, cut, scrapped, left), (roll.ReceivedM, roll.CutM, roll.ScrappedM, roll.LeftM));
    }

    private static DieState Die(BookStore store) => State<DieState>(store, SubjectKind.Die, "D1");

    private static OrderState Order(BookStore store) => State<OrderState>(store, SubjectKind.Order, "K1");
}
