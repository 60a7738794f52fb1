using System.Text.Json;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

/// <summary>Options that say what the shop's cloth, dies and table allow.</summary>
public sealed class ShopOptionTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    private static string DogBone { get; } = RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json");

    private static string BowTie { get; } = RepositoryFile.PathOf("shapes", "outlines", "bow-tie.csv");

    [Fact]
    public async Task Rules_of_the_shop_are_kept_written_and_checked_from_the_file()
    {
        JsonElement root = await Laid(
            "--edge", "12,20", "--forbid", "180:190", "--die-panels", "2", "--least-repeat", "250", "--plies", "2", "--face-to-face");
        JsonElement roll = root.GetProperty("roll");
        JsonElement rules = root.GetProperty("rules");
        JsonElement repeat = root.GetProperty("repeat");
        Assert.Equal(
            (12, 20, 368),
            (roll
                .GetProperty("edgeMm")
                .GetDouble(), roll.GetProperty("upperEdgeMm").GetDouble(), roll.GetProperty("usableWidthMm").GetDouble()));
        Assert.Equal(180, rules.GetProperty("forbidden")[0].GetProperty("yFromMm").GetDouble());
        Assert.Equal(2, rules.GetProperty("die").GetProperty("mostPanels").GetInt32());
        Assert.True(repeat.GetProperty("lengthMm").GetDouble() >= 250);
        Assert.InRange(repeat.GetProperty("strike").GetProperty("panels").GetInt32(), 1, 2);
        Assert.True(rules.GetProperty("plies").GetProperty("faceToFace").GetBoolean());
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("out/layout.json"))).Code);
    }

    [Fact]
    public async Task A_second_part_has_its_own_band_in_the_file()
    {
        JsonElement root = await Laid("--second", BowTie, "--second-share", "40");
        Assert.Equal(2, root.GetProperty("panels").GetArrayLength());
        Assert.Equal(2, root.GetProperty("bands").GetArrayLength());
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("out/layout.json"))).Code);
    }

    [Fact]
    public async Task A_panel_moved_into_a_stripe_fails_the_check()
    {
        await Laid("--forbid", "0:100");
        string path = folder.Path("out/layout.json");
        string text = File.ReadAllText(path);
        File.WriteAllText(path, text.Replace("\"yToMm\": 100", "\"yToMm\": 150", StringComparison.Ordinal));
        CommandRun check = await CommandRun.Of("check", path);
        Assert.Equal(4, check.Code);
        Assert.Contains("forbidden stripe", check.Out + check.Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--forbid", "720:700", "the lower first")]
    [InlineData("--forbid", "700", "two places")]
    [InlineData("--die-bed", "600", "600x400")]
    [InlineData("--edge", "10,20,30", "lower and upper")]
    [InlineData("--edge", "-1", "one length for both sides")]
    [InlineData("--bands", "9", "1 to 4")]
    [InlineData("--plies", "0", "1 to 100")]
    [InlineData("--second-share", "120", "per cent, or fill")]
    public async Task A_rule_that_makes_no_sense_is_refused_with_what_is_allowed(string option, string value, string words) =>
        await Refused(2, words, option, value);

    [Fact]
    public async Task Options_that_need_another_one_say_so()
    {
        await Refused(2, "--plies 2", "--face-to-face");
        await Refused(2, "--second BALL", "--second-share", "40");
    }

    [Fact]
    public async Task A_stripe_that_leaves_no_room_is_sound_input_without_an_answer() =>
        await Refused(3, "forbidden stripes leave no room", "--forbid", "20:380");

    private async Task<JsonElement> Laid(params string[] options)
    {
        CommandRun run =
            await CommandRun.Of(["layout", DogBone, "--width", "400", "--effort", "1", "--json", "--out", folder.Path("out"), .. options]);
        Assert.True(run.Code == 0, run.Err);
        return JsonDocument.Parse(run.Out).RootElement;
    }

    private async Task Refused(int code, string words, params string[] options)
    {
        CommandRun run =
            await CommandRun.Of(["layout", DogBone, "--width", "400", "--effort", "1", "--out", folder.Path("out"), .. options]);
        Assert.Equal((code, string.Empty), (run.Code, run.Out));
        Assert.Contains(words, run.Err, StringComparison.Ordinal);
        Assert.Single(run.Err.Trim().Split('\n'), line => !line.Contains('%'));
        Assert.False(Directory.Exists(folder.Path("out")) && Directory.GetFiles(folder.Path("out")).Length > 0);
    }
}
