using System.Text.Json.Nodes;
using FeltNest.Tests.Cli;
using Xunit;

namespace FeltNest.Tests.Book;

/// <summary>A planner's morning at the book, word by word.</summary>
public sealed class BookCommandTests : BookShop
{
    private const string OnPurpose = "take the line out, or bring in the rest alone on purpose (--again)";

    [Fact]
    public async Task A_plan_from_the_book_is_the_plan_from_its_lists()
    {
        await Furnished();

        Assert.Equal(0, (await Plan("book")).Code);

        Assert.Equal(File.ReadAllText(Desk.Path("out/orders.json")), File.ReadAllText(Desk.Path("book/orders.json")));
        Assert.Empty(JsonNode.Parse((await Show("tickets", "--json")).Out)!.AsArray());
    }

    // Of 1,000 strikes (500 balls) of 12 mm each 400 are made: 200 balls and 4.8 m.
    [Fact]
    public async Task The_next_plan_goes_on_with_what_has_begun()
    {
        await Furnished();
        CommandRun taken = await Plan("first", "--take");
        Assert.Contains("feltnest: plan 1 is taken: tickets 1 to 2", taken.Messages);

        CommandRun back = await Book("ticket", "1", "--strikes", "400", "--good", "400", "--unpaired", "0", "--width", "20");

        Assert.StartsWith(
            "entry 12: ticket 1 400 of 1000 strikes; roll R1: 45.2 m left; order K1: 200 of 500 balls", back.Out, StringComparison.Ordinal);
        Assert.Equal(
            ["feltnest: note: blank, and not counted: rejects, day, shift, operator"], back.Messages);

        CommandRun next = await Plan("second", "--take", "--start", "2026-03-03");

        Assert.Contains("feltnest: plan 2 is taken: tickets 3 to 4; 2 tickets before it are withdrawn", next.Messages);
        JsonNode plan = JsonNode.Parse(File.ReadAllText(Desk.Path("second/orders.json")))!;
        JsonNode rest = plan["assignments"]![0]!;
        Assert.Equal((3, "K1", "R1", 600), ((int)rest["number"]!, (string)rest["order"]!, (string)rest["roll"]!, (int)rest["strikes"]!));
        Assert.Equal("D1", (string)plan["presses"]![0]!["mountedDie"]!);
        Assert.Equal(0, (await CommandRun.Of("check", Desk.Path("second/orders.json"))).Code);
        Assert.Equal(0, (await Book("check")).Code);
        Assert.Contains("withdrawn", (await Show("tickets", "1")).Out + (await Show("tickets")).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("20000 panels from 12 m: 1000 strikes of die D1 give 1000", "--strikes", "1000", "--good", "20000")]
    [InlineData("a width of 150 mm where the roll is 20 mm wide", "--strikes", "1000", "--width", "150")]
    [InlineData("11000 strikes where 1000 are planned", "--strikes", "11000")]
    [InlineData("7 panels without a partner of 5 good ones", "--strikes", "10", "--good", "5", "--unpaired", "7")]
    [InlineData("30 m from 1 to 31 m for 1000 strikes, which take 12 m", "--strikes", "1000", "--from", "1", "--to", "31")]
    public async Task What_can_hardly_be_is_asked_about_at_once(string problem, params string[] figures)
    {
        await Furnished();
        await Plan("first", "--take");

        CommandRun run = await Book(["ticket", "1", .. figures]);

        Assert.Equal(
            (2, $"feltnest: --sure: ticket 1, roll R1: {problem}: give this where it is so"), (run.Code, Assert.Single(run.Messages)));
        Assert.Contains("  open", (await Show("tickets")).Out, StringComparison.Ordinal);
        if (!figures.Contains("11000"))
        {
            Assert.Equal(0, (await Book(["ticket", "1", "--sure", .. figures])).Code);
        }
    }

    [Fact]
    public async Task A_ticket_that_comes_back_twice_is_asked_about()
    {
        await Furnished();
        await Plan("first", "--take");
        await Book("ticket", "1", "--strikes", "400");

        CommandRun twice = await Book("ticket", "1", "--strikes", "600");
        CommandRun more = await Book("ticket", "1", "--strikes", "600", "--more");

        Assert.Equal(2, twice.Code);
        Assert.StartsWith(
            "feltnest: --more: ticket 1 came back already, with 400 strikes", Assert.Single(twice.Messages), StringComparison.Ordinal);
        Assert.StartsWith("entry 13: ticket 1 cut; roll R1: 38 m left; order K1: 500 of 500 balls", more.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_list_twice_is_noticed_and_of_another_only_what_is_new_comes_in_on_purpose()
    {
        await Furnished();

        CommandRun twice = await Book("order", Desk.Path("orders.csv"));
        CommandRun other = await Book("order", Desk.Write("more.csv", OrdersDesk.OrderHead + TwoOrders + "K3,T2,0.2,2026-03-06,,,\n"));
        CommandRun again = await Book("order", Desk.Path("more.csv"), "--again");

        Assert.Equal((2, 2, 0), (twice.Code, other.Code, again.Code));
        Assert.Contains("was brought in already, as entry 5 at 2026-03-02T06:00:00 by anna", twice.Err, StringComparison.Ordinal);
        Assert.Equal(
        [
            $"feltnest: {Desk.Path("more.csv")}: line 2, order: 'K1' stands in the book already: {OnPurpose}",
            $"feltnest: {Desk.Path("more.csv")}: line 3, order: 'K2' stands in the book already: {OnPurpose}",
        ], other.Messages);
        Assert.Contains("1 orders brought in", again.Out, StringComparison.Ordinal);
        Assert.Contains("; 2 stand already and stay as they are", again.Out, StringComparison.Ordinal);
    }

    // Blank lines count as lines of the file, and a page of faults ends with how many more there are.
    [Fact]
    public async Task Rolls_that_stand_in_the_book_are_told_by_their_lines_up_to_a_page()
    {
        await Furnished();
        string lines = string.Concat(Enumerable.Range(1, 45).Select(i => OneRoll.Replace("R1", $"N{i}", StringComparison.Ordinal)));
        await Book("receive", Desk.Write("many.csv", OrdersDesk.StockHead + lines));

        CommandRun run = await Book("receive", Desk.Write("once more.csv", OrdersDesk.StockHead + "\n" + lines));

        Assert.Equal((2, 41), (run.Code, run.Messages.Length));
        Assert.EndsWith("line 3, roll: 'N1' stands in the book already: " + OnPurpose, run.Messages[0], StringComparison.Ordinal);
        Assert.EndsWith("line 42, roll: 'N40' stands in the book already: " + OnPurpose, run.Messages[39], StringComparison.Ordinal);
        Assert.EndsWith("and 5 more faults", run.Messages[40], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Dies_that_stand_in_the_book_are_told_by_their_lines()
    {
        await Furnished();
        string list = File.ReadAllText(Desk.Path("dies.csv"));

        CommandRun run = await Book("die", Desk.Write("other dies.csv", list + "\n"));

        Assert.Equal(2, run.Code);
        Assert.EndsWith("line 2, die: 'D1' stands in the book already: " + OnPurpose, run.Messages[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Orders_are_changed_on_purpose_by_a_list()
    {
        await Furnished();

        CommandRun run = await Book("order", Desk.Write("new.csv", OrdersDesk.OrderHead + "K2,T2,0.3,2026-03-05,,,\n"), "--change");

        Assert.Equal((0, string.Empty), (run.Code, run.Err));
        JsonNode order = JsonNode.Parse((await Show("orders", "--json")).Out)![1]!;
        Assert.Equal(("K2", 300, 300), ((string)order["name"]!, (int)order["order"]!["balls"]!, (int)order["left"]!));
        Assert.Contains("order changed", (await Show("orders", "K2")).Out, StringComparison.Ordinal);
    }

    // Names that a spreadsheet would run, or that would break a line of CSV.
    [Fact]
    public async Task What_is_exported_comes_back_the_same_and_no_cell_is_run()
    {
        string[] names = ["=1+1", "+A1", "-2+3", "@SUM(A1)", "'=x", "a;b", "\"q\"", "'; DROP TABLE entry;--", "=HYPERLINK(\"x\",\"y\")"];
        await Furnished();
        foreach (string name in names)
        {
            Assert.Equal(0, (await Receive(name)).Code);
        }

        Assert.Equal(0, (await Book("export", Desk.Path("lists"))).Code);

        string list = File.ReadAllText(Desk.Path("lists/stock.csv"));
        Assert.All(list.Split('\n').Skip(1), line => Assert.DoesNotMatch("^\"?[=+@-]|,\"?[=+@]|,\"?-[^0-9]", line));
        string second = Desk.Path("second.db");
        await CommandRun.Of("book", "start", "--book", second);
        Assert.Equal(0, (await CommandRun.Of("book", "receive", Desk.Path("lists/stock.csv"), "--book", second)).Code);
        await CommandRun.Of("book", "export", Desk.Path("again"), "--book", second);
        Assert.Equal(list, File.ReadAllText(Desk.Path("again/stock.csv")));
        JsonArray rolls = JsonNode.Parse((await CommandRun.Of("book", "show", "rolls", "--json", "--book", second)).Out)!.AsArray();
        Assert.Equal(["R1", .. names], rolls.Select(roll => (string)roll!["name"]!));
    }

    [Theory]
    [InlineData("ORDERS is missing: give the lists ORDERS, --stock, --dies, or --book")]
    [InlineData("--stock: the book says it: give --book or lists, not both", "--book", "b", "--stock", "s")]
    [InlineData("--take: give the book too: --book", "o", "--stock", "s", "--dies", "d", "--take")]
    [InlineData("--from-plan: the book says what is cut: leave it out", "--book", "b", "--from-plan", "p")]
    public async Task Lists_or_a_book_are_given_not_both(string problem, params string[] words)
    {
        CommandRun run = await CommandRun.Of(["orders", .. words, "--press", "p", "--start", "2026-03-02"]);

        Assert.Equal(2, run.Code);
        Assert.Contains(problem, run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_roll_that_is_bought_is_received_before_its_ticket_comes_back()
    {
        await Furnished();
        await Plan("first", "--take");

        CommandRun run = await Book("ticket", "1", "--strikes", "10", "--roll", "new roll");
        await Receive("new roll");
        CommandRun named = await Book("ticket", "1", "--strikes", "10", "--roll", "new roll");

        Assert.Equal((2, "feltnest: --roll: 'new roll' is not in the book"), (run.Code, Assert.Single(run.Messages)));
        Assert.Contains("roll new roll: 29.88 m left", named.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_two_plans_of_one_book_the_second_to_be_taken_is_refused()
    {
        await Furnished();
        FeltNest.Runs.Book.BookLists early;
        using (FeltNest.Book.BookStore store = FeltNest.Book.Books.Open(Desk.Path("room.db")))
        {
            early = FeltNest.Runs.Book.BookLists.Of(store);
        }

        await Plan("first", "--take");

        using FeltNest.Book.BookStore later = FeltNest.Book.Books.Open(Desk.Path("room.db"));
        using FeltNest.Runs.Book.BookDesk hand = new(later, BookRoom.Hand());
        FeltNest.Rolls.Orders.Planned.OrderPlan plan =
            FeltNest.Files.Orders.OrderPlanReader.Read(FeltNest.Files.InputText.OfFile(Desk.Path("first/orders.json"))).Plan;
        InputException fault = Assert.Throws<InputException>(() => FeltNest.Runs.Book.PlanTaking.Take(hand, plan, early));

        Assert.EndsWith("plan 1 was taken while this one was made: it was not taken; plan again", fault.Message, StringComparison.Ordinal);
    }
}
