using System.Text.Json;
using FeltNest.Tests.Files;
using FeltNest.Tests.Panel.Trace;
using Xunit;

namespace FeltNest.Tests.Cli.Panels;

public sealed class TraceCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact, Trait("tier", "long")]
    public async Task A_disc_of_100_mm_at_50_dpi_is_traced_shown_checked_and_laid()
    {
        CommandRun run = await CommandRun.Of("trace", Disc(), "--dpi", "50.8", "--json", "--out", folder.Path("t"));

        Assert.Equal(0, run.Code);
        JsonElement traced = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal(2500 * Math.PI, traced.GetProperty("areaMm2").GetDouble(), 20.0);
        Assert.Equal("dpi", traced.GetProperty("scaleBy").GetString());
        Assert.Equal(
            ["trace.json", "trace.png", "trace.svg"],
            Directory.GetFiles(folder.Path("t")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("t/trace.json"))).Code);
        Assert.Equal(
            0, (await CommandRun.Of(
                "layout", folder.Path("t/trace.json"), "--width", "300", "--effort", "1", "--out", folder.Path("l"))).Code);
    }

    [Fact, Trait("tier", "long")]
    public async Task A_picture_stands_for_an_outline_with_its_resolution_alone()
    {
        string disc = Disc();

        CommandRun laid = await CommandRun.Of(
            "layout", disc, "--dpi", "50.8", "--width", "300", "--effort", "1", "--out", folder.Path("l"));
        CommandRun unscaled = await CommandRun.Of("layout", disc, "--width", "300", "--out", folder.Path("u"));

        Assert.Equal(0, laid.Code);
        Assert.Contains("scale by 50.8 dpi", laid.Err, StringComparison.Ordinal);
        Assert.Equal(2, unscaled.Code);
        Assert.Contains("--dpi: is needed", unscaled.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_sheet_of_marks_is_written_and_goes_alone()
    {
        Assert.Equal(0, (await CommandRun.Of("trace", "--sheet", "--out", folder.Path("m"))).Code);
        Assert.True(File.Exists(folder.Path("m/marks.pdf")));
        Assert.Equal(2, (await CommandRun.Of("trace", Disc(), "--sheet", "--out", folder.Path("n"))).Code);
        Assert.Equal(2, (await CommandRun.Of("trace", "--out", folder.Path("n"))).Code);
    }

    [Fact]
    public async Task An_outline_in_inches_is_told_before_it_is_wrapped()
    {
        string file = folder.Write("inches.csv", "0,0\n5.8,0\n5.8,1.7\n0,1.7\n");

        CommandRun run = await CommandRun.Of(
            "panel", RepositoryFile.PathOf("shapes", "balls", "type-2.json"), "--wrap", file, "--out", folder.Path("w"));

        Assert.Equal(2, run.Code);
        Assert.Contains("these are inches, write mm", run.Err, StringComparison.Ordinal);
        Assert.Contains("inches.csv", run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_resolution_without_a_picture_to_read_is_refused() => Assert.Equal(
        2, (await CommandRun.Of(
            "panel", RepositoryFile.PathOf("shapes", "balls", "type-2.json"), "--dpi", "200", "--out", folder.Path("w"))).Code);

    // A disc of 100 mm on a ground of 150, two pixels a millimetre.
    private string Disc()
    {
        string path = folder.Path("disc.png");
        File.WriteAllBytes(path, new ScanPicture { Size = (300, 300), Image = p => p * 2 }.Of([ScanPicture.Disc(new(75, 75), 50)]));
        return path;
    }
}
