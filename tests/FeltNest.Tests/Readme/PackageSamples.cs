using FeltNest.Ball;
using FeltNest.Cost.Compare;
using FeltNest.Die;
using FeltNest.Die.Gang;
using FeltNest.Die.Order;
using FeltNest.Layout;
using FeltNest.Layout.Limits;
using FeltNest.Panel;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using FeltNest.Tests.Files;
using FeltNest.Yield;
using Xunit;

namespace FeltNest.Tests.Readme;

/// <summary>The samples of the package's page: compiled as they stand there, and run.</summary>
public sealed class PackageSamples
{
    private static readonly string Source = RepositoryFile.PathOf("tests", "FeltNest.Tests", "Readme", "PackageSamples.cs");

    [Fact]
    public void The_samples_run_and_print_what_a_reader_expects()
    {
        StringWriter printed = new();
        Run(
            RepositoryFile.PathOf("shapes", "balls", "type-2.json"), RepositoryFile.PathOf("shapes", "demo", "rolls", "roll-a17.json"),
            printed);
        string[] lines = printed.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal(5, lines.Length);
        Assert.Matches(@"^1\d\d\.\d x \d\d\.\d mm, \d{4} mm2$", lines[0]);
        Assert.Matches(@"^\d+\.\d panels per metre, \d\d\.\d % waste$", lines[1]);
        Assert.Equal("least felt: 1500 mm", lines[2]);
        Assert.Matches(@"^\d+ good panels$", lines[3]);
        Assert.Matches(@"^\d+ cavities, \d+ mm of rule$", lines[4]);
    }

    [Fact]
    public void Every_sample_of_the_page_stands_in_this_file_word_for_word()
    {
        string page = File.ReadAllText(RepositoryFile.PathOf("src", "FeltNest", "README.md"));
        string source = Flat(File.ReadAllText(Source));
        string[] samples = [.. page.Split("```csharp\n").Skip(1).Select(part => part.Split("```")[0])];

        Assert.Equal(5, samples.Length);
        Assert.All(samples, sample => Assert.Contains(Flat(sample), source, StringComparison.Ordinal));
    }

    private static string Flat(string text) => string.Join('\n', text.Split('\n').Select(line => line.Trim())).Trim();

    // The samples write to the console; here it is the writer of that name.
    private static void Run(string path, string rollPath, StringWriter Console)
    {
        BallSpec ball = FeltCovers.ReadBall("type-2.json", File.ReadAllBytes(path));
        FlatPanel panel = FeltCovers.Panel(ball);
        Console.WriteLine($"{panel.LengthMm:0.0} x {panel.WidthMm:0.0} mm, {panel.AreaMm2:0} mm2");

        LayoutRequest request = new()
        {
            Part = FeltCovers.Part(ball, panel),
            RollWidthMm = 1500,
            Trims = EdgeTrims.Both(15),
            GapMm = 4,
            Rules = new LayoutRules(null, 0, RowRule.Same, false),
            Effort = 1,
            Seed = 1,
        };
        RollLayout layout = FeltCovers.Layout(request);
        YieldFigures yields = FeltCovers.Yield(layout);
        Console.WriteLine($"{yields.PanelsPerMetre:0.0} panels per metre, {yields.WastePercent:0.0} % waste");
        Assert.Empty(FeltCovers.Violations(layout));

        CompareCase[] cases = [CompareCase.Of(1370, request.Trims), CompareCase.Of(1500, request.Trims)];
        Comparison comparison = FeltCovers.Compare(new CompareRequest(request, cases, false, null, null));
        Console.WriteLine($"least felt: {comparison.Best.Case.Name}");

        FeltRoll roll = FeltCovers.ReadRoll("roll.json", File.ReadAllBytes(rollPath));
        RollRequest strikes = new() { Layout = layout, Roll = roll, RepeatsPerStrike = 1, GuidePlayMm = 0, FromMm = 0 };
        RollPlan plan = FeltCovers.Plan(strikes);
        Console.WriteLine($"{plan.GoodPanels} good panels");

        DieOrder order = FeltCovers.UsualOrder(layout);
        DieDesign die = FeltCovers.Die(new GangRequest(layout, 0, order, null, null));
        Console.WriteLine($"{die.Gang.Cavities.Count} cavities, {die.RuleLengthMm:0} mm of rule");
    }
}
