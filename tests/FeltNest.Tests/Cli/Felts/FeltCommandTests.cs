using System.Text.Json;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli.Felts;

public sealed class FeltCommandTests : IDisposable
{
    private const string Head = "felt,lot,date,test,specimen,direction,lengthMm,widthMm,forceN,extensionMm,narrowingMm,core,coreDiameterMm,"
        + "discDiameterMm,thicknessMm,puckered,afterMm,massG\n";

    private readonly TempFolder folder = new();

    private static string Readings { get; } = RepositoryFile.PathOf("shapes", "demo", "felt-readings.csv");

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_lot_is_measured_checked_and_named_by_a_ball_whose_panel_tells_it()
    {
        await Measured();
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("felt/felt.json"))).Code);

        string ball = folder.Write("ball.json", BallNaming("felt/felt.json"));
        CommandRun run = await CommandRun.Of("panel", ball, "--out", folder.Path("panel"));

        Assert.Equal(0, run.Code);
        Assert.Contains("A17", run.Out, StringComparison.Ordinal);
        Assert.Contains(
            "curve bends there", string.Join(' ', run.Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)),
            StringComparison.Ordinal);
        JsonElement panel = JsonDocument.Parse(File.ReadAllText(folder.Path("panel/panel.json"))).RootElement;
        Assert.Equal("A17", panel.GetProperty("feltLot").GetProperty("name").GetString());
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("panel/panel.json"))).Code);
    }

    [Fact]
    public async Task A_figure_that_stands_in_ball_and_felt_file_is_refused()
    {
        await Measured();
        string ball = folder.Write(
            "ball.json", BallNaming("felt/felt.json").Replace("\"maxStretch", "\"poisson\": 0.3, \"maxStretch", StringComparison.Ordinal));

        CommandRun run = await CommandRun.Of("panel", ball, "--out", folder.Path("panel"));

        Assert.Equal(2, run.Code);
        Assert.Contains("felt.poisson: stands here and in felt/felt.json", run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_figure_that_neither_file_holds_is_missing()
    {
        string few = folder.Write(
            "few.csv", Head + string.Concat(Enumerable.Range(1, 3).Select(i => $"F,L,2026-03-02,thickness,T{i},,,,,,,,,,3.{i},,,\n")));
        await CommandRun.Of("felt", few, "--quiet", "--out", folder.Path("felt"));

        CommandRun run = await CommandRun.Of(
            "panel", folder.Write("ball.json", BallNaming("felt/felt.json")), "--out", folder.Path("panel"));

        Assert.Equal(2, run.Code);
        Assert.Contains("felt.massPerAreaGsm: is missing", run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_felt_file_given_beside_the_ball_goes_before_the_one_it_names()
    {
        await Measured();
        string other = File.ReadAllText(folder.Path("felt/felt.json")).Replace("\"A17\"", "\"C9\"", StringComparison.Ordinal);
        folder.Write("other.json", other);
        string ball = folder.Write("ball.json", BallNaming("felt/felt.json"));

        CommandRun run = await CommandRun.Of("panel", ball, "--with", "felt.file=other.json", "--out", folder.Path("panel"));

        Assert.Equal(0, run.Code);
        Assert.Contains("C9", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_falsified_shear_modulus_fails_the_check()
    {
        await Measured();
        string text = File.ReadAllText(folder.Path("felt/felt.json"));
        int at = text.IndexOf("shearModulusNPerMm", StringComparison.Ordinal);
        int value = text.IndexOf("\"value\": ", at, StringComparison.Ordinal) + "\"value\": ".Length;
        folder.Write("felt/felt.json", text[..value] + "1" + text[value..]);

        CommandRun run = await CommandRun.Of("check", folder.Path("felt/felt.json"));

        Assert.Equal(4, run.Code);
        Assert.Contains("values.shearModulusNPerMm.value", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_sheets_are_drawn_for_the_core_given_and_have_no_json()
    {
        CommandRun run = await CommandRun.Of("felt", "--sheet", "--core-with-cement", "64", "--out", folder.Path("sheets"));

        Assert.Equal(0, run.Code);
        Assert.Contains("core of 64 mm", File.ReadAllText(folder.Path("sheets/felt-discs.svg")), StringComparison.Ordinal);
        Assert.Contains("ISO 13934-1", File.ReadAllText(folder.Path("sheets/felt-cutting.svg")), StringComparison.Ordinal);
        Assert.Equal(2, (await CommandRun.Of("felt", "--sheet", "--json", "--out", folder.Path("other"))).Code);
        Assert.Equal(2, (await CommandRun.Of("felt", "--sheet", Readings, "--out", folder.Path("other"))).Code);
        Assert.Equal(2, (await CommandRun.Of("felt", Readings, "--thickness", "3", "--out", folder.Path("other"))).Code);
        Assert.Equal(2, (await CommandRun.Of("felt", "--out", folder.Path("other"))).Code);
    }

    [Theory]
    [InlineData("F,L,2026-03-02,strip,W1,warp,200,50,1,2,,,,,3,,,", "line 2, thicknessMm: has no place in a line of test strip")]
    [InlineData("F,L,2026-03-02,strip,W1,warp,200,50,1,180,,,,,,,,", "line 2, extensionMm: 180 mm is 90 % of 200 mm")]
    [InlineData("F,L,2026-03-02,strip,W1,weft,200,50,1,2,0.1,,,,,,,", "line 2, narrowingMm: is read on strips along the warp alone")]
    [InlineData("F,L,2026-03-02,strip,W1,,200,50,1,2,,,,,,,,", "line 2, direction: is blank")]
    [InlineData("F,L,2026-3-2,thickness,T1,,,,,,,,,,3,,,", "line 2, date: '2026-3-2' is not a day")]
    [InlineData("F,L,2026-03-02,wrap,N1,,20,10,,,,ball,60,,3,,,", "line 2, lengthMm: 20 mm does not close once round a core of 60 mm")]
    [InlineData("F,L,2026-03-02,wrap,N1,,205,40,,,,ball,60,,3,,,", "line 2, widthMm: 40 mm on a core of 60 mm")]
    [InlineData("F,L,2026-03-02,disc,D1,,,,,,,,60,30,3,perhaps,,", "line 2, puckered: 'perhaps' is not allowed: yes, no")]
    [InlineData("F,L,2026-03-02,disc,D1,,,,,,,,60,80,3,yes,,", "line 2, discDiameterMm: 80 mm on a core of 60 mm")]
    [InlineData("F,L,2026-03-02,square,S1,bias,350,,,,,,,,,,345,", "line 2, direction: bias, but marks on a square")]
    [InlineData("F,L,2026-03-02,square,S1,warp,350,,,,,,,,,,35,", "line 2, afterMm: 35 mm after 350 mm is 90 %")]
    [InlineData("F,L,2026-03-02,thickness,T1,,,,,,,,,,3,,,\nF,M,2026-03-02,thickness,T2,,,,,,,,,,3,,,", "line 3, lot: 'M', but")]
    [InlineData("F,L,2026-03-02,disc,D1,,,,,,,,60,30,3,no,,", "discs: need the neutral layer")]
    [InlineData("F,L,2026-03-02,thickness,T1,,,,,,,,,,3,,,", "lines of thickness: are of 1 specimens; at least 3")]
    public async Task Readings_that_cannot_be_used_are_told_with_their_place(string lines, string told)
    {
        CommandRun run = await CommandRun.Of("felt", folder.Write("readings.csv", Head + lines + "\n"), "--out", folder.Path("felt"));

        Assert.Equal(2, run.Code);
        Assert.Contains("readings.csv: " + told, run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lines_of_one_strip_have_one_length()
    {
        const string lines = "F,L,2026-03-02,strip,W1,warp,200,50,1,2,,,,,,,,\nF,L,2026-03-02,strip,W1,warp,100,50,1,4,,,,,,,,\n";

        CommandRun run = await CommandRun.Of("felt", folder.Write("readings.csv", Head + lines), "--out", folder.Path("felt"));

        Assert.Equal(2, run.Code);
        Assert.Contains("line 3, lengthMm: 100 mm, but strip 'W1' had 200 mm before", run.Err, StringComparison.Ordinal);
    }

    private async Task Measured() =>
        Assert.Equal(0, (await CommandRun.Of("felt", Readings, "--quiet", "--out", folder.Path("felt"))).Code);

    private static string BallNaming(string file) => $$"""
        { "schema": "feltnest/ball/1", "name": "B", "ruleType": "type-2", "core": { "outerDiameterMm": 60, "massG": 46 },
          "cement": { "thicknessMm": 0.15, "massPerAreaGsm": 120 },
          "felt": { "file": "{{file}}", "construction": "woven", "finishedThicknessMm": 3, "maxStretchPercent": 20 },
          "seam": { "curve": "two-harmonic", "waistMm": 28, "seamGapMm": 0.4 },
          "panel": { "flattening": "elastic", "edge": "free", "warpAngleDeg": 0 } }
        """;
}
