using System.Text.Json;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Cli.Panels;

public sealed class GapBudgetCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    private static string Ball { get; } = RepositoryFile.PathOf("shapes", "balls", "type-2.json");

    public void Dispose() => folder.Dispose();

    [Fact, Trait("tier", "long")]
    public async Task A_budget_is_written_with_its_pictures_and_passes_the_check()
    {
        CommandRun run = await CommandRun.Of(
            "panel", Ball, "--with", "tolerances.coreDiameterMm=0.1", "--with", "tolerances.placingTurnDeg=0.2", "--with",
            "seam.adhesiveLeastMm=0.5", "--with", "seam.adhesiveMostMm=0.9", "--gap-budget", "--json", "--out", folder.Path("budget"));

        Assert.True(run.Code == 0, run.Err);
        JsonElement budget = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal(2, budget.GetProperty("sources").GetArrayLength());
        Assert.Contains(
            budget.GetProperty("notInBudget").EnumerateArray(), field => field.GetString() == "tolerances.neutralLayer");
        Assert.Equal(JsonValueKind.Null, budget.GetProperty("afterCure").ValueKind);
        Assert.Equal(
            ["gap-budget.csv", "gap-budget.json", "gap-budget.png", "gap-budget.svg", "panel.png", "panel.svg"],
            Directory.GetFiles(folder.Path("budget")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Contains("Seam gap with tolerances", File.ReadAllText(folder.Path("budget/panel.svg")), StringComparison.Ordinal);
        Assert.Equal(121, File.ReadAllLines(folder.Path("budget/gap-budget.csv")).Length);
        Assert.Equal(0, (await CommandRun.Of("check", folder.Path("budget/gap-budget.json"))).Code);
    }

    [Fact]
    public async Task A_ball_without_tolerances_has_no_budget_and_says_what_to_state()
    {
        CommandRun run = await CommandRun.Of("panel", Ball, "--gap-budget", "--out", folder.Path("budget"));

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.Contains("tolerances: hold none that moves the seam gap", Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tolerances.weftModulusNPerMm=0.2", "tolerances.weftModulusNPerMm: 0.2 N/mm; what is off along one direction alone needs")]
    [InlineData("seam.adhesiveLeastMm=0.2", "seam.adhesiveLeastMm: stands without adhesiveMostMm")]
    [InlineData("tolerances.placingTurnDeg=6", "tolerances.placingTurnDeg: 6 degrees is outside 0 to 5 degrees")]
    [InlineData("tolerances.readAs=sigma", "tolerances.readAs")]
    public async Task A_tolerance_that_cannot_be_is_refused_in_one_line(string given, string told)
    {
        CommandRun run = await CommandRun.Of("panel", Ball, "--with", given, "--gap-budget", "--out", folder.Path("budget"));

        Assert.Equal(2, run.Code);
        Assert.Contains(told, Assert.Single(run.Messages), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_adhesive_range_that_ends_before_it_begins_is_refused()
    {
        CommandRun run = await CommandRun.Of(
            "panel", Ball, "--with", "seam.adhesiveLeastMm=0.6", "--with", "seam.adhesiveMostMm=0.2", "--out", folder.Path("panel"));

        Assert.Equal(2, run.Code);
        Assert.Contains(
            "seam.adhesiveMostMm: 0.2 mm is not above adhesiveLeastMm, 0.6 mm", Assert.Single(run.Messages), StringComparison.Ordinal);
    }
}
