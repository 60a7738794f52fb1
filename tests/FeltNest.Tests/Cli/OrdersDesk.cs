using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Tests.Files;
using FeltNest.Tests.Rolls;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Cli;

/// <summary>A folder with lists, and plans of orders made from them: one die of squares, half a ball and 12 mm a strike.</summary>
internal sealed class OrdersDesk : IDisposable
{
    internal const string OrderHead = "order,ball,thousandBalls,due,felt,priority,roll\n";
    internal const string StockHead = "roll,felt,lot,widthMm,lengthM,price,priceUnit,currency,available,measured,massPerAreaGsm\n";

    private const string DieHead = "die,ball,layout,strikesLeft,makePrice,lifeStrikes,reRules,reRulePrice,makeDays\n";
    private const string OneDie = "D1,T2,layout.json,5000,,,,,\n";

    private const string Press = """
        { "schema": "feltnest/press/1", "name": "P1", "ratedForceKn": 200, "bed": { "lengthMm": 400, "widthMm": 400, "marginMm": 10 },
          "strokesPerMinute": 10, "changeOverMinutes": 30, "feedToleranceMm": 0.5, "guideToleranceMm": 0.5 }
        """;

    private readonly TempFolder folder = new();

    /// <summary>The last run.</summary>
    internal CommandRun? Last { get; private set; }

    public void Dispose() => folder.Dispose();

    internal string Path(string name) => folder.Path(name);

    internal string Write(string name, string text) => folder.Write(name, text);

    /// <summary>Writes the lists and plans them into the folder out.</summary>
    internal async Task<CommandRun> Planned(
        string orders, string stock, string dies = OneDie, bool oneWay = false, string[]? options = null)
    {
        RollLayout layout = RollCases.Squares with { Rules = RollCases.Squares.Rules with { OneWay = oneWay } };
        File.WriteAllBytes(Path("layout.json"), LayoutWriter.Write(layout, YieldAccount.Of(layout)));
        Write("press.json", Press);
        Write("orders.csv", OrderHead + orders);
        Write("stock.csv", StockHead + stock);
        Write("dies.csv", DieHead + dies);
        CommandRun run = await Run("orders.csv", "stock.csv", "dies.csv", "out", options ?? []);
        Assert.Equal((0, string.Empty), (run.Code, run.Code == 0 ? string.Empty : run.Messages[0]));
        return run;
    }

    /// <summary>Plans the next day into the folder next, with what is done of the plan in out.</summary>
    internal Task<CommandRun> Again(string done) => Run(
        "orders.csv", "stock.csv", "dies.csv", "next", "--from-plan", Path("out/orders.json"), "--done",
        Write("done.csv", "ticket,strikes,balls,roll,usableFromM\n" + done), "--start", "2026-03-03");

    internal async Task<CommandRun> Run(string orders, string stock, string dies, string to, params string[] options)
    {
        string[] start = options.Contains("--start") ? [] : ["--start", "2026-03-02"];
        Last = await CommandRun.Of([
            "orders", Path(orders), "--stock", Path(stock), "--dies", Path(dies), "--press", Path("press.json"), "--least-remnant", "0.5",
            "--out", Path(to), .. start, .. options]);
        return Last;
    }
}
