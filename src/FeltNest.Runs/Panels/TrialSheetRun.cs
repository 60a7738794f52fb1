using FeltNest.Ball;
using FeltNest.Drawing.Sheets.Trials;
using FeltNest.Panel;

namespace FeltNest.Runs.Panels;

/// <summary>The sheet on which a trial wrap is recorded.</summary>
internal sealed class TrialSheetRun : IRun
{
    /// <summary>The ball that is wrapped.</summary>
    public required BallSpec Ball { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["trial-sheet.svg", "trial-sheet.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? searchOver, CancellationToken search, CancellationToken interrupt)
    {
        FlatPanel panel = PanelFlattener.Flatten(Ball);
        return new Outcome
        {
            Files = ResultFile.Pictures(FileNames, () => TrialRecordSheet.Draw(Ball, panel)),
            Table = "The record sheet of a trial wrap: print it true to size and fill it in.\n",
        };
    }
}
