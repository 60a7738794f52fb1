using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class CheckCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_panel_moved_out_of_the_usable_width_is_a_violation()
    {
        string path = await Changed(root => Panels(root)[0]!["yMm"] = 0.0);

        CommandRun run = await CommandRun.Of("check", path);

        Assert.Equal(4, run.Code);
        Assert.Contains("violated", run.Out, StringComparison.Ordinal);
        Assert.StartsWith($"feltnest: {path}: ", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_repeat_made_too_short_is_a_violation_of_the_gap()
    {
        string path = await Changed(root => root["repeat"]!["lengthMm"] = root["repeat"]!["lengthMm"]!.GetValue<double>() - 0.01);

        CommandRun run = await CommandRun.Of("check", path, "--json");

        Assert.Equal(4, run.Code);
        JsonElement verdict = JsonDocument.Parse(run.Out).RootElement;
        Assert.False(verdict.GetProperty("passed").GetBoolean());
        Assert.InRange(verdict.GetProperty("leastGapMm").GetDouble(), 3.98, 4 - 1e-4);
    }

    [Fact]
    public async Task A_yield_the_geometry_does_not_give_is_a_violation()
    {
        string path = await Changed(root => root["yield"]!["panelsPerMetre"] = 99.0);

        CommandRun run = await CommandRun.Of("check", path, "--quiet");

        Assert.Equal((4, string.Empty), (run.Code, run.Out));
        Assert.Contains("yield.panelsPerMetre says 99, the geometry gives ", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_ball_is_not_something_to_check()
    {
        CommandRun run = await CommandRun.Of("check", RepositoryFile.PathOf("shapes", "balls", "type-2.json"));

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains("allowed: feltnest/layout/1", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    private static JsonArray Panels(JsonNode root) => root["repeat"]!["panels"]!.AsArray();

    private async Task<string> Changed(Action<JsonNode> change)
    {
        string bowTie = RepositoryFile.PathOf("shapes", "outlines", "bow-tie.csv");
        Assert.Equal(0, (await CommandRun.Of("layout", bowTie, "--width", "300", "--effort", "1", "--out", folder.Path("out"))).Code);
        JsonNode root = JsonNode.Parse(File.ReadAllText(folder.Path("out/layout.json")))!;
        change(root);
        return folder.Write("changed.json", root.ToJsonString());
    }
}
