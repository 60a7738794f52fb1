using FeltNest.Ball;
using FeltNest.Drawing.Sheets;
using FeltNest.Files.Outlines;
using FeltNest.Files.Panels;
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
        bool byMap = Outline.EdgeMap is not null;
        WrapRequest request =
            Outline.EdgeMap is { } map ? WrapRequest.For(Ball, map) : WrapRequest.For(Ball, Outline.Curve);
        WrapResult wrap = PanelWrap.Lay(request);
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => WrapWriter.Write(Ball, Outline.Name, byMap, request.TurnedDeg, wrap)),
                .. ResultFile.Pictures(FileNames.Skip(1), () => WrapSheet.Draw(Ball, Outline.Name, wrap)),
            ],
            Table = WrapReport.Text(Ball, Outline.Name, byMap, wrap),
            Remarks = [.. Remarks(request, wrap)],
        };
    }

    private IEnumerable<Remark> Remarks(WrapRequest request, WrapResult wrap)
    {
        if (request.TurnedDeg != 0)
        {
            yield return Remark.Note(
                Invariant($"{OutlineFile}: turned by {request.TurnedDeg:0.00} degrees, so that its long axis lies along u"));
        }

        if (wrap.EdgeHeld is { } held && held.MaxStretchPercent > Ball.Felt.MaxStretchPercent)
        {
            yield return Remark.Warning(
                Invariant($"the felt is stretched by {held.MaxStretchPercent:0.0} %, above felt.maxStretchPercent ")
                    + Invariant($"{Ball.Felt.MaxStretchPercent:0.##}"));
        }
    }
}
