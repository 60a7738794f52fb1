using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Drawing.Sheets;
using FeltNest.Files.Studies;
using FeltNest.Layout;
using FeltNest.Report;

namespace FeltNest.Runs.Panels;

/// <summary>The seam families side by side at the ball's waist.</summary>
internal sealed class SeamsRun : IRun
{
    /// <summary>The ball; its seam is replaced.</summary>
    public required BallSpec Ball { get; init; }

    /// <summary>The question to the layout engine for a part.</summary>
    public required Func<LayoutPart, LayoutRequest> Lay { get; init; }

    /// <summary>Told each seam as it is done, or null.</summary>
    public IProgress<SeamEntry>? Progress { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["seams.json", "seams.csv", "seams.svg", "seams.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        SeamComparison comparison = SeamStudy.Run(Ball, Lay, Progress, search);
        resultThere?.Invoke();
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => SeamsWriter.Json(comparison)), new(FileNames[1], () => SeamsWriter.Csv(comparison)),
                .. ResultFile.Pictures(FileNames.Skip(2), () => SeamsSheet.Draw(comparison)),
            ],
            Table = SeamsReport.Text(comparison),
            CutShort = comparison.CutShort,
        };
    }
}
