using System.Text.Json.Nodes;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Files.Dies;
using FeltNest.Tests.Cli;
using FeltNest.Tests.Die;
using Xunit;

namespace FeltNest.Tests.Files.Hostile;

/// <summary>Dies whose numbers would have kept `check` at work for ever, or filled the memory.</summary>
public sealed class FoundDieTests : IDisposable
{
    private static readonly Lazy<byte[]> Die = new(() =>
        DieWriter.Write(
            DieDesigner.Run(
                new GangRequest(DieCases.Plates, 0, DieCases.Order, DieCases.Press(200, 70), null),
                TestContext.Current.CancellationToken)));

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("feedMm", "1e300", "feedMm: 1E+300 is outside 0.1 to 10000000")]
    [InlineData("feedMm", "1e-300", "feedMm: 1E-300 is outside 0.1 to 10000000")]
    [InlineData("cavities[0].xMm", "1e300", "xMm: 1E+300 is outside -10000000 to 10000000")]
    [InlineData("cavities[0].angleDeg", "1e300", "angleDeg: 1E+300 is outside -360 to 360")]
    [InlineData(
        "strike.places", "@places", "places: 7000 places of 3 cavities cut more than 20000 panels to a feed: that many are allowed")]
    [InlineData("strike.originXMm", "1e300", "originXMm: 1E+300 is outside -10000000 to 10000000")]
    public async Task A_die_beyond_all_rolls_is_told(string field, string value, string told)
    {
        CommandRun run = await Checked(field, value);

        Assert.Equal(2, run.Code);
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_feed_of_millions_of_repeats_is_not_laid_out_to_see_that_its_strikes_do_not_tile()
    {
        // Two places of three cavities cut six panels; the feed is 200,000 repeats of 44 mm with two panels each.
        CommandRun run = await Checked("feedMm", "8800000");

        Assert.Equal(4, run.Code);
        Assert.Contains("strikes do not tile the layout: 6 cuts to a feed, which has 400000 panels", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_cavity_that_stands_thousands_of_feeds_away_tiles_and_is_not_followed_there()
    {
        // 66,000 feeds of 132 mm further on the strikes are the same layout.
        double far = (double)JsonNode.Parse(Die.Value)!["cavities"]![0]!["xMm"]! + (66_000 * 132.0);
        CommandRun run = await Checked("cavities[0].xMm", far.ToString("R", System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal(4, run.Code);
        Assert.Contains("gaps between strikes were not measured: cavities and places reach over 6600", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("do not tile", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_die_that_costs_more_than_there_is_money_is_told()
    {
        CommandRun run =
            await Checked("wear", """{ "price": 1e300, "currency": "XTS", "lifeStrikes": 1, "reRules": 0, "reRulePrice": 0 }""");

        Assert.Contains("wear.price: 1E+300 is outside", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    private async Task<CommandRun> Checked(string field, string value)
    {
        JsonNode root = JsonNode.Parse(Die.Value)!;
        JsonNode at = root;
        string[] steps = field.Replace("[", ".", StringComparison.Ordinal).Replace("]", string.Empty, StringComparison.Ordinal).Split('.');
        foreach (string step in steps[..^1])
        {
            at = at is JsonArray list ? list[int.Parse(step, System.Globalization.CultureInfo.InvariantCulture)]! : at[step]!;
        }

        at[steps[^1]] = value == "@places"
            ? new JsonArray([.. Enumerable.Range(0, 7000).Select(_ => JsonNode.Parse("""{ "xMm": 0, "yMm": 0 }"""))])
            : JsonNode.Parse(value);
        return await CommandRun.Of("check", folder.Write("die.json", root.ToJsonString()));
    }
}
