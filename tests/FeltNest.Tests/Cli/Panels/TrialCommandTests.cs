using System.Text.Json;
using FeltNest.Panel.Trial;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli.Panels;

public sealed class TrialCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    private static string Ball { get; } = RepositoryFile.PathOf("shapes", "balls", "type-2.json");

    private static string Readings { get; } = RepositoryFile.PathOf("shapes", "demo", "trial-wrap.csv");

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task The_corrected_panel_of_a_trial_is_checked_and_laid_on_a_ball()
    {
        CommandRun run = await CommandRun.Of("panel", Ball, "--trial", Readings, "--json", "--out", folder.Path("trial"));

        Assert.Equal(0, run.Code);
        JsonElement trial = JsonDocument.Parse(run.Out).RootElement;
        Assert.True(trial.GetProperty("panel").GetProperty("found").GetBoolean());
        Assert.False(trial.GetProperty("placing").GetProperty("found").GetBoolean());
        Assert.Equal(
            ["corrected.json", "trial.json", "trial.png", "trial.svg"],
            Directory.GetFiles(folder.Path("trial")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("trial/trial.json"))).Code);
        Assert.Equal(0, (await CommandRun.Of(
            "layout", folder.Path("trial/corrected.json"), "--width", "400", "--effort", "1", "--out", folder.Path("lay"))).Code);
    }

    [Fact]
    public async Task A_falsified_gap_left_fails_the_check()
    {
        await CommandRun.Of("panel", Ball, "--trial", Readings, "--quiet", "--out", folder.Path("trial"));
        string text = File.ReadAllText(folder.Path("trial/trial.json"));
        int at = text.IndexOf("\"leftMm\": ", StringComparison.Ordinal) + "\"leftMm\": ".Length;
        File.WriteAllText(folder.Path("trial/trial.json"), text[..at] + "9" + text[at..]);

        Assert.Equal(4, (await CommandRun.Of("check", folder.Path("trial/trial.json"))).Code);
    }

    [Fact]
    public async Task A_trial_with_nothing_to_mend_writes_no_panel_and_says_so()
    {
        string level = "ball,place,gapMm\n"
            + string.Concat(Enumerable.Range(1, TrialPlaces.Count).Select(place => $"1,{place},{(place % 3 == 0 ? "0.37" : "0.42")}\n"));

        CommandRun run = await CommandRun.Of("panel", Ball, "--trial", folder.Write("level.csv", level), "--out", folder.Path("trial"));

        Assert.Equal(0, run.Code);
        Assert.False(File.Exists(folder.Path("trial/corrected.json")));
        Assert.Contains("corrected.json is not written", run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_record_sheet_is_drawn_and_has_no_json()
    {
        Assert.Equal(0, (await CommandRun.Of("panel", Ball, "--trial-sheet", "--out", folder.Path("sheet"))).Code);
        Assert.Contains("place", File.ReadAllText(folder.Path("sheet/trial-sheet.svg")), StringComparison.Ordinal);
        Assert.Equal(2, (await CommandRun.Of("panel", Ball, "--trial-sheet", "--json", "--out", folder.Path("other"))).Code);
    }

    [Theory]
    [InlineData("1,1,0.4,\n", "has no reading at place 5, 9, 13")]
    [InlineData("1,1,0.4,\n1,5,0.4,\n1,9,0.4,\n1,13,0.4,\n", "has 4 places; at least 8 of 16")]
    [InlineData("1,1,0.4,\n1,1,0.5,\n", "line 3, place: place 1 of ball '1' was read before")]
    [InlineData("1,17,0.4,\n", "line 2, place: 17 is outside 1 to 16")]
    [InlineData("1,1,4,\n", "line 2, gapMm: 4 is outside -3 to 3 mm")]
    [InlineData("1,2,0.4,28\n", "line 2, waistMm: 28 stands at place 2, which lies on no waist")]
    [InlineData("1,1,0.4,150\n", "line 2, waistMm: 150 mm, but this ball's is 29.2 mm")]
    public async Task Readings_that_cannot_be_used_are_told_with_their_place(string lines, string told)
    {
        string file = folder.Write("readings.csv", "ball,place,gapMm,waistMm\n" + lines);

        CommandRun run = await CommandRun.Of("panel", Ball, "--trial", file, "--out", folder.Path("trial"));

        Assert.Equal(2, run.Code);
        Assert.Contains(told, run.Err, StringComparison.Ordinal);
    }
}
