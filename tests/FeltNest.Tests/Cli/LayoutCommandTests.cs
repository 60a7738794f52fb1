using System.Globalization;
using System.Text.Json;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli;

public sealed class LayoutCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    private static string Ball { get; } = RepositoryFile.PathOf("shapes", "balls", "type-2.json");

    private static string DogBone { get; } = RepositoryFile.PathOf("shapes", "outlines", "dog-bone.json");

    private static string BowTie { get; } = RepositoryFile.PathOf("shapes", "outlines", "bow-tie.csv");

    [Fact]
    public async Task A_ball_gives_its_layout_and_its_panel_and_the_layout_passes_the_check()
    {
        CommandRun run = await CommandRun.Of("layout", Ball, "--width", "40cm", "--effort", "1", "--out", folder.Path("out"));

        Assert.Equal(0, run.Code);
        Assert.Contains("Yield (full roll width, one repeat, before roll ends and faults)", run.Out, StringComparison.Ordinal);
        Assert.Equal(
            ["layout-tiles.pdf", "layout.json", "layout.pdf", "layout.png", "layout.svg", "panel.json", "panel.png", "panel.svg"],
            Directory.GetFiles(folder.Path("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        CommandRun check = await CommandRun.Of("check", folder.Path("out/layout.json"));
        Assert.Equal((0, string.Empty), (check.Code, check.Err));
        Assert.Contains("passed", check.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_is_all_there_is_on_stdout_and_agrees_with_the_file()
    {
        CommandRun run = await CommandRun.Of("layout", BowTie, "--width", "300", "--effort", "1", "--json", "--out", folder.Path("out"));

        Assert.Equal(0, run.Code);
        Assert.Equal(File.ReadAllText(folder.Path("out/layout.json")), run.Out);
        JsonElement root = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal("feltnest/layout/1", root.GetProperty("schema").GetString());
        JsonElement account = root.GetProperty("yield").GetProperty("account");
        Assert.Equal(100, account.EnumerateObject().Sum(share => share.Value.GetDouble()), 6);
        Assert.True(root.GetProperty("search").GetProperty("leastGapMm").GetDouble() >= 4 - 1e-4);
    }

    [Fact]
    public async Task A_layout_for_a_measured_roll_is_the_one_for_its_least_width()
    {
        string roll = folder.Write("roll.json", """
            { "schema": "feltnest/roll/1", "name": "R9", "lengthM": 40,
              "widths": [ { "xM": 0, "widthMm": 304 }, { "xM": 12.5, "widthMm": 300 }, { "xM": 20, "widthMm": 302 } ],
              "faults": [ { "xMm": 100, "yMm": 150, "radiusMm": 90 } ] }
            """);
        CommandRun run = await CommandRun.Of("layout", BowTie, "--roll", roll, "--effort", "1", "--out", folder.Path("r"));
        await CommandRun.Of("layout", BowTie, "--width", "300", "--effort", "1", "--out", folder.Path("w"));

        Assert.Equal(0, run.Code);
        Assert.Equal(File.ReadAllText(folder.Path("w/layout.json")), File.ReadAllText(folder.Path("r/layout.json")));
        Assert.Contains(
            run.Messages, line => line.Contains(
                "laid out for 300 mm, the least width of roll R9, measured at 12.5 m (widest 304 mm)", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("give the width of the roll, or a roll as measured")]
    [InlineData("both say how wide the roll is", "--width", "300", "--roll", "roll.json")]
    public async Task A_width_and_a_measured_roll_exclude_each_other_and_one_is_wanted(string told, params string[] options)
    {
        CommandRun run = await CommandRun.Of(["layout", BowTie, "--out", folder.Path("out"), .. options]);

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains($"--width, --roll: {told}", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Quiet_says_nothing_when_all_is_well()
    {
        CommandRun run = await CommandRun.Of("layout", BowTie, "--width", "300", "--effort", "1", "--quiet", "--out", folder.Path("out"));

        Assert.Equal(new CommandRun(0, string.Empty, string.Empty), run);
    }

    [Fact]
    public async Task A_panel_file_lays_like_the_ball_it_came_from()
    {
        Assert.Equal(0, (await CommandRun.Of("panel", Ball, "--out", folder.Path("p"))).Code);

        CommandRun fromBall = await CommandRun.Of("layout", Ball, "--width", "300", "--effort", "1", "--json", "--out", folder.Path("a"));
        CommandRun fromPanel = await CommandRun.Of(
            "layout", folder.Path("p/panel.json"), "--width", "300", "--effort", "1", "--json", "--out", folder.Path("b"));

        Assert.Equal((0, 0), (fromBall.Code, fromPanel.Code));
        Assert.Equal(PanelsPerMetre(fromBall), PanelsPerMetre(fromPanel), 0.01 * PanelsPerMetre(fromBall));
        Assert.NotEqual(JsonValueKind.Null, Yield(fromPanel).GetProperty("perThousandBalls").GetProperty("kilograms").ValueKind);
    }

    [Fact]
    public async Task A_width_too_small_is_told_with_what_would_work_and_code_3()
    {
        CommandRun run = await CommandRun.Of("layout", DogBone, "--width", "60", "--out", folder.Path("out"));

        Assert.Equal((3, string.Empty), (run.Code, run.Out));
        Assert.Matches(@"^feltnest: .*\d+.* mm", run.Messages[^1]);
        Assert.Empty(Directory.GetFileSystemEntries(folder.Root));
    }

    [Fact]
    public async Task Existing_results_are_kept_unless_force_is_given()
    {
        string[] args = ["layout", BowTie, "--width", "300", "--effort", "1", "--out", folder.Path("out")];
        Assert.Equal(0, (await CommandRun.Of(args)).Code);
        byte[] first = File.ReadAllBytes(folder.Path("out/layout.svg"));

        CommandRun again = await CommandRun.Of(args);
        Assert.Equal((2, string.Empty), (again.Code, again.Out));
        Assert.EndsWith(
            "layout.json: exists already: give --force to overwrite it, or another --out", Assert.Single(again.Messages),
            StringComparison.Ordinal);

        Assert.Equal(0, (await CommandRun.Of([.. args, "--force"])).Code);
        Assert.Equal(first, File.ReadAllBytes(folder.Path("out/layout.svg")));
    }

    [Fact]
    public async Task A_folder_that_cannot_be_written_is_told_before_the_search()
    {
        CommandRun run = await CommandRun.Of("layout", BowTie, "--width", "300", "--out", Path.Combine(folder.Write("file", "x"), "out"));

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains("cannot be written", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_decimal_mark_of_the_shell_changes_nothing()
    {
        CultureInfo commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        commas.NumberFormat.NumberDecimalSeparator = ",";
        commas.NumberFormat.NumberGroupSeparator = ".";
        string[] args = ["layout", BowTie, "--width", "300.5", "--gap", "3.5", "--effort", "1", "--out"];
        CommandRun points = await CommandRun.Of([.. args, folder.Path("a")]);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = commas;
            CommandRun inCommas = await CommandRun.Of([.. args, folder.Path("b")]);

            Assert.Equal((0, points.Out), (inCommas.Code, inCommas.Out));
            foreach (string file in new[] { "layout.json", "layout.svg", "layout.png" })
            {
                Assert.Equal(File.ReadAllBytes(folder.Path("a/" + file)), File.ReadAllBytes(folder.Path("b/" + file)));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public async Task A_search_capped_in_time_says_that_it_was_cut_short()
    {
        CommandRun run = await CommandRun.Of(
            "layout", Ball, "--width", "1500", "--effort", "1000", "--seconds", "1.5", "--json", "--out", folder.Path("out"));

        Assert.Equal(0, run.Code);
        Assert.True(JsonDocument.Parse(run.Out).RootElement.GetProperty("search").GetProperty("cutShort").GetBoolean());
    }

    [Fact]
    public async Task An_interrupted_search_saves_the_best_so_far_and_ends_with_130()
    {
        using CancellationTokenSource stop = new(TimeSpan.FromSeconds(1.5));

        CommandRun run =
            await CommandRun.Of(stop.Token, "layout", Ball, "--width", "1500", "--effort", "1000", "--json", "--out", folder.Path("out"));

        Assert.Equal(130, run.Code);
        Assert.True(
            JsonDocument.Parse(File.ReadAllText(folder.Path("out/layout.json"))).RootElement
                .GetProperty("search")
                .GetProperty("cutShort")
                .GetBoolean());
    }

    [Fact]
    public async Task What_was_assumed_about_a_drawing_is_said_and_kept_in_the_result()
    {
        string path = folder.Write("plate.svg", """<svg xmlns="http://www.w3.org/2000/svg"><rect width="400" height="200"/></svg>""");

        CommandRun run = await CommandRun.Of("layout", path, "--width", "300", "--effort", "1", "--json", "--out", folder.Path("out"));

        Assert.Equal(0, run.Code);
        Assert.Contains($"feltnest: note: {path}: no viewBox: a user unit is a CSS pixel, 96 to the inch (0.264583 mm)", run.Messages);
        Assert.StartsWith(
            "no viewBox", JsonDocument.Parse(run.Out).RootElement.GetProperty("assumptions").GetProperty("outline").GetString(),
            StringComparison.Ordinal);
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("out/layout.json"))).Code);
    }

    private static JsonElement Yield(CommandRun run) => JsonDocument.Parse(run.Out).RootElement.GetProperty("yield");

    private static double PanelsPerMetre(CommandRun run) => Yield(run).GetProperty("panelsPerMetre").GetDouble();
}
