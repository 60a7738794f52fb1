using FeltNest.Tests.Cli;
using Xunit;

namespace FeltNest.Tests.Book;

/// <summary>A shop with a book at the command line: one roll, one die, two orders, and the verbs that tests use.</summary>
public abstract class BookShop : IDisposable
{
    private protected const string TwoOrders = "K1,T2,0.5,2026-03-04,woven,,\nK2,T2,0.1,2026-03-05,,,\n";
    private protected const string OneRoll = "R1,woven,L1,20,50,1.5,m,EUR,yes,,\n";

    private protected OrdersDesk Desk { get; } = new();

    public void Dispose()
    {
        Desk.Dispose();
        GC.SuppressFinalize(this);
    }

    private protected async Task Furnished()
    {
        await Desk.Planned(TwoOrders, OneRoll);
        await CommandRun.Of("book", "start", "--book", Desk.Path("room.db"));
        foreach ((string verb, string list) in ((string, string)[])[("receive", "stock.csv"), ("die", "dies.csv"), ("order", "orders.csv")])
        {
            CommandRun run = await Book(verb, Desk.Path(list));
            Assert.Equal((0, string.Empty), (run.Code, run.Err));
        }
    }

    private protected Task<CommandRun> Book(params string[] words) => CommandRun.Of(
        ["book", .. words, "--book", Desk.Path("room.db"),
            .. words[0] is "check" or "export" ? Array.Empty<string>() : ["--by", "anna", "--at", "2026-03-02T06:00"]]);

    private protected Task<CommandRun> Show(params string[] words) => CommandRun.Of(
        ["book", "show", .. words, "--book", Desk.Path("room.db")]);

    private protected Task<CommandRun> Receive(string name) => Book(
        "receive", $"--name={name}", "--felt", "woven", "--lot", "L1", "--width", "20", "--length", "30", "--price", "1.5", "--price-unit",
        "m", "--currency", "EUR");

    private protected Task<CommandRun> Plan(string to, params string[] options) => CommandRun.Of(
    [
        "orders", "--book", Desk.Path("room.db"), "--press", Desk.Path("press.json"), "--least-remnant", "0.5", "--out", Desk.Path(to),
        .. options.Contains("--start") ? Array.Empty<string>() : ["--start", "2026-03-02"],
        .. options.Contains("--take") ? ["--by", "anna", "--at", "2026-03-02T06:20"] : Array.Empty<string>(), .. options,
    ]);
}
