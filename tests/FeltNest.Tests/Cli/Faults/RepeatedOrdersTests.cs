using System.Text.Json;
using FeltNest.Files.Layouts;
using FeltNest.Tests.Files;
using FeltNest.Tests.Rolls;
using FeltNest.Yield;
using Xunit;
using static FeltNest.InvariantText;

namespace FeltNest.Tests.Cli.Faults;

/// <summary>The same orders planned in processes of their own: whatever a library orders by addresses falls otherwise in each.</summary>
public sealed class RepeatedOrdersTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact, Trait("tier", "long")]
    public async Task Three_processes_find_the_same_plan_of_a_question_that_none_of_them_proves()
    {
        string[] args = Question();
        byte[][] plans = await Task.WhenAll(new[] { "first", "second", "third" }.Select(async name =>
        {
            CommandRun run = await ProgramProcess.Run(
                ProgramProcess.Program, [.. args, "--out", folder.Path(name)], TestContext.Current.CancellationToken);
            Assert.Equal((0, string.Empty), (run.Code, run.Code == 0 ? string.Empty : run.Err));
            return await File.ReadAllBytesAsync(folder.Path(name + "/orders.json"), TestContext.Current.CancellationToken);
        }));

        // A plan proved the best can be the same by any way.
        Assert.True(JsonDocument.Parse(plans[0]).RootElement.GetProperty("gapPercent").GetDouble() > 0.02);
        Assert.Equal(plans[0], plans[1]);
        Assert.Equal(plans[0], plans[2]);
    }

    private string[] Question()
    {
        // A question on which a search that followed addresses was seen to end otherwise in each of three processes; numbers of a generator
        // written out, so that it stays that question.
        int state = 4;
        int Next(int below)
        {
            state = unchecked((int)(((state * 1103515245L) + 12345) & 0x7fffffff));
            return (state >> 16) % below;
        }

        string[] felts = ["woven", "needled", "light"];
        File.WriteAllBytes(folder.Path("layout.json"), LayoutWriter.Write(RollCases.Squares, YieldAccount.Of(RollCases.Squares)));
        string[] orders = [.. Enumerable.Range(0, 20).Select(i => Invariant(
            $"O{i},ball {i % 4},{0.2 + (0.1 * Next(20)):0.0},2026-03-{6 + Next(24):00},{(Next(3) != 0 ? "one" : "any")},"
                + $"{felts[Next(3)]},{(Next(5) == 0 ? "50" : string.Empty)}"))];
        string[] stock = [.. Enumerable.Range(0, 36).Select(i => Invariant(
            $"R{i},{felts[i % 3]},L{i % 3}{Next(4)},{(Next(2) != 0 ? 24 : 20)},{(Next(4) != 0 ? 40 : 8) + Next(18)},"
                + $"{15 + Next(8)},m,EUR,yes"))];
        string[] dies =
        [
            .. Enumerable.Range(0, 8)
                .Select(i => Invariant($"D{i},ball {i % 4},layout.json,{(i < 4 ? 16 : 8)},{(i < 4 ? 30 : 24)},{(i == 3 ? 400 : 60_000)}")),
        ];
        return
        [
            "orders",
            folder.Write("orders.csv", "order,ball,thousandBalls,due,lots,felt,reserveBalls\n" + string.Join('\n', orders) + "\n"),
            "--stock",
            folder.Write(
                "stock.csv", "roll,felt,lot,widthMm,lengthM,price,priceUnit,currency,available\n" + string.Join('\n', stock) + "\n"),
            "--dies", folder.Write("dies.csv", "die,ball,layout,repeats,mostWidthMm,strikesLeft\n" + string.Join('\n', dies) + "\n"),
            "--press", folder.Write("p1.json", Press("P1", 12, 40)), "--press", folder.Write("p2.json", Press("P2", 8, 30)), "--start",
            "2026-03-02", "--effort", "1",
        ];
    }

    private static string Press(string name, int strokes, int change) => Invariant(
        $"{{ \"schema\": \"feltnest/press/1\", \"name\": \"{name}\", \"ratedForceKn\": 200, \"bed\": {{ \"lengthMm\": 400, \"widthMm\": "
            + $"400, \"marginMm\": 10 }}, \"strokesPerMinute\": {strokes}, \"changeOverMinutes\": {change}, \"hours\": 150, "
            + $"\"feedToleranceMm\": 0.5, \"guideToleranceMm\": 0.5 }}");
}
