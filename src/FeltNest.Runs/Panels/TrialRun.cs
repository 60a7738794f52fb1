using FeltNest.Ball;
using FeltNest.Drawing.Sheets.Trials;
using FeltNest.Files.Csv;
using FeltNest.Files.Trials;
using FeltNest.Panel.Trial;
using FeltNest.Report;

namespace FeltNest.Runs.Panels;

/// <summary>Readings of a trial wrap: what they show, and the panel corrected where the drawing can mend it.</summary>
internal sealed class TrialRun : IRun
{
    /// <summary>The ball that was wrapped.</summary>
    public required BallSpec Ball { get; init; }

    /// <summary>The readings' file.</summary>
    public required string ReadingsFile { get; init; }

    /// <summary>How the lists are read.</summary>
    public ListReading Lists { get; init; } = new();

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["trial.json", "trial.svg", "trial.png", "corrected.json"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? searchOver, CancellationToken search, CancellationToken interrupt)
    {
        IReadOnlyList<TrialReading> readings = TrialReader.Read(Lists.Open(ReadingsFile), Ball);
        TrialResult trial = TrialCorrection.Run(Ball, readings, ReadingsFile);
        string name = Path.GetFileNameWithoutExtension(ReadingsFile);
        ResultFile[] corrected = trial.Corrected is { } panel
            ? [new(FileNames[3], () => TrialWriter.Outline($"{Ball.Name}, corrected by {name}", panel))]
            : [];
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => TrialWriter.Write(Ball, name, trial)),
                .. ResultFile.Pictures(FileNames.Skip(1).Take(2), () => TrialSheet.Draw(Ball, name, trial, readings)),
                .. corrected,
            ],
            Table = TrialReport.Text(Ball, name, trial),
            Remarks =
            [
                .. Lists.Notes.Select(Remark.Note),
                .. trial.Corrected is null
                    ? [Remark.Note($"nothing to mend: {FileNames[3]} is not written, and one left by an earlier run is void")]
                    : Array.Empty<Remark>(),
            ],
        };
    }
}
