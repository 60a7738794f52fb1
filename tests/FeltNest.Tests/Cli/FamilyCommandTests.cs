using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class FamilyCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    private static string Costs { get; } = RepositoryFile.PathOf("shapes", "demo", "costs.json");

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_family_is_laid_chosen_for_and_written()
    {
        CommandRun run = await Family("big,big.csv,400000,,\nsmall,small.csv,900000,2,5\n", "--json");

        Assert.True(run.Code == 0, run.Err);
        Assert.Equal(
            ["family.csv", "family.json", "family.png", "family.svg"],
            Directory.GetFiles(folder.Path("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        JsonElement root = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal(6, root.GetProperty("pairs").GetArrayLength());
        Assert.Equal(3, root.GetProperty("plans").GetArrayLength());
        Assert.Equal(3, root.GetProperty("differences").GetArrayLength());
        JsonElement small = root.GetProperty("balls")[1];
        Assert.Equal((2, 5), (small.GetProperty("lay").GetProperty("gapMm").GetInt32(), small.GetProperty("edgeMm").GetInt32()));
        Assert.Equal(7, File.ReadAllLines(folder.Path("out/family.csv")).Length);
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("out/family.json"))).Code);
    }

    [Fact]
    public async Task The_table_keeps_to_eighty_columns_and_says_what_is_proved()
    {
        CommandRun run = await Family("big,big.csv,400000,,\nsmall,small.csv,900000,2,5\n");

        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Contains("Proved for each", run.Out, StringComparison.Ordinal);
        Assert.Contains("small against big", run.Out, StringComparison.Ordinal);
    }

    // Sums and names all agree: only counting every choice again shows that there was a better one.
    [Fact]
    public async Task A_plan_that_adds_up_and_is_not_the_best_is_found_out()
    {
        await Family("big,big.csv,400000,,\nsmall,small.csv,900000,2,5\n");
        JsonNode root = JsonNode.Parse(File.ReadAllText(folder.Path("out/family.json")))!;
        JsonObject plan = root["plans"]![0]!.AsObject();
        string taken = plan["takes"]![0]!["width"]!.GetValue<string>();
        string other = root["widths"]!.AsArray().Select(width => width!["name"]!.GetValue<string>()).First(name => name != taken);
        JsonNode[] pairs = [.. root["pairs"]!.AsArray().Where(pair => pair!["width"]!.GetValue<string>() == other).Select(pair => pair!)];
        foreach ((JsonNode? take, JsonNode pair) in plan["takes"]!.AsArray().Zip(pairs))
        {
            take!["width"] = other;
            take["costPerYear"] = pair["costPerYear"]!.DeepClone();
        }

        double Sum(string field) => pairs.Sum(pair => pair[field]!.GetValue<double>());
        plan["running"] = Sum("runningPerYear");
        plan["dies"] = Sum("diesPerYear");
        plan["costPerYear"] = Sum("costPerYear") + plan["stock"]!.GetValue<double>();
        plan["bound"] = plan["costPerYear"]!.DeepClone();
        root["plans"]![1]!["saves"] = plan["costPerYear"]!.GetValue<double>() - root["plans"]![1]!["costPerYear"]!.GetValue<double>();

        CommandRun run = await CommandRun.Of("check", folder.Write("worse.json", root.ToJsonString()));

        Assert.Equal(4, run.Code);
        Assert.Contains("plans[0].costPerYear says", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("big,big.csv,0,,\n", "line 2, ballsPerYear: 0 is outside 1 to 100000000000 balls")]
    [InlineData("big,big.csv,,,\n", "line 2, ballsPerYear: is blank")]
    [InlineData("big,none.csv,1000,,\n", "none.csv")]
    [InlineData("big,big.csv,1000,,\nbig,small.csv,1000,,\n", "line 3, name: 'big' stands in the list twice")]
    [InlineData("big,big.csv,1000,-1,\n", "line 2, gapMm: -1 is outside 0 to 1000 mm")]
    [InlineData("big,big.csv,1000,,1001\n", "line 2, edgeMm: 1001 is outside 0 to 1000 mm")]
    [InlineData(",big.csv,1000,,\n", "line 2, name: is blank")]
    public async Task A_list_that_cannot_be_is_refused_in_one_line(string lines, string told)
    {
        CommandRun run = await Family(lines);

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains(told, Assert.Single(run.Messages, message => !message.Contains("note:")), StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("out")));
    }

    [Fact]
    public async Task Bare_widths_want_a_price_of_the_felt()
    {
        JsonNode costs = JsonNode.Parse(File.ReadAllText(Costs))!;
        costs.AsObject().Remove("felt");
        CommandRun run = await Family("big,big.csv,1000,,\n", "--costs", folder.Write("costs.json", costs.ToJsonString()));

        Assert.Equal(2, run.Code);
        Assert.Contains("costs.json: felt: is missing", run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_ball_that_fits_no_width_is_named_and_there_is_no_answer()
    {
        CommandRun run = await Family("big,big.csv,1000,,\n", "--width-range", "60:70:10");

        Assert.Equal(3, run.Code);
        Assert.Contains("big fits no width", run.Err, StringComparison.Ordinal);
    }

    private Task<CommandRun> Family(string lines, params string[] options)
    {
        folder.Write("big.csv", "-30,-30\n30,-30\n30,30\n-30,30\n");
        folder.Write("small.csv", "-20,-20\n20,-20\n20,20\n-20,20\n");
        string list = folder.Write("family.csv", $"name,ball,ballsPerYear,gapMm,edgeMm\n{lines}");
        string[] widths = options.Contains("--width-range") ? [] : ["--width-range", "200:240:20"];
        string[] costs = options.Contains("--costs") ? [] : ["--costs", Costs];
        return CommandRun.Of(
        [
            "family", list, "--most-widths", "2", "--effort", "1", "--out", folder.Path("out"), .. widths, .. costs, .. options,
        ]);
    }
}
