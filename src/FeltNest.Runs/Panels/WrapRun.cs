using FeltNest.Ball;
using FeltNest.Drawing.Sheets;
using FeltNest.Files.Outlines;
using FeltNest.Files.Panels;
using FeltNest.Geometry;
using FeltNest.Panel;
using FeltNest.Panel.Wrap;
using FeltNest.Report;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Panels;

/// <summary>Any flat outline laid on a ball.</summary>
internal sealed class WrapRun : IRun
{
    /// <summary>The ball.</summary>
    public required BallSpec Ball { get; init; }

    /// <summary>The outline.</summary>
    public required ImportedOutline Outline { get; init; }

    /// <summary>The outline's file.</summary>
    public required string OutlineFile { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["wrap.json", "wrap.svg", "wrap.png"];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [.. Outline.Notes.Select(note => $"{OutlineFile}: {note}")];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        ArcOutline cut = NamedInput.Of(OutlineFile, () => UnitSlip.Sound(Outline.Curve, Ball.FittedRadiusMm));
        PieceResult wrap = PieceWrap.Lay(Ball, cut, Outline.EdgeMap);
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => WrapWriter.Write(Ball, Outline.Name, wrap)),
                .. ResultFile.Pictures(FileNames.Skip(1), () => WrapSheet.Draw(Ball, Outline.Name, wrap)),
            ],
            Table = WrapReport.Text(Ball, Outline.Name, wrap),
            Remarks = [.. Remarks(wrap)],
        };
    }

    private IEnumerable<Remark> Remarks(PieceResult wrap)
    {
        // Turns that two decimals do not show are not worth a word.
        const double unsaid = 0.005;
        if (Math.Abs(wrap.TurnedDeg) >= unsaid)
        {
            yield return Remark.Note(
                Invariant($"{OutlineFile}: turned by {wrap.TurnedDeg:0.00} degrees, so that its long axis lies along u"));
        }

        if (wrap.EdgeHeld is { } held && held.MaxStretchPercent > Ball.Felt.MaxStretchPercent)
        {
            yield return Remark.Warning(
                Invariant($"the felt is stretched by {held.MaxStretchPercent:0.0} %, above felt.maxStretchPercent ")
                    + Invariant($"{Ball.Felt.MaxStretchPercent:0.##}"));
        }
    }
}
