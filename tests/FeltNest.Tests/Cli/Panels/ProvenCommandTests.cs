using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli.Panels;

public sealed class ProvenCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    private static string Ball { get; } = RepositoryFile.PathOf("shapes", "balls", "type-2.json");

    public void Dispose() => folder.Dispose();

    [Fact, Trait("tier", "long")]
    public async Task Fields_found_carry_a_proven_panel_over_to_another_ball_file()
    {
        // A shop whose die was made for a wider waist and a felt that takes up less: its panel, and the example ball as the starting point.
        string shop = File.ReadAllText(Ball)
            .Replace("\"waistMm\": 28.0", "\"waistMm\": 26.0")
            .Replace("\"maxEdgeCompressionPercent\": 15", "\"maxEdgeCompressionPercent\": 9");
        File.WriteAllText(folder.Path("shop.json"), shop);
        Assert.Equal(0, (await CommandRun.Of("panel", folder.Path("shop.json"), "--quiet", "--out", folder.Path("die"))).Code);

        CommandRun run =
            await CommandRun.Of("panel", Ball, "--proven", folder.Path("die/panel.json"), "--json", "--out", folder.Path("out"));

        Assert.Equal(0, run.Code);
        Assert.Equal(File.ReadAllText(folder.Path("out/proven.json")), run.Out);
        Assert.Equal(
            ["proven.json", "proven.png", "proven.svg"],
            Directory.GetFiles(folder.Path("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        JsonNode other = JsonNode.Parse(File.ReadAllText(Ball))!;
        foreach ((string part, JsonNode? fields) in JsonNode.Parse(run.Out)!["ballFields"]!.AsObject())
        {
            foreach ((string name, JsonNode? value) in fields!.AsObject())
            {
                other[part]![name] = value!.DeepClone();
            }
        }

        File.WriteAllText(folder.Path("other.json"), other.ToJsonString());
        Assert.Equal(0, (await CommandRun.Of("panel", folder.Path("other.json"), "--quiet", "--out", folder.Path("again"))).Code);
        JsonElement die = Panel("die");
        JsonElement again = Panel("again");
        foreach (string name in new[] { "lengthMm", "widthMm", "waistMm" })
        {
            Assert.Equal(die.GetProperty(name).GetDouble(), again.GetProperty(name).GetDouble(), 0.02);
        }
    }

    [Fact, Trait("tier", "long")]
    public async Task An_outline_nowhere_near_ends_with_exit_code_3_and_one_line()
    {
        CommandRun run = await CommandRun.Of(
            "panel", Ball, "--proven", RepositoryFile.PathOf("shapes", "outlines", "bow-tie.csv"), "--out", folder.Path("out"));

        Assert.Equal((3, string.Empty), (run.Code, run.Out));
        Assert.Contains("nowhere near", Assert.Single(run.Messages), StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("out")));
    }

    [Fact]
    public async Task Proven_and_wrap_do_not_go_together() =>
        Assert.Equal(2, (await CommandRun.Of("panel", Ball, "--proven", Ball, "--wrap", Ball, "--out", folder.Path("out"))).Code);

    private JsonElement Panel(string name) => JsonDocument.Parse(File.ReadAllText(folder.Path($"{name}/panel.json"))).RootElement;
}
