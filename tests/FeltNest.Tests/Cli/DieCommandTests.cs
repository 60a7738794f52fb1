using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using FeltNest.Cost.Sheet;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Files;
using FeltNest.Files.Costs;
using FeltNest.Files.Dies;
using FeltNest.Files.Layouts;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Tests.Die;
using FeltNest.Tests.Files;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class DieCommandTests(DesignedDie designed) : IClassFixture<DesignedDie>, IDisposable
{
    private static readonly string Order = RepositoryFile.PathOf("shapes", "demo", "dies", "gang-die.json");
    private static readonly string Beam = RepositoryFile.PathOf("shapes", "demo", "presses", "beam-press.json");

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_board_for_the_laser_is_read_back_against_its_die()
    {
        string board = Path.Combine(designed.Results, "board-cut.dxf");
        string other = folder.Path("board-cut.dxf");
        File.WriteAllText(other, File.ReadAllText(board).Replace("$EXTMAX\r\n 10\r\n", "$EXTMAX\r\n 10\r\n-"));

        Assert.Equal(0, (await CommandRun.Of("check", designed.Die, "--board", board, "--quiet")).Code);
        Assert.Equal(4, (await CommandRun.Of("check", designed.Die, "--board", other, "--quiet")).Code);
        CommandRun layout = await CommandRun.Of("check", designed.Layout, "--board", board, "--quiet");
        Assert.Equal(2, layout.Code);
        Assert.Contains("is no die", layout.Err);
        CommandRun edge = await CommandRun.Of("check", designed.Die, "--board", Path.Combine(designed.Results, "cavity.dxf"), "--quiet");
        Assert.Equal(2, edge.Code);
        Assert.Contains("has no closed lines on layer SLOT", edge.Err);
    }

    [Fact]
    public async Task Test_bends_set_the_bends_and_those_that_cannot_be_are_refused()
    {
        string bends = folder.Write("bends.csv", "insideRadiusMm,angleSetDeg,angleGotDeg\n5,90,95\n10,90,80\n20,90,60\n");
        string place = folder.Path("out");
        string demo = RepositoryFile.PathOf("shapes", "demo", "dies", "test-bends.csv");
        CommandRun refused = await CommandRun.Of("die", designed.Layout, "--order", Order, "--bends", bends, "--out", place, "--quiet");

        Assert.Equal(2, refused.Code);
        Assert.Contains("bends.csv: line 2, angleGotDeg: 95 is more than the 90 it was formed to", refused.Err);
        Assert.Equal(
            0, (await CommandRun.Of("die", designed.Layout, "--order", Order, "--bends", demo, "--out", place, "--quiet")).Code);
        string[] bend = File.ReadLines(Path.Combine(place, "rule.csv")).First(l => l.Contains(",bend,")).Split(',');
        Assert.True(double.Parse(bend[8], CultureInfo.InvariantCulture) > double.Parse(bend[5], CultureInfo.InvariantCulture));
    }

    [Fact]
    public async Task A_die_is_designed_written_checked_and_planned_with()
    {
        CommandRun run = designed.Run;

        Assert.Equal(0, run.Code);
        Assert.Equal(
            [
                "board-cut.dxf", "board-cut.pdf", "board-cut.svg", "board.dxf", "cavity.dxf", "cavity.png", "cavity.svg", "die.dxf",
                "die.json", "die.pdf", "die.png", "die.svg", "ejection-cut.dxf", "order.png", "order.svg",
                "quote.html", "quote.txt", "rule-stock.csv",
                "rule-stock.png", "rule-stock.svg", "rule.csv", "rule.png", "rule.svg", "section.png", "section.svg", "template.png",
                "template.svg",
            ],
            Directory.GetFiles(designed.Results).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
        JsonElement die = JsonDocument.Parse(run.Out).RootElement;
        int repeats = die.GetProperty("strike").GetProperty("repeats").GetInt32();
        int cavities = die.GetProperty("cavities").GetArrayLength();
        Assert.Equal(DieCases.PanelLay.Bands[0].Repeat.Panels.Count * repeats, cavities);
        Assert.Equal(repeats * DieCases.PanelLay.Bands[0].Repeat.LengthMm, die.GetProperty("feedMm").GetDouble(), 9);
        Assert.Equal("placeholder", die.GetProperty("forceBasis").GetString());
        Assert.Equal(JsonValueKind.Null, die.GetProperty("pressSharePercent").ValueKind);
        Assert.Contains("NOT MEASURED", run.Err, StringComparison.Ordinal);
        Assert.Equal(0, (await CommandRun.Of("check", designed.Die)).Code);

        File.WriteAllText(
            folder.Path("roll.json"),
            """{ "schema": "feltnest/roll/1", "name": "R", "lengthM": 3, "widths": [ { "xM": 0, "widthMm": 300 } ] }""");
        CommandRun plan = await CommandRun.Of(
            "roll", designed.Layout, "--roll", folder.Path("roll.json"), "--die", designed.Die, "--out", folder.Path("plan"), "--json");
        Assert.Equal(0, plan.Code);
        Assert.Equal(repeats, JsonDocument.Parse(plan.Out).RootElement.GetProperty("pattern").GetProperty("repeats").GetInt32());
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("plan/roll.json"))).Code);
    }

    [Fact]
    public async Task The_same_question_gives_the_same_bytes()
    {
        string[] files = Directory.GetFiles(designed.Results);
        byte[][] first = [.. files.Select(File.ReadAllBytes)];
        Assert.Equal(2, (await designed.Design()).Code);
        Assert.Equal(0, (await designed.Design("--force")).Code);

        Assert.All(files.Zip(first), pair => Assert.Equal(pair.Second, File.ReadAllBytes(pair.First)));
    }

    [Fact]
    public async Task A_changed_die_is_a_violation()
    {
        JsonNode root = JsonNode.Parse(File.ReadAllText(designed.Die))!;
        root["cavities"]![0]!["xMm"] = root["cavities"]![0]!["xMm"]!.GetValue<double>() + 0.01;
        File.WriteAllText(folder.Path("changed.json"), root.ToJsonString());

        Assert.Equal(4, (await CommandRun.Of("check", folder.Path("changed.json"))).Code);
    }

    [Fact, Trait("tier", "long")]
    public async Task Measured_points_pass_or_fail_and_inches_are_found()
    {
        IReadOnlyList<Point2> outline = DieCases.PanelLay.Parts[0].Outline.Points;
        File.WriteAllText(folder.Path("good.csv"), Csv(outline, 1));
        File.WriteAllText(folder.Path("small.csv"), Csv([.. outline.Select(p => p * 0.97)], 1));
        File.WriteAllText(folder.Path("inches.csv"), Csv(outline, 1 / 25.4));
        File.WriteAllText(folder.Path("few.csv"), Csv([.. outline.Take(5)], 1));

        CommandRun good = await Judged("good.csv", designed.Die);
        CommandRun small = await Judged("small.csv", designed.Die);
        CommandRun asLayout = await Judged("good.csv", designed.Layout, "--profile", "0.5");
        Assert.Equal((0, 4, 0), (good.Code, small.Code, asLayout.Code));
        Assert.True(JsonDocument.Parse(good.Out).RootElement.GetProperty("passed").GetBoolean());
        Assert.False(JsonDocument.Parse(small.Out).RootElement.GetProperty("passed").GetBoolean());
        Assert.Equal(0.5, JsonDocument.Parse(asLayout.Out).RootElement.GetProperty("panelProfileMm").GetDouble());

        CommandRun inches = await Judged("inches.csv", designed.Die);
        CommandRun few = await Judged("few.csv", designed.Die);
        Assert.Equal((2, 2), (inches.Code, few.Code));
        Assert.Contains("25.4 x too small: these are inches", Assert.Single(inches.Messages), StringComparison.Ordinal);
        Assert.Contains("holds 5 points: at least 12", Assert.Single(few.Messages), StringComparison.Ordinal);
        Assert.Equal(string.Empty, inches.Out + few.Out);
    }

    // A die made exactly as drawn: its own drawing stands for the measurement.
    [Fact]
    public async Task A_die_as_made_is_judged_from_its_drawing_or_from_points()
    {
        CommandRun drawn = await CommandRun.Of(
            "die", designed.Die, "--as-made", Path.Combine(designed.Results, "die.dxf"), "--out", folder.Path("made"), "--json");
        Assert.True(drawn.Code == 0, drawn.Err);
        Assert.Equal("conforms", JsonDocument.Parse(drawn.Out).RootElement.GetProperty("verdict").GetString());
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("made/made.json"))).Code);

        JsonNode older = JsonNode.Parse(File.ReadAllText(designed.Die))!;
        older.AsObject().Remove("positionMm");
        File.WriteAllText(folder.Path("older.json"), older.ToJsonString());
        CommandRun unstated = await CommandRun.Of(
            "die", folder.Path("older.json"), "--as-made", Path.Combine(designed.Results, "die.dxf"), "--out", folder.Path("older"));
        Assert.Equal(2, unstated.Code);
        Assert.Contains("positionMm: is not stated", Assert.Single(unstated.Messages), StringComparison.Ordinal);

        JsonElement die = JsonDocument.Parse(File.ReadAllText(designed.Die)).RootElement;
        int cavities = die.GetProperty("cavities").GetArrayLength();
        File.WriteAllText(folder.Path("bad.csv"), $"cavity,u,v\n{cavities + 1},1,2\n");
        CommandRun bad = await CommandRun.Of("die", designed.Die, "--as-made", folder.Path("bad.csv"));
        Assert.Equal(2, bad.Code);
        Assert.Contains(
            $"line 2, cavity: {cavities + 1} is outside 1 to {cavities}", Assert.Single(bad.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public void The_request_for_a_quote_names_the_hash_of_every_file_that_goes_with_it()
    {
        string request = File.ReadAllText(Path.Combine(designed.Results, "quote.txt"));
        string page = File.ReadAllText(Path.Combine(designed.Results, "quote.html"));

        Assert.All(
            (string[])["die.json", "die.dxf", "cavity.dxf", "board.dxf", "die.pdf"],
            name =>
            {
                byte[] hash = System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(Path.Combine(designed.Results, name)));
                string line = request.Split('\n').Single(l => l.StartsWith($"{name} ", StringComparison.Ordinal));
                Assert.EndsWith(Convert.ToHexStringLower(hash), line, StringComparison.Ordinal);
                Assert.Contains(Convert.ToHexStringLower(hash), page, StringComparison.Ordinal);
            });
        Assert.Contains("local codes", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_answer_s_price_and_life_go_into_the_costs_and_nothing_else_changes()
    {
        string costs = RepositoryFile.PathOf("shapes", "demo", "costs.json");
        string answer = RepositoryFile.PathOf("shapes", "demo", "dies", "quote-answer.json");
        CommandRun run = await CommandRun.Of(
            "die", designed.Die, "--quote-answer", answer, "--costs", costs, "--out", folder.Path("quoted"), "--json");
        Assert.True(run.Code == 0, run.Err);

        JsonNode before = JsonNode.Parse(File.ReadAllText(costs))!;
        JsonNode after = JsonNode.Parse(File.ReadAllText(folder.Path("quoted/costs.json")))!;
        DieCost die = CostsReader.Read(folder.Path("quoted/costs.json")).Die!;
        Assert.Equal((2150, 55000, 2, 690), ((int)die.Price, die.LifeStrikes, die.ReRules, (int)die.ReRulePrice));
        before.AsObject().Remove("die");
        after.AsObject().Remove("die");
        Assert.True(JsonNode.DeepEquals(before, after));
    }

    [Theory]
    [InlineData("die: 'other' is another die than 'gang die A'", "die", "other")]
    [InlineData("revision: 'Z' is not the die's: A", "revision", "Z")]
    [InlineData("dieSha256: is the hash of another file", "dieSha256", "00ff")]
    [InlineData("currency: is EUR and the quote is in GBP", "currency", "GBP")]
    [InlineData("reRulePrice: is missing: the die can be ruled again 2 times", "reRulePrice", null)]
    public async Task An_answer_that_does_not_belong_here_is_refused(string told, string field, string? value)
    {
        JsonNode answer = JsonNode.Parse(File.ReadAllText(RepositoryFile.PathOf("shapes", "demo", "dies", "quote-answer.json")))!;
        answer[field] = value;
        File.WriteAllText(folder.Path("answer.json"), answer.ToJsonString());

        CommandRun run = await CommandRun.Of(
            "die", designed.Die, "--quote-answer", folder.Path("answer.json"), "--costs",
            RepositoryFile.PathOf("shapes", "demo", "costs.json"), "--out", folder.Path("no"));

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("no")));
    }

    [Theory]
    [InlineData("--quote-answer", "a.json", "--costs: is needed")]
    [InlineData("--costs", "c.json", "--costs: belongs to --quote-answer: give it too")]
    public async Task An_answer_and_costs_go_together(string option, string value, string told)
    {
        CommandRun run = await CommandRun.Of("die", designed.Die, option, value);

        Assert.Equal(2, run.Code);
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--position: belongs to --as-made: give it too", "--position", "0.5")]
    [InlineData("--uncertainty: belongs to --measured or --as-made: give it too", "--uncertainty", "0.05")]
    [InlineData("--in-frame: belongs to --measured or --as-made: give it too", "--in-frame", "--readings", "r.csv")]
    [InlineData("--newer: belongs to --readings: give it too", "--newer", "die.json", "--measured", "p.csv")]
    [InlineData("--readings: cannot go with --measured: give one of them", "--readings", "r.csv", "--measured", "p.csv")]
    [InlineData("--cavities: belongs to the design of a die and cannot go with --measured", "--measured", "p.csv", "--cavities", "4")]
    public async Task An_option_of_another_job_is_refused(string told, params string[] options)
    {
        CommandRun run = await CommandRun.Of(["die", designed.Die, .. options]);

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    // The same panel: what its worst place proves depends on how well it was measured.
    [Theory]
    [InlineData("0.02", 0, "conforms")]
    [InlineData("0.5", 0, "undecided")]
    public async Task The_uncertainty_decides_what_is_proved(string uncertainty, int code, string verdict)
    {
        File.WriteAllText(folder.Path("round.csv"), Csv([.. DieCases.PanelLay.Parts[0].Outline.Points.Select(p => p * 1.006)], 1));

        CommandRun run = await CommandRun.Of(
            "die", designed.Layout, "--measured", folder.Path("round.csv"), "--uncertainty", uncertainty, "--out",
            folder.Path($"u{uncertainty}"), "--json");

        Assert.Equal((code, verdict), (run.Code, JsonDocument.Parse(run.Out).RootElement.GetProperty("verdict").GetString()));
    }

    [Fact]
    public async Task Readings_show_the_drift_and_a_newer_revision_supersedes()
    {
        File.WriteAllText(
            folder.Path("readings.csv"),
            "date,strikes,cavity,ply,offMm,worstMm\n2026-01-10,0,1,single,0.05,0.10\n2026-02-10,20000,1,single,0.1,0.30\n");
        JsonNode newer = JsonNode.Parse(File.ReadAllText(designed.Die))!;
        newer["revision"] = "B";
        File.WriteAllText(folder.Path("newer.json"), newer.ToJsonString());

        CommandRun run = await CommandRun.Of(
            "die", designed.Die, "--readings", folder.Path("readings.csv"), "--newer", folder.Path("newer.json"), "--out",
            folder.Path("life"), "--json");
        Assert.Equal(0, run.Code);
        JsonElement life = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal(50_000, life.GetProperty("reRuleAt").GetDouble(), 1e-6);
        Assert.Equal(50_000, life.GetProperty("die").GetProperty("lifeStrikes").GetDouble(), 1e-6);
        Assert.Equal("gang die A revision B", life.GetProperty("supersededBy").GetString());
        Assert.Contains("SUPERSEDED", run.Err, StringComparison.Ordinal);

        File.WriteAllText(folder.Path("bad.csv"), "date,strikes,cavity,ply,offMm,worstMm\n2026-01-10,0,99,single,0.05,0.10\n");
        Assert.Contains(
            "line 2, cavity: 99 is outside 1 to", (await CommandRun.Of("die", designed.Die, "--readings", folder.Path("bad.csv"))).Err,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3, "1999 cavities do not tile this layout", "--cavities", "1999")]
    [InlineData(2, "--band: 2 is not there", "--band", "2")]
    [InlineData(2, "--cavities: '0' is not allowed", "--cavities", "0")]
    public async Task What_cannot_be_is_one_line_and_leaves_nothing(int code, string told, params string[] options)
    {
        CommandRun run =
            await CommandRun.Of(["die", designed.Layout, "--order", Order, "--press", Beam, "--out", folder.Path("out"), .. options]);

        Assert.Equal(code, run.Code);
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
        Assert.Equal(string.Empty, run.Out);
        Assert.False(Directory.Exists(folder.Path("out")));
    }

    [Fact]
    public async Task A_press_too_small_says_what_would_do()
    {
        JsonNode press = JsonNode.Parse(File.ReadAllText(Beam))!;
        press["bed"]!["lengthMm"] = 150;
        press["bed"]!["widthMm"] = 150;
        File.WriteAllText(folder.Path("small.json"), press.ToJsonString());
        CommandRun small = await CommandRun.Of(
            "die", designed.Layout, "--order", Order, "--press", folder.Path("small.json"), "--out", folder.Path("out"));

        Assert.Equal(3, small.Code);
        Assert.Contains("needs a bed of", Assert.Single(small.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_layout_alone_makes_a_die_of_usual_figures_and_says_so()
    {
        CommandRun run = await CommandRun.Of("die", designed.Layout, "--out", folder.Path("alone"), "--quiet");

        Assert.Equal((0, string.Empty), (run.Code, run.Out));
        Assert.Contains(
            run.Messages,
            m => m.Contains(
                "no order file: rule, board, ejection, tolerances and force are usual figures, assumed: confirm each",
                StringComparison.Ordinal));
        Assert.Contains(run.Messages, m => m.Contains("NOT MEASURED: do not set the press from this", StringComparison.Ordinal));
        Assert.Contains("usual figures, assumed", File.ReadAllText(folder.Path("alone/die.json")), StringComparison.Ordinal);
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("alone/die.json"))).Code);
    }

    [Fact]
    public async Task A_die_of_two_parts_gives_each_its_own_sheets_and_drawing()
    {
        RollLayout lay = DieCases.TwoParts;
        File.WriteAllBytes(folder.Path("two.json"), LayoutWriter.Write(lay, YieldAccount.Of(lay)));
        CommandRun run = await CommandRun.Of(
            "die", folder.Path("two.json"), "--order", Order, "--press", Beam, "--out", folder.Path("two"), "--json", "--quiet");

        Assert.Equal(0, run.Code);
        string[] names =
        [
            .. Directory.GetFiles(folder.Path("two"))
                .Select(f => Path.GetFileName(f))
                .Where(n => n.StartsWith("cavity", StringComparison.Ordinal) || n.StartsWith("template", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(
            [
                "cavity-a.dxf", "cavity-a.png", "cavity-a.svg", "cavity-b.dxf", "cavity-b.png", "cavity-b.svg", "template-a.png",
                "template-a.svg", "template-b.png", "template-b.svg",
            ], names);
        Assert.Equal(
            ["a", "b"],
            JsonDocument.Parse(run.Out).RootElement.GetProperty("edges").EnumerateArray().Select(e => e.GetProperty("letter").GetString()));

        // 40 x 20 and 30 x 20, by their own drawings.
        Assert.Equal(800, PartReader.Read(folder.Path("two/cavity-a.dxf")).Outline!.Centred.Area, 1e-6);
        Assert.Equal(600, PartReader.Read(folder.Path("two/cavity-b.dxf")).Outline!.Centred.Area, 1e-6);
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("two/die.json"))).Code);
        Assert.Equal(
            2, (await CommandRun.Of("die", folder.Path("two.json"), "--order", Order, "--press", Beam, "--out", folder.Path("two"))).Code);
    }

    [Fact]
    public async Task A_measured_panel_of_a_die_of_two_parts_wants_its_letter()
    {
        RollLayout lay = DieCases.TwoParts;
        File.WriteAllBytes(
            folder.Path("die.json"),
            DieWriter.Write(
                DieDesigner.Run(new GangRequest(lay, 0, DieCases.Order, DieCases.Beam, null), TestContext.Current.CancellationToken)));
        File.WriteAllText(folder.Path("short.csv"), Csv([.. Enumerable.Range(0, 40).Select(k => Around(30, 20, k / 40.0))], 1));

        CommandRun none = await Judged("short.csv", folder.Path("die.json"));
        CommandRun right = await Judged("short.csv", folder.Path("die.json"), "--part", "b");
        CommandRun other = await Judged("short.csv", folder.Path("die.json"), "--part", "c", "--force");
        Assert.Equal((2, 0, 2), (none.Code, right.Code, other.Code));
        Assert.Contains("--part: is missing: the die cuts the parts a, b", Assert.Single(none.Messages), StringComparison.Ordinal);
        Assert.True(JsonDocument.Parse(right.Out).RootElement.GetProperty("passed").GetBoolean());
        Assert.Contains("--part: 'c' is not there", Assert.Single(other.Messages), StringComparison.Ordinal);
        Assert.False(
            JsonDocument.Parse((await Judged("short.csv", folder.Path("die.json"), "--part", "a", "--force")).Out).RootElement
                .GetProperty("passed")
                .GetBoolean());
    }

    // A place round a plate, by its share of the way round.
    private static Point2 Around(double length, double width, double share)
    {
        double at = share * 2 * (length + width);
        return at < length ? new(at - (length / 2), -width / 2)
            : at < length + width ? new(length / 2, at - length - (width / 2))
            : at < (2 * length) + width ? new((1.5 * length) + width - at, width / 2) : new(-length / 2, (2 * length) + (1.5 * width) - at);
    }

    private static string Csv(IReadOnlyList<Point2> points, double factor) =>
        "u,v\n"
            + string.Concat(
                points
                    .Select(p => (p * factor).Turned(0.7) + new Point2(3, -8))
                    .Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X:R},{p.Y:R}\n")));

    private Task<CommandRun> Judged(string points, string wanted, params string[] more) => CommandRun.Of(
        [
            "die", wanted, "--measured", folder.Path(points), "--out", folder.Path($"judged-{points}-{Path.GetFileName(wanted)}"), "--json",
            "--quiet", .. more,
        ]);
}
