using FeltNest.Ball;
using FeltNest.Drawing.Sheets;
using FeltNest.Files.Panels;
using FeltNest.Panel;
using FeltNest.Panel.Budget;
using FeltNest.Panel.Wrap;
using FeltNest.Report;

namespace FeltNest.Runs.Panels;

/// <summary>The gap round the seam with its spread, and which tolerance to buy down first.</summary>
internal sealed class GapBudgetRun : IRun
{
    /// <summary>The ball.</summary>
    public required BallSpec Ball { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } =
        ["gap-budget.json", "gap-budget.csv", "gap-budget.svg", "gap-budget.png", "panel.svg", "panel.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        FlatPanel panel = PanelFlattener.Flatten(Ball);
        GapBudget budget = GapBudgetStudy.Run(Ball, panel);
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => GapBudgetWriter.Json(Ball, budget)),
                new(FileNames[1], () => GapBudgetWriter.Csv(budget)),
                .. ResultFile.Pictures(FileNames.Skip(2).Take(2), () => GapBudgetSheet.Draw(Ball, budget)),
                .. ResultFile.Pictures(FileNames.Skip(4), () => PanelSheet.Draw(Ball, PanelFit.Felt(Ball, panel), budget)),
            ],
            Table = GapBudgetReport.Text(Ball, budget),
            Remarks = [],
        };
    }
}
