using FeltNest.Ball;
using FeltNest.Drawing.Sheets;
using FeltNest.Files.Outlines;
using FeltNest.Files.Panels;
using FeltNest.Panel;
using FeltNest.Panel.Proven;
using FeltNest.Report;

namespace FeltNest.Runs.Panels;

/// <summary>The ball's values that reproduce a measured panel best.</summary>
internal sealed class ProvenRun : IRun
{
    /// <summary>The ball to begin with.</summary>
    public required BallSpec Ball { get; init; }

    /// <summary>The measured panel.</summary>
    public required ImportedOutline Outline { get; init; }

    /// <summary>Values of the ball that are known.</summary>
    public ProvenHold Hold { get; init; } = ProvenHold.Nothing;

    /// <summary>The outline's file.</summary>
    public required string OutlineFile { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["proven.json", "proven.svg", "proven.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [.. Outline.Notes.Select(note => $"{OutlineFile}: {note}")];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        ProvenFit fit = ProvenFamilies.Fit(
            Ball, NamedInput.Of(OutlineFile, () => UnitSlip.Sound(Outline.Curve, Ball.FittedRadiusMm)), Hold);
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => ProvenWriter.Write(Outline.Name, fit)),
                .. ResultFile.Pictures(FileNames.Skip(1), () => ProvenSheet.Draw(Outline.Name, fit)),
            ],
            Table = ProvenReport.Text(Outline.Name, fit),
            Remarks =
            [
                .. fit.Values
                    .Where(value => value.AtBound is not null)
                    .Select(value => Remark.Warning(
                        $"{value.Name} stands {value.AtBound}: the outline would be met better beyond it")),
                .. fit.Doubt is { IsUnlikely: true } doubt ? [Remark.Warning(DoubtWords.Unlikely(doubt))] : Array.Empty<Remark>(),
                .. fit.Ball.Seam.Curve == Ball.Seam.Curve ? Array.Empty<Remark>() :
                [
                    Remark.Warning($"the seam family {EnumWord.Of(fit.Ball.Seam.Curve)} comes clearly nearer than the ball file's "
                        + $"{EnumWord.Of(Ball.Seam.Curve)} and is taken: seam.curve stands in ballFields"),
                ],
            ],
        };
    }
}
