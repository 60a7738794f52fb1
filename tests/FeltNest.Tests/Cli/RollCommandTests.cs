using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Files.Layouts;
using FeltNest.Layout;
using FeltNest.Tests.Files;
using FeltNest.Tests.Rolls;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class RollCommandTests : IDisposable
{
    private const string Roll = """
        { "schema": "feltnest/roll/1", "name": "R7", "lengthM": 0.118, "widths": [ { "xM": 0, "widthMm": 20 } ],
          "joints": [ { "xM": 0.02 } ], "skewDeg": 2, "napToward": "-x",
          "faults": [ { "xMm": 70, "yMm": 10, "radiusMm": 1 } ] }
        """;

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_roll_is_planned_written_and_checked()
    {
        CommandRun run = await Planned("--json");

        Assert.Equal(0, run.Code);
        Assert.Equal(
            ["roll.csv", "roll.json", "roll.pdf", "roll.png", "roll.svg", "ticket.png", "ticket.svg"],
            Directory.GetFiles(folder.Path("out")).Select(Path.GetFileName).Order());
        JsonElement plan = JsonDocument.Parse(run.Out).RootElement;
        int strikes = plan.GetProperty("strikes").GetArrayLength();

        // One square before the joint at 20; four need 46 mm and fit between it and the fault at 69 to 71, and four more in the 47 mm
        // behind that.
        Assert.Equal((9, plan.GetProperty("goodPanels").GetInt32()), (strikes, strikes));
        Assert.True(plan.GetProperty("goodPanels").GetInt32() >= plan.GetProperty("backToBackGoodPanels").GetInt32());
        Assert.Equal(12, plan.GetProperty("provedOnGridMm").GetDouble() * 12, 9);
        Assert.Equal(178, plan.GetProperty("warp")[0].GetProperty("warpAngleDeg").GetDouble(), 9);
        Assert.Equal(strikes + 1, File.ReadAllLines(folder.Path("out/roll.csv")).Length);
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("out/roll.json"))).Code);
    }

    [Theory]
    [InlineData("move", "strikes 1 and 2: panels ")]
    [InlineData("count", "strike 1: states 5 good and 0 lost panels, the shapes give 1 good of 1")]
    [InlineData("sum", "goodPanels, lostPanels: stated 99 and 0, the strikes add to 9 and 0")]
    [InlineData("line", "backToBackGoodPanels: stated 3, the shapes give ")]
    [InlineData("side", "strike 1: moved across by 3 mm, the side shift allowed is 0 mm to either side")]
    [InlineData("before", "strike 1: begins at -5 mm, allowed 0 to 118 mm")]
    [InlineData("balls", "balls: 77 stated, the parts add to 4")]
    [InlineData("better", "better: 10 good panels and 5 % stated, where 9 are planned")]
    [InlineData("pattern", "pattern: its panels, laid one feed apart, are not the layout")]
    public async Task A_plan_that_was_changed_is_a_violation(string change, string told)
    {
        await Planned("--quiet");
        JsonNode root = JsonNode.Parse(File.ReadAllText(folder.Path("out/roll.json")))!;
        JsonNode first = root["strikes"]![0]!;
        switch (change)
        {
            case "move": root["strikes"]![1]!["xMm"] = 11.0; break;
            case "count": first["goodPanels"] = 5; break;
            case "sum": root["goodPanels"] = 99; break;
            case "line": root["backToBackGoodPanels"] = 3; break;
            case "side": first["shiftYMm"] = 3.0; break;
            case "balls": root["balls"] = 77; break;
            case "better": root["better"] = JsonNode.Parse("""{ "widthMm": 20, "goodPanels": 10, "gainPercent": 5 }"""); break;
            case "before": first["xMm"] = -5.0; break;
            default: root["pattern"]!["panels"]![0]!["yMm"] = 10.5; break;
        }

        CommandRun run = await CommandRun.Of("check", folder.Write("changed.json", root.ToJsonString()), "--json");

        Assert.Equal(4, run.Code);
        Assert.Contains(
            JsonDocument.Parse(run.Out).RootElement.GetProperty("violations").EnumerateArray(),
            v => v.GetString()!.StartsWith(told, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--from: 500 mm is outside the roll: from 0 to below 118 mm is allowed", "--from", "500")]
    [InlineData("--side-shift: 900 is outside 0 to 200 mm", "--side-shift", "900")]
    [InlineData("--repeats-per-strike: '0' is not allowed: a whole number from 1 to 100", "--repeats-per-strike", "0")]
    public async Task Bad_options_are_one_line_and_exit_code_two(string told, params string[] options)
    {
        CommandRun run = await Planned(options);

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_former_name_of_the_side_shift_is_taken_and_that_is_said()
    {
        CommandRun run = await Planned("--guide-play", "0.5");

        Assert.Equal(0, run.Code);
        Assert.Contains(run.Messages, line => line.Contains("--guide-play is called --side-shift now", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_roll_too_narrow_for_any_panel_has_no_answer()
    {
        CommandRun run = await PlannedOn(Roll.Replace("\"widthMm\": 20", "\"widthMm\": 15", StringComparison.Ordinal), "--quiet");

        Assert.Equal((3, string.Empty), (run.Code, run.Out));
        Assert.Contains("needs 20 mm of width", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_roll_nowhere_as_wide_as_the_layout_is_refused_and_told_what_would_work()
    {
        // Two rows of squares take 32 mm; one row of them fits the roll of 20 mm, but no strike is whole anywhere.
        CommandRun run = await Planned(RollCases.TwoRows, Roll, "--quiet");

        Assert.Equal((3, string.Empty), (run.Code, run.Out));
        Assert.Contains(
            "roll R7 is 20 mm wide at its widest, and this layout needs 32 mm of width", Assert.Single(run.Messages),
            StringComparison.Ordinal);
        Assert.Contains("a layout made for 20 mm or less", run.Messages[0], StringComparison.Ordinal);
        Assert.False(File.Exists(folder.Path("out/ticket.svg")));
    }

    [Fact]
    public async Task A_roll_too_narrow_in_places_says_so_across_ticket_and_map()
    {
        string roll = Roll.Replace(
            "{ \"xM\": 0, \"widthMm\": 20 }",
            "{ \"xM\": 0, \"widthMm\": 34 }, { \"xM\": 0.05, \"widthMm\": 34 }, { \"xM\": 0.06, \"widthMm\": 30 }",
            StringComparison.Ordinal);
        CommandRun run = await Planned(RollCases.TwoRows, roll);

        Assert.Equal(0, run.Code);
        Assert.StartsWith("ROLL TOO NARROW at 0.06 to 0.12 m: ", run.Out, StringComparison.Ordinal);
        Assert.Contains(run.Messages, line => line.Contains("warning: ROLL TOO NARROW", StringComparison.Ordinal));
        Assert.Contains("too-narrow", File.ReadAllText(folder.Path("out/ticket.svg")), StringComparison.Ordinal);
        Assert.Contains("too-narrow", File.ReadAllText(folder.Path("out/roll.svg")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_strike_past_the_end_is_asked_for_and_comes_with_the_caution(bool pastEnd)
    {
        // Five strikes of two squares: the last, of 22 mm, begins at 96 and the roll ends at 117.
        const string roll = """
            { "schema": "feltnest/roll/1", "name": "R7", "lengthM": 0.117, "widths": [ { "xM": 0, "widthMm": 20 } ] }
            """;
        CommandRun run = await PlannedOn(roll, ["--repeats-per-strike", "2", .. pastEnd ? ["--past-end"] : Array.Empty<string>()]);

        Assert.Equal(0, run.Code);
        Assert.Equal(pastEnd, run.Out.Contains("OFF-CENTRE LOAD", StringComparison.Ordinal));
        Assert.Equal(
            pastEnd,
            run.Messages.Any(line =>
                line.Contains("warning: OFF-CENTRE LOAD: the last strike reaches 1 mm past the end", StringComparison.Ordinal)));
        JsonElement plan = JsonDocument.Parse(File.ReadAllText(folder.Path("out/roll.json"))).RootElement;
        Assert.Equal(pastEnd, plan.GetProperty("pastEnd").GetBoolean());
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("out/roll.json"))).Code);
    }

    [Fact]
    public async Task What_a_layout_for_this_roll_would_give_is_said_and_written()
    {
        CommandRun run = await PlannedOn(Roll.Replace("\"widthMm\": 20", "\"widthMm\": 33", StringComparison.Ordinal));

        Assert.Equal(0, run.Code);
        Assert.Contains("A LAYOUT MADE FOR THIS ROLL would give", run.Out, StringComparison.Ordinal);
        Assert.Contains(run.Messages, line => line.Contains("lay it out for 33 mm", StringComparison.Ordinal));
        JsonElement plan = JsonDocument.Parse(File.ReadAllText(folder.Path("out/roll.json"))).RootElement;
        JsonElement better = plan.GetProperty("better");
        Assert.Equal(33, better.GetProperty("widthMm").GetDouble());
        Assert.Equal(
            100.0 * (better.GetProperty("goodPanels").GetInt32() - plan.GetProperty("goodPanels").GetInt32())
                / plan.GetProperty("goodPanels").GetInt32(),
            better.GetProperty("gainPercent").GetDouble(), 9);
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("out/roll.json"))).Code);
    }

    private Task<CommandRun> Planned(params string[] options) => PlannedOn(Roll, options);

    private Task<CommandRun> PlannedOn(string roll, params string[] options) => Planned(RollCases.Squares, roll, options);

    private async Task<CommandRun> Planned(RollLayout lay, string roll, params string[] options)
    {
        string layout = folder.Path("layout.json");
        File.WriteAllBytes(layout, LayoutWriter.Write(lay, YieldAccount.Of(lay)));
        return await CommandRun.Of(["roll", layout, "--roll", folder.Write("roll.json", roll), "--out", folder.Path("out"), .. options]);
    }
}
