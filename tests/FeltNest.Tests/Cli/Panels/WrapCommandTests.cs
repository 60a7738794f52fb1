using System.Text.Json;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli.Panels;

public sealed class WrapCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    private static string Ball { get; } = RepositoryFile.PathOf("shapes", "balls", "type-2.json");

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_panel_laid_back_on_its_ball_by_its_file_has_the_strains_it_was_made_with()
    {
        Assert.Equal(0, (await CommandRun.Of("panel", Ball, "--quiet", "--out", folder.Path("panel"))).Code);
        JsonElement strain = JsonDocument.Parse(File.ReadAllText(folder.Path("panel/panel.json"))).RootElement.GetProperty("strain");

        CommandRun run =
            await CommandRun.Of("panel", Ball, "--wrap", folder.Path("panel/panel.json"), "--json", "--out", folder.Path("wrap"));

        Assert.Equal(0, run.Code);
        JsonElement wrap = JsonDocument.Parse(run.Out).RootElement;
        JsonElement held = wrap.GetProperty("edgeHeld");
        Assert.Equal("feltnest/wrap/1", wrap.GetProperty("schema").GetString());
        Assert.Equal(strain.GetProperty("maxStretchPercent").GetDouble(), held.GetProperty("maxStretchPercent").GetDouble(), 0.01);
        Assert.Equal(strain.GetProperty("maxCompressionPercent").GetDouble(), held.GetProperty("maxCompressionPercent").GetDouble(), 0.01);
        Assert.Equal(strain.GetProperty("energyNmm").GetDouble(), held.GetProperty("energyNmm").GetDouble(), 0.01);
        Assert.All(wrap.GetProperty("edgeFree").GetProperty("edge").EnumerateArray(), p => Assert.Equal(
            wrap.GetProperty("radiusMm").GetDouble(), Math.Sqrt(p.EnumerateArray().Sum(c => c.GetDouble() * c.GetDouble())), 1e-6));
        Assert.Equal(
            ["wrap.json", "wrap.png", "wrap.svg"],
            Directory.GetFiles(folder.Path("wrap")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_ball_is_no_outline_to_wrap() =>
        Assert.Equal(2, (await CommandRun.Of("panel", Ball, "--wrap", Ball, "--out", folder.Path("wrap"))).Code);

    [Fact]
    public async Task Wrap_and_waist_range_do_not_go_together() =>
        Assert.Equal(
            2, (await CommandRun.Of("panel", Ball, "--wrap", Ball, "--waist-range", "26:28:1", "--out", folder.Path("wrap"))).Code);

    [Fact, Trait("tier", "long")]
    public async Task Panel_and_tilt_found_together_are_written_as_one_layout_at_the_design_angle()
    {
        string woven = RepositoryFile.PathOf("shapes", "balls", "type-2-woven.json");

        CommandRun run = await CommandRun.Of(
            "layout", woven, "--width", "400", "--warp-angle", "joint", "--effort", "1", "--json", "--out", folder.Path("joint"));

        Assert.Equal(0, run.Code);
        JsonElement layout = JsonDocument.Parse(run.Out).RootElement;
        double design = layout.GetProperty("panels")[0].GetProperty("warpAngleDeg").GetDouble();
        Assert.All(layout.GetProperty("repeat").GetProperty("panels").EnumerateArray(), p =>
            Assert.Equal(0, Math.IEEERemainder(p.GetProperty("angleDeg").GetDouble() - design, 180), 1e-6));
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("joint/layout.json"))).Code);
    }
}
