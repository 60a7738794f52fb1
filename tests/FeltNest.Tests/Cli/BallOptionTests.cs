using System.CommandLine;
using System.Text.Json;
using FeltNest.Cli;
using FeltNest.Cli.Options;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

/// <summary>A core, a waist or any field of the ball given on the line goes before the ball's file, and results say so.</summary>
public sealed class BallOptionTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_given_core_is_the_core_of_an_edited_file()
    {
        string ball = RepositoryFile.PathOf("shapes", "balls", "type-2.json");
        string edited = folder.Write(
            "type-2.json", File.ReadAllText(ball).Replace("\"outerDiameterMm\": 60", "\"outerDiameterMm\": 59", StringComparison.Ordinal));

        JsonElement given = Json(await Run("panel", ball, "--core", "59"));
        JsonElement written = Json(await Run("panel", edited));

        Assert.NotEqual(File.ReadAllText(ball), File.ReadAllText(edited));
        Assert.Equal(written.GetProperty("outline").GetRawText(), given.GetProperty("outline").GetRawText());
        Assert.Equal("core.outerDiameterMm=59", Assert.Single(given.GetProperty("given").EnumerateArray()).GetString());
        Assert.EndsWith(", core 59 mm", given.GetProperty("name").GetString(), StringComparison.Ordinal);
        Assert.Empty(written.GetProperty("given").EnumerateArray());
    }

    [Fact]
    public async Task Without_a_ball_the_example_stands_in_and_is_named_as_assumed()
    {
        CommandRun run = await CommandRun.Of(
            "layout", "--core", "59", "--width", "400", "--effort", "1", "--json", "--quiet", "--out", folder.Path("out"));

        Assert.Equal(0, run.Code);
        Assert.Contains("no ball was given: the shipped example type-2 is assumed", Assert.Single(run.Messages), StringComparison.Ordinal);
        JsonElement layout = JsonDocument.Parse(run.Out).RootElement;
        Assert.Contains(
            "core 59 mm", layout.GetProperty("panels")[0].GetProperty("ball").GetString(), StringComparison.Ordinal);
        Assert.Contains("is assumed", layout.GetProperty("assumptions").GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_length_may_carry_its_unit_and_a_field_that_the_file_leaves_out_may_be_given()
    {
        JsonElement panel = Json(await Run("panel", "--with", "felt.thicknessMm=0.125in", "--with", "tolerances.coreDiameterMm=0.2"));

        Assert.Equal(
            ["felt.thicknessMm=3.175", "tolerances.coreDiameterMm=0.2"],
            panel.GetProperty("given").EnumerateArray().Select(item => item.GetString()));
        Assert.Equal(0.2, panel.GetProperty("ballCheck").GetProperty("tolerances")[0].GetProperty("worstCase").GetDouble(), 9);
    }

    [Fact]
    public async Task A_core_in_inches_has_no_more_digits_than_an_inch()
    {
        JsonElement panel = Json(await Run("panel", "--core", "2.1in", "--with", "name=2026"));

        Assert.Equal("2026, core 53.34 mm", panel.GetProperty("name").GetString());
    }

    [Theory]
    [InlineData("core.outerDiameterMm: 5 mm is outside 20 to 200 mm", "--core", "5")]
    [InlineData("seam.waistMm: 1 mm is outside", "--waist", "1")]
    [InlineData("felt.thicknesMm: is not a known field; did you mean", "--with", "felt.thicknesMm=3")]
    [InlineData("felt: holds more than one value", "--with", "felt=3")]
    [InlineData("core.outerDiameterMm: is given twice", "--core", "59", "--with", "core.outerDiameterMm=60")]
    [InlineData("ruleType: 'type-9' is not known", "--with", "ruleType=type-9")]
    [InlineData("--with: 'felt' is not allowed: a field of the ball file and its value", "--with", "felt")]
    [InlineData(".felt: is no field of a ball file", "--with", ".felt=3")]
    [InlineData("name.first: is no field of a ball file: name holds no fields", "--with", "name.first=3")]
    public async Task What_the_ball_does_not_take_is_told_in_one_line(string told, params string[] words)
    {
        CommandRun run = await CommandRun.Of(["panel", .. words, "--out", folder.Path("out")]);

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("out")));
    }

    [Fact]
    public async Task An_outline_has_no_core()
    {
        string outline = RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json");
        CommandRun run = await CommandRun.Of("layout", outline, "--core", "59", "--width", "600", "--out", folder.Path("out"));

        Assert.Equal(2, run.Code);
        Assert.Contains(
            "is a flat outline: core.outerDiameterMm belongs to a ball specification", Assert.Single(run.Messages),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("output/type-2-core59-waist27-felt.thicknessMm3.4-panel", "--with felt.thicknessMm=3.4 --waist 27mm --core 5.9cm")]
    [InlineData("output/type-3-core59-panel", "balls/type-3.json --core 59")]
    [InlineData("output/type-2-panel", "")]
    public void What_is_given_names_the_folder_of_the_results(string folderName, string words)
    {
        Command command = new("panel");
        BallOptions options = new(command, takesOutline: false);
        ParseResult parse = command.Parse(words);

        Assert.Empty(parse.Errors);
        Assert.Equal(folderName, DefaultFolder.OfPanel(options.NamedPath(parse)));
    }

    private async Task<CommandRun> Run(params string[] words) =>
        await CommandRun.Of([.. words, "--json", "--quiet", "--force", "--out", folder.Path("out")]);

    private static JsonElement Json(CommandRun run)
    {
        Assert.Equal(0, run.Code);
        return JsonDocument.Parse(run.Out).RootElement;
    }
}
