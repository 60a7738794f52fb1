using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Drawing.Sheets;
using FeltNest.Files.Studies;
using FeltNest.Layout;
using FeltNest.Report;

namespace FeltNest.Runs.Panels;

/// <summary>Strain against felt over a range of waists.</summary>
internal sealed class WaistRun : IRun
{
    /// <summary>The ball; its waist is replaced.</summary>
    public required BallSpec Ball { get; init; }

    /// <summary>Waists on the fitted sphere, mm.</summary>
    public required IReadOnlyList<double> WaistsMm { get; init; }

    /// <summary>The question to the layout engine for a part.</summary>
    public required Func<LayoutPart, LayoutRequest> Lay { get; init; }

    /// <summary>Told each waist as it is done, or null.</summary>
    public IProgress<WaistPoint>? Progress { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["waist.json", "waist.csv", "waist.svg", "waist.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        WaistTradeOff study = WaistStudy.Run(Ball, WaistsMm, Lay, Progress, search);
        resultThere?.Invoke();
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => WaistWriter.Json(study)), new(FileNames[1], () => WaistWriter.Csv(study)),
                .. ResultFile.Pictures(FileNames.Skip(2), () => WaistSheet.Draw(study)),
            ],
            Table = WaistReport.Text(study),
            CutShort = study.CutShort,
        };
    }
}
