using System.Text.Json;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli.Panels;

public sealed class SeamsCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    private static string Ball { get; } = RepositoryFile.PathOf("shapes", "balls", "type-2.json");

    [Fact]
    public async Task Seams_side_by_side_give_table_json_csv_and_pictures_that_agree()
    {
        CommandRun run = await CommandRun.Of("panel", Ball, "--seams", "--width", "400", "--json", "--out", folder.Path("out"));

        Assert.Equal(0, run.Code);
        Assert.Equal(File.ReadAllText(folder.Path("out/seams.json")), run.Out);
        JsonElement root = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal("feltnest/seams/1", root.GetProperty("schema").GetString());
        string[] lines = File.ReadAllLines(folder.Path("out/seams.csv"));
        Assert.Equal(["curve", "two-harmonic", "four-arc", "elastica"], lines.Select(line => line.Split(',')[0]));
        Assert.All(root.GetProperty("seams").EnumerateArray(), (seam, i) => Assert.StartsWith(
            FormattableString.Invariant($"{seam.GetProperty("curve").GetString()},{seam.GetProperty("seamLengthMm").GetDouble():R},"),
            lines[i + 1], StringComparison.Ordinal));
        Assert.Equal(
            ["seams.csv", "seams.json", "seams.png", "seams.svg"],
            Directory.GetFiles(folder.Path("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task The_table_names_every_family_once()
    {
        CommandRun run = await CommandRun.Of("panel", Ball, "--seams", "--width", "400", "--out", folder.Path("out"));

        Assert.Equal(0, run.Code);
        Assert.All(new[] { "\ntwo-harmonic ", "\nfour-arc ", "\nelastica " }, name => Assert.Single(run.Out.Split(name)[1..]));
        Assert.All(run.Out.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public async Task Seams_and_a_range_of_waists_do_not_go_together() =>
        Assert.Equal(2, (await CommandRun.Of("panel", Ball, "--seams", "--waist-range", "26:28:1", "--out", folder.Path("out"))).Code);
}
