using System.Text.Json;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli.Panels;

public sealed class WaistCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    private static string Ball { get; } = RepositoryFile.PathOf("shapes", "balls", "type-2.json");

    [Fact, Trait("tier", "long")]
    public async Task A_range_of_waists_gives_table_json_csv_and_pictures_that_agree()
    {
        CommandRun run =
            await CommandRun.Of("panel", Ball, "--waist-range", "26:28:1", "--width", "400", "--json", "--out", folder.Path("out"));

        Assert.Equal(0, run.Code);
        Assert.Equal(File.ReadAllText(folder.Path("out/waist.json")), run.Out);
        JsonElement root = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal("feltnest/waist/1", root.GetProperty("schema").GetString());
        Assert.Equal([26, 27, 28], root.GetProperty("waists").EnumerateArray().Select(w => w.GetProperty("waistMm").GetDouble()));
        string[] lines = File.ReadAllLines(folder.Path("out/waist.csv"));
        Assert.Equal(4, lines.Length);
        string best = Assert.Single(lines, line => line.EndsWith(",yes", StringComparison.Ordinal));
        Assert.StartsWith(FormattableString.Invariant($"{root.GetProperty("bestWaistMm").GetDouble()},"), best, StringComparison.Ordinal);
        Assert.Equal(
            ["waist.csv", "waist.json", "waist.png", "waist.svg"],
            Directory.GetFiles(folder.Path("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("panel BALL --waist-range 30:20:1", "30:20:1 is not allowed")]
    [InlineData("panel BALL --waist-range 20-30", "'20-30' is not allowed: FROM:TO:STEP")]
    [InlineData("panel BALL --waist-range 1:30:5", "seam.waistMm: 1 mm is outside")]
    [InlineData("panel BALL --width 900", "--width: belongs to --waist-range")]
    public async Task Bad_ranges_and_stray_options_are_refused_in_one_line(string args, string problem)
    {
        CommandRun run =
            await CommandRun.Of([.. args.Split(' ').Select(word => word == "BALL" ? Ball : word), "--out", folder.Path("out")]);

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains(problem, Assert.Single(run.Messages), StringComparison.Ordinal);
    }
}
