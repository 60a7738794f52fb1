using System.Text.Json;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli.Felts;

public sealed class LotCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    private static string Ball { get; } = RepositoryFile.PathOf("shapes", "demo", "type-2-lot-a17.json");

    private static string Lot { get; } = RepositoryFile.PathOf("shapes", "demo", "felt-b04.json");

    private static string Outline { get; } = RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json");

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_die_against_a_new_lot_is_told_drawn_and_checked()
    {
        CommandRun run = await Asked("--lot", Lot, "--glue-gap", "0.2:0.6", "--json");

        Assert.Equal(0, run.Code);
        JsonElement lot = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal(("lot A17", "lot B04"), (lot.GetProperty("before").GetString(), lot.GetProperty("after").GetString()));
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("lot/lot.json"))).Code);
        Assert.True(File.Exists(folder.Path("lot/lot.svg")));

        string text = File.ReadAllText(folder.Path("lot/lot.json"));
        int at = text.IndexOf("\"outsidePercent\": ", StringComparison.Ordinal) + "\"outsidePercent\": ".Length;
        folder.Write("lot/lot.json", text[..at] + "9" + text[at..]);
        Assert.Equal(4, (await CommandRun.Of("check", folder.Path("lot/lot.json"))).Code);
    }

    [Fact]
    public async Task Lot_and_range_of_the_glue_go_together_and_with_an_outline()
    {
        Assert.Contains("--lot: needs --glue-gap", (await Asked("--lot", Lot)).Err, StringComparison.Ordinal);
        Assert.Contains("--glue-gap: belongs to --lot", (await Asked("--glue-gap", "0.2:0.6")).Err, StringComparison.Ordinal);
        Assert.Contains(
            "--glue-gap: '0.6:0.2' is not allowed", (await Asked("--lot", Lot, "--glue-gap", "0.6:0.2")).Err, StringComparison.Ordinal);
        CommandRun alone = await CommandRun.Of("panel", Ball, "--lot", Lot, "--out", folder.Path("lot"));
        Assert.Equal(2, alone.Code);
        Assert.Contains("--lot: belongs to --wrap", alone.Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("felt-readings.csv", "felt-a17.json")]
    [InlineData("felt-readings-b04.csv", "felt-b04.json")]
    public async Task The_felt_files_of_the_demo_are_what_its_readings_give(string readings, string felt)
    {
        await CommandRun.Of("felt", RepositoryFile.PathOf("shapes", "demo", readings), "--quiet", "--out", folder.Path("felt"));

        Assert.Equal(File.ReadAllText(RepositoryFile.PathOf("shapes", "demo", felt)), File.ReadAllText(folder.Path("felt/felt.json")));
    }

    private async Task<CommandRun> Asked(params string[] more) =>
        await CommandRun.Of(["panel", Ball, "--wrap", Outline, "--out", folder.Path("lot"), .. more]);
}
