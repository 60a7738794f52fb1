using System.Text.Json;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class CompareCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    private static string Bone { get; } = RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json");

    private static string Demo(string name) => RepositoryFile.PathOf("shapes", "demo", name);

    [Theory]
    [InlineData("today.svg", "", "--keep-feed: is missing: a drawing does not say")]
    [InlineData("today.json", "110", "--keep-feed: belongs to a drawn die")]
    [InlineData("today.svg", "60", "today.svg: its 2 cavities do not clear each other when struck again after 60 mm")]
    public async Task A_drawn_die_needs_a_feed_that_clears_it(string file, string feed, string told)
    {
        string die = folder.Write(file, """
            <svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="100mm" viewBox="0 0 200 100">
            <rect x="0" y="0" width="50" height="50"/><rect x="80" y="0" width="50" height="50"/></svg>
            """);
        CommandRun run = await CommandRun.Of([
            "compare", Bone, "--widths", "519", "--keep-die", die, .. feed.Length > 0 ? (string[])["--keep-feed", feed] : [], "--out",
            folder.Path("out"),
        ]);

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact, Trait("tier", "long")]
    public async Task Offers_with_costs_give_files_that_agree()
    {
        CommandRun run = await CommandRun.Of(
            "compare", Bone, "--offers", Demo("offers.csv"), "--costs", Demo("costs.json"), "--effort", "1", "--json", "--out",
            folder.Path("out"));

        Assert.Equal(0, run.Code);
        Assert.Equal(File.ReadAllText(folder.Path("out/compare.json")), run.Out);
        JsonElement root = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal("feltnest/compare/1", root.GetProperty("schema").GetString());
        Assert.Equal(3, root.GetProperty("rows").GetArrayLength());
        foreach (JsonElement row in root.GetProperty("rows").EnumerateArray())
        {
            Assert.Equal(100, row.GetProperty("account").EnumerateObject().Sum(s => s.Value.GetDouble()), 1e-9);
            Assert.Equal(
                row.GetProperty("costPerThousandBalls").GetDouble(),
                row.GetProperty("costSheet")[18].GetProperty("amount").GetDouble());
            Assert.Equal("EUR", row.GetProperty("currency").GetString());
        }

        string[] lines = File.ReadAllLines(folder.Path("out/compare.csv"));
        Assert.Equal(4, lines.Length);
        Assert.StartsWith(
            "1," + root.GetProperty("best").GetString(), Assert.Single(lines, l => l.StartsWith("1,", StringComparison.Ordinal)),
            StringComparison.Ordinal);
        string page = File.ReadAllText(folder.Path("out/compare.html"));
        Assert.Contains("src=\"data:image/svg+xml;base64,", page, StringComparison.Ordinal);
        Assert.DoesNotContain("src=\"http", page, StringComparison.Ordinal);
        Assert.True(new FileInfo(folder.Path("out/compare.png")).Length > 10_000);
        Assert.Contains("Cedar 1620", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_life_of_a_die_by_its_readings_goes_before_the_costs_file()
    {
        string life = folder.Write("life.json", Life("30000.7"));
        string[] asked = ["compare", Bone, "--width-range", "600:600:1", "--costs", Demo("costs.json")];
        CommandRun plain = await CommandRun.Of([.. asked, "--out", folder.Path("plain"), "--json"]);
        CommandRun read = await CommandRun.Of([.. asked, "--life", life, "--out", folder.Path("read"), "--json"]);
        Assert.Equal((0, 0), (plain.Code, read.Code));
        JsonElement before = JsonDocument.Parse(plain.Out).RootElement;
        JsonElement after = JsonDocument.Parse(read.Out).RootElement;

        Assert.Equal((60000, "costs", null), Stated(before));
        Assert.Equal((30000, "readings", "D, revision A"), Stated(after));

        // Die by its wear: price over strikes of a life, so half the life is twice the money; amounts are written to a millionth.
        Assert.Equal(2 * DieLine(before), DieLine(after), 2e-6);
        Assert.Contains(
            read.Messages,
            m => m.EndsWith(
                $"note: life of the die 30000 strikes by the readings of D, revision A in {life}, before the 60000 of the costs file",
                StringComparison.Ordinal));
        Assert.DoesNotContain(plain.Messages, m => m.Contains("life of the die", StringComparison.Ordinal));

        static (int, string?, string?) Stated(JsonElement root) =>
            root.GetProperty("dieLife") is var stated
                ? (stated.GetProperty("strikes").GetInt32(), stated.GetProperty("basis").GetString(), stated.GetProperty("die").GetString())
                : default;
        static double DieLine(JsonElement root) =>
            root
                .GetProperty("rows")[0]
                .GetProperty("costSheet")
                .EnumerateArray()
                .Single(l => l.GetProperty("name").GetString() == "die")
                .GetProperty("amount")
                .GetDouble();
    }

    [Theory]
    [InlineData("null", true, "reRuleAt: is null: the readings show no drift and the die states no life")]
    [InlineData("0.5", true, "reRuleAt: 0.5 is outside 1 to")]
    [InlineData("30000", false, "--life: goes with a costs file")]
    public async Task A_life_that_says_nothing_is_refused(string limit, bool costs, string told)
    {
        CommandRun run = await CommandRun.Of([
            "compare", Bone, "--widths", "600", "--life", folder.Write("life.json", Life(limit)),
            .. costs ? (string[])["--costs", Demo("costs.json")] : [], "--out", folder.Path("out"),
        ]);

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_currency_without_a_rate_names_the_list_and_the_offer()
    {
        string list = folder.Write("list.csv", "name,felt,widthMm,lengthM,price,priceUnit,currency\nA,f,600,50,18.4,m,XXX\n");
        CommandRun run = await CommandRun.Of(
            "compare", Bone, "--offers", list, "--costs", Demo("costs.json"), "--out", folder.Path("out"));

        Assert.Equal(2, run.Code);
        Assert.Equal(
            $"feltnest: {list}: currency of 'A': XXX cannot be mixed with EUR: state its rate under rates in '{Demo("costs.json")}'",
            Assert.Single(run.Messages));
    }

    [Fact]
    public async Task A_correlation_of_a_figure_without_a_range_names_its_place_and_the_figures_there_are()
    {
        string costs = folder.Write(
            "costs.json",
            File.ReadAllText(Demo("costs.json"))
                .Replace("\"second\": \"roll.endLossMm\"", "\"second\": \"die.price\"", StringComparison.Ordinal));
        CommandRun run = await CommandRun.Of("compare", Bone, "--widths", "600", "--costs", costs, "--out", folder.Path("out"));

        Assert.Equal(2, run.Code);
        Assert.StartsWith(
            $"feltnest: {costs}: correlations[0].second: 'die.price' is no figure with a range; there are: roll.endLossMm",
            Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Felt_for_a_number_of_balls_is_bought_in_whole_rolls_and_the_layout_that_was_costed_is_sound()
    {
        CommandRun run = await CommandRun.Of(
            "compare", Bone, "--width-range", "600:600:1", "--costs", Demo("costs.json"), "--balls", "5000", "--json", "--out",
            folder.Path("out"));
        Assert.Equal(0, run.Code);
        JsonElement root = JsonDocument.Parse(run.Out).RootElement;
        JsonElement bought = root.GetProperty("rows")[0].GetProperty("purchase");
        double metres = root.GetProperty("rows")[0].GetProperty("perThousandBalls").GetProperty("metres").GetDouble();

        Assert.Equal(5000, root.GetProperty("balls").GetDouble());
        Assert.Equal(5 * metres, bought.GetProperty("neededM").GetDouble(), 1e-9);
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("out/best-layout.json"))).Code);
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("out/compare.json"))).Code);
        CommandRun none = await CommandRun.Of(
            "compare", Bone, "--width-range", "600:600:1", "--balls", "0", "--out", folder.Path("none"));
        Assert.Equal(2, none.Code);
        Assert.StartsWith("feltnest: --balls: 0 is outside 1 to", Assert.Single(none.Messages), StringComparison.Ordinal);
    }

    private static string Life(string limit) => $$"""
        { "schema": "feltnest/die-life/1", "name": "D", "revision": "A", "supersededBy": null, "panelProfileMm": 1.2,
         "strikes": 9000, "failed": false, "reRuleAt": {{limit}}, "driftLimit": null,
          "statedLife": null, "die": null, "drifts": [], "readings": [] }
        """;

    [Fact]
    public async Task The_table_of_a_width_range_keeps_to_80_columns()
    {
        CommandRun run = await CommandRun.Of(
            "compare", Bone, "--width-range", "500:600:20", "--costs", Demo("costs.json"), "--effort", "1", "--out", folder.Path("out"));

        Assert.Equal(0, run.Code);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Contains("Where a die designed anew changes its rows", run.Out, StringComparison.Ordinal);
        Assert.Contains("cost sheet, thousand good balls, EUR", run.Out, StringComparison.Ordinal);
    }

    [Fact, Trait("tier", "long")]
    public async Task A_layout_whose_die_is_kept_is_set_beside_a_new_one()
    {
        Assert.Equal(
            0, (await CommandRun.Of("layout", Bone, "--width", "520", "--effort", "1", "--quiet", "--out", folder.Path("today"))).Code);
        CommandRun run = await CommandRun.Of(
            "compare", Bone, "--widths", "519,600", "--keep-die", folder.Path("today/layout.json"), "--effort", "1", "--json", "--out",
            folder.Path("out"));

        Assert.Equal(0, run.Code);
        JsonElement root = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal("kept", root.GetProperty("die").GetString());
        JsonElement drops = root.GetProperty("dropWidths");
        int all = drops.EnumerateArray().Last(d => d.GetProperty("leastWidthMm").GetDouble() <= 520.001).GetProperty("rows").GetInt32();
        Assert.Equal(all - 1, root.GetProperty("rows")[0].GetProperty("keptDie").GetProperty("rows").GetInt32());
    }

    [Theory]
    [InlineData("", "needs widths to choose from: --widths")]
    [InlineData("--widths 500 --width-range 500:600:20", "takes one of --widths, --width-range and --offers")]
    [InlineData("--widths 500,500", "--widths: '500,500' is not allowed: 1 to 60 different lengths")]
    [InlineData("--widths 500;600", "--widths: '500;600' is not allowed")]
    [InlineData("--width-range 600:500:5", "--width-range: '600:500:5' is not allowed")]
    [InlineData("--width-range 500:600:5 --rows any", "--rows: is not kept by the scan of a range of widths")]
    [InlineData("--offers none.csv", "none.csv: no such file")]
    [InlineData("--widths 500 --costs none.json", "none.json: no such file")]
    [InlineData("--widths 500 --warp-angle joint", "--warp-angle: 'joint' belongs to layout")]
    public async Task Bad_questions_are_refused_in_one_line(string args, string problem)
    {
        CommandRun run =
            await CommandRun.Of(["compare", Bone, .. args.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--out", folder.Path("out")]);

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains(problem, Assert.Single(run.Messages), StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("out")));
    }

    [Fact]
    public async Task A_width_that_no_panel_fits_has_code_3()
    {
        CommandRun run = await CommandRun.Of("compare", Bone, "--widths", "60", "--out", folder.Path("out"));
        Assert.Equal((3, string.Empty), (run.Code, run.Out));
    }

    [Fact]
    public async Task Interrupted_before_the_first_row_nothing_is_written()
    {
        CommandRun run = await CommandRun.Of(new CancellationToken(true), "compare", Bone, "--widths", "500", "--out", folder.Path("out"));
        Assert.Equal(130, run.Code);
        Assert.False(Directory.Exists(folder.Path("out")));
    }
}
