using FeltNest.Book;
using FeltNest.Runs.Book;
using Xunit;
using static FeltNest.Tests.Book.BookCases;

namespace FeltNest.Tests.Book;

/// <summary>What the book refuses, asks about and notes beside its lists: each with the figure that just passes.</summary>
public sealed class BookRefusalTests : IDisposable
{
    private readonly BookRoom room = new(BookRoom.Sqlite);
    private readonly BookStore store;
    private readonly BookDesk desk;

    public BookRefusalTests()
    {
        store = room.Started();
        desk = BookRoom.Desk(store);
        Furnish(store);
    }

    public void Dispose()
    {
        desk.Dispose();
        room.Dispose();
    }

    [Theory]
    [InlineData(-1, null, null, "a count is outside 0 to")]
    [InlineData(1_000_000_001, null, null, "a count is outside 0 to")]
    [InlineData(10, 5.0, 5.0, "felt from 5 to 5 m is none")]
    [InlineData(10, -1.0, 5.0, "felt from -1 to 5 m is none")]
    [InlineData(10, 5.0, null, "one end of the piece is missing")]
    [InlineData(10, null, 5.0, "one end of the piece is missing")]
    public void A_ticket_that_nobody_can_mean_is_refused_even_where_it_is_insisted_on(int strikes, double? from, double? to, string problem)
    {
        TicketAsk asked = Back(1, strikes) with { FromM = (decimal?)from, ToM = (decimal?)to, MeantSo = true };

        Assert.Contains(problem, Refused(() => TicketEntries.FilledIn(desk, asked)), StringComparison.Ordinal);
        TicketEntries.FilledIn(desk, Back(1, 10) with { FromM = 0, ToM = 3.1m });
        long entry = store.Read(book => book.LastEntry());
        Assert.Contains(
            "it runs from a place on", Refused(() => Corrections.Correct(desk, entry, [new("toM", "0")], "typed wrong", true)),
            StringComparison.Ordinal);
    }

    // 5 strikes and a tenth more than planned are let pass: 115 of 100, in one go or two.
    [Fact]
    public void Strikes_made_before_count_where_too_many_are_asked_about()
    {
        TicketEntries.FilledIn(desk, Back(1, 50));

        Assert.Contains(
            "66 strikes where 50 are planned", Refused(() => TicketEntries.FilledIn(desk, Back(1, 66) with { More = true })),
            StringComparison.Ordinal);
        TicketEntries.FilledIn(desk, Back(1, 65) with { More = true });
        Assert.Contains(
            "66 strikes where 50 are planned", Refused(() => Corrections.Correct(desk, 6, [new("strikes", "66")], "typed wrong", false)),
            StringComparison.Ordinal);
    }

    // 10 strikes take 10 x 0.3 + 0.1 = 3.1 m: a metre more passes.
    [Fact]
    public void A_piece_a_metre_longer_than_its_strikes_passes_and_more_is_asked_about()
    {
        Assert.Contains(
            "4.101 m from 0 to 4.101 m for 10 strikes, which take 3.1 m",
            Refused(() => TicketEntries.FilledIn(desk, Back(1, 10) with { FromM = 0, ToM = 4.101m })), StringComparison.Ordinal);
        TicketEntries.FilledIn(desk, Back(1, 10) with { FromM = 0, ToM = 4.1m });
    }

    // 0.3 m before the piece are lost once, though the ticket comes back twice.
    [Fact]
    public void What_lies_before_a_piece_is_lost_once()
    {
        TicketEntries.FilledIn(desk, Back(1, 50));
        TicketEntries.FilledIn(desk, Back(1, 50) with { More = true });

        Assert.Equal(0.3m, State<RollState>(store, SubjectKind.Roll, "R1").ScrappedM);
    }

    [Fact]
    public void A_ticket_that_is_over_is_cut_though_strikes_are_missing()
    {
        TicketEntries.FilledIn(desk, Back(1, 40) with { Over = true });

        Assert.Equal(TicketPhase.Cut, State<TicketState>(store, SubjectKind.Ticket, "1").Phase);
    }

    [Fact]
    public void A_die_that_is_still_to_be_made_cuts_no_ticket_and_is_ready_once()
    {
        BookDraft die = BookCases.Die("D2", 0);
        Write(store, die with { Body = BookJson.Write(BookJson.Read<DieBody>(die.Body) with { MakePrice = 900 }) }, Ticket(2, die: "D2"));

        Assert.Contains("still to be made", Refused(() => TicketEntries.FilledIn(desk, Back(2, 10))), StringComparison.Ordinal);
        DieEntries.Ready(desk, "D2", null);
        Assert.Contains("is there already", Refused(() => DieEntries.Ready(desk, "D2", null)), StringComparison.Ordinal);
        TicketEntries.FilledIn(desk, Back(2, 10));
    }

    [Fact]
    public void A_die_struck_beyond_its_rules_is_noted_and_its_list_says_none_left()
    {
        Write(store, BookCases.Die("D3", 5), Ticket(3, die: "D3"));

        BookSaid said = TicketEntries.FilledIn(desk, Back(3, 10));

        Assert.Contains("die D3 has struck 5 times more than its rules had left: say whether it was ruled again", said.Notes);
        string list = System.Text.Encoding.UTF8.GetString(BookLists.Of(store).Dies(room.Path("lists")));
        Assert.Contains("D3,T2,../layout.json,0,", list, StringComparison.Ordinal);
    }

    [Fact]
    public void A_die_without_a_life_is_ruled_again_only_with_its_strikes()
    {
        BookDraft die = BookCases.Die("D4");
        Write(store, die with { Body = BookJson.Write(BookJson.Read<DieBody>(die.Body) with { LifeStrikes = 0 }) });

        Assert.Contains("has no life of a new rule", Refused(() => DieEntries.Ruled(desk, "D4", null, null)), StringComparison.Ordinal);
        DieEntries.Ruled(desk, "D4", 1, null);
    }

    // A tenth more than was received, and a tenth wider than the roll, pass.
    [Theory]
    [InlineData(55.001, null, "55.001 m are said to be left of roll R1, which was received with 50 m")]
    [InlineData(null, 1650.1, "a width of 1650.1 mm is said of roll R1, which is 1500 mm wide")]
    [InlineData(null, 1349.9, "a width of 1349.9 mm is said of roll R1, which is 1500 mm wide")]
    public void A_tape_that_reads_far_from_the_roll_is_asked_about(double? left, double? width, string problem)
    {
        RollMeasure asked = new() { LeftM = (decimal?)left, WidthMm = (decimal?)width };

        Assert.Contains(problem, Refused(() => RollEntries.Measured(desk, "R1", asked)), StringComparison.Ordinal);
        RollEntries.Measured(desk, "R1", asked with { MeantSo = true });
    }

    [Fact]
    public void The_widest_and_longest_that_pass_are_not_asked_about() =>
        RollEntries.Measured(desk, "R1", new RollMeasure { LeftM = 55, WidthMm = 1650 });

    [Fact]
    public void An_order_is_closed_once()
    {
        OrderEntries.Closed(desk, "K1", null);

        Assert.Contains("is closed already", Refused(() => OrderEntries.Closed(desk, "K1", null)), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_taken_back_is_not_corrected_and_what_follows_from_others_neither()
    {
        TicketEntries.FilledIn(desk, Back(1, 10));
        Corrections.Undo(desk, null, false);

        Assert.Contains(
            "entry 5 was taken back", Refused(() => Corrections.Correct(desk, 5, [new("strikes", "9")], "why", false)),
            StringComparison.Ordinal);
        Assert.Contains(
            "(ticket printed) is not corrected: take it back",
            Refused(() => Corrections.Correct(desk, 4, [new("strikes", "9")], "why", false)), StringComparison.Ordinal);
        Assert.Contains(
            "there is no entry 99", Refused(() => Corrections.Correct(desk, 99, [new("strikes", "9")], "why", false)),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_ticket_is_corrected_to_a_roll_of_the_book_alone()
    {
        TicketEntries.FilledIn(desk, Back(1, 10));

        Assert.Contains(
            "roll 'R9' is not in the book", Refused(() => Corrections.Correct(desk, 5, [new("roll", "R9")], "another", true)),
            StringComparison.Ordinal);
        Assert.Equal(5, store.Read(book => book.LastEntry()));
    }

    // 50 m of which 49.95 are scrapped: less than any list takes.
    [Fact]
    public void A_roll_that_is_used_up_is_on_no_list_and_one_that_is_away_stays_away_until_it_is_put_back()
    {
        BookDraft away = Roll("R5");
        Write(store, away with { Body = BookJson.Write(BookJson.Read<RollBody>(away.Body) with { Available = false }) }, Roll("R6"));
        RollEntries.Scrapped(desk, "R6", 49.95m, null);

        Assert.Contains("R5,woven,L1,1500,50,17.8,m,EUR,no", Stock(), StringComparison.Ordinal);
        Assert.DoesNotContain("R6,", Stock(), StringComparison.Ordinal);

        RollEntries.Measured(desk, "R5", new RollMeasure { LeftM = 50, PutBack = true });

        Assert.Contains("R5,woven,L1,1500,50,17.8,m,EUR,yes", Stock(), StringComparison.Ordinal);
    }

    // Of one lot, and begun on L1: it stays there, though its second ticket was cut from L2.
    [Fact]
    public void An_order_of_one_lot_stays_in_the_lot_that_it_was_begun_in()
    {
        BookDraft other = Roll("R7");
        Write(store, other with { Body = BookJson.Write(BookJson.Read<RollBody>(other.Body) with { Lot = "L2" }) }, Ticket(2, "R7"));
        Assert.DoesNotContain(",L1", Orders(), StringComparison.Ordinal);

        TicketEntries.FilledIn(desk, Back(1, 10));
        TicketEntries.FilledIn(desk, Back(2, 10));

        Assert.Contains(",L1", Orders(), StringComparison.Ordinal);
        Assert.DoesNotContain(",L2", Orders(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_two_dies_put_on_one_press_the_later_stands_there()
    {
        Write(store, BookCases.Die("A"), BookCases.Die("B"));
        DieEntries.Mounted(desk, "B", "P1");
        DieEntries.Mounted(desk, "A", "P1");

        Assert.Equal("A", BookLists.Of(store).Mounted["P1"]);
    }

    [Fact]
    public void A_list_of_changes_writes_what_has_changed_alone()
    {
        string list = "order,ball,thousandBalls,due\nK8,T2,1,2026-03-09\nK9,T2,1,2026-03-09\n";
        ListsIn.Orders(desk, Text(list), again: false, change: false);

        BookSaid said = ListsIn.Orders(desk, Text(list.Replace("K9,T2,1,", "K9,T2,2,")), again: false, change: true);

        Assert.StartsWith("1 orders brought in", said.Line, StringComparison.Ordinal);
    }

    private static string Refused(Func<object> work) => Assert.Throws<InputException>(work).Message;

    private static FeltNest.Files.InputText Text(string list) =>
        FeltNest.Files.InputText.In("orders.csv", System.Text.Encoding.UTF8.GetBytes(list), string.Empty);

    private string Stock() => System.Text.Encoding.UTF8.GetString(BookLists.Of(store).Stock(room.Path("lists")));

    private string Orders() => System.Text.Encoding.UTF8.GetString(BookLists.Of(store).Orders());
}
