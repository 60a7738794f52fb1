using System.Text.Json;
using FeltNest.Files.Layouts;
using FeltNest.Tests.Files;
using FeltNest.Tests.Rolls;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class UsageCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_shift_is_split_and_written()
    {
        CommandRun run = await Split("roll,metres,goodPanels,widthMm\nA,12,800,20\n", "--json");

        Assert.Equal(0, run.Code);
        Assert.Equal(["usage.csv", "usage.json"], Directory.GetFiles(folder.Path("out")).Select(Path.GetFileName).Order());
        JsonElement root = JsonDocument.Parse(run.Out).RootElement;

        // 12 m hold a thousand squares: 800 of them are a quarter more felt than standard, and nothing but the lay was left open.
        Assert.Equal(25, root.GetProperty("difference").GetProperty("percent").GetDouble(), 1e-9);
        Assert.Equal(
            25,
            root
                .GetProperty("parts")
                .EnumerateArray()
                .Single(p => p.GetProperty("cause").GetString() == "lay")
                .GetProperty("percentOfStandard")
                .GetDouble(), 1e-9);
        Assert.StartsWith(
            "cause,quantity,unit,percentOfStandard,", File.ReadAllText(folder.Path("out/usage.csv")), StringComparison.Ordinal);
        Assert.Contains(
            run.Messages,
            m => m.Contains("not recorded, so taken at the standard: roll ends and remnants, faults", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_fault_of_the_list_names_the_list()
    {
        CommandRun run = await Split("roll,metres,goodPanels,endsM\nA,12,800,12\n");

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains("actuals.csv: endsM: roll A: 12 m lost at its ends", Assert.Single(run.Messages), StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("out")));
    }

    private async Task<CommandRun> Split(string actuals, params string[] options)
    {
        string layout = folder.Path("layout.json");
        File.WriteAllBytes(layout, LayoutWriter.Write(RollCases.Squares, YieldAccount.Of(RollCases.Squares)));
        return await CommandRun.Of([
            "usage", layout, "--actuals", folder.Write("actuals.csv", actuals), "--out", folder.Path("out"), .. options,
        ]);
    }
}
