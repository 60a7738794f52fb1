using FeltNest.Ball;
using FeltNest.Drawing.Sheets;
using FeltNest.Files.Panels;
using FeltNest.Panel;
using FeltNest.Panel.Wrap;
using FeltNest.Report;
using FeltNest.Seam;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Panels;

/// <summary>The flat panel of a ball, its strains and its fit.</summary>
internal sealed class PanelRun : IRun
{
    /// <summary>Names of the files of a panel.</summary>
    public static IReadOnlyList<string> Names { get; } = ["panel.json", "panel.svg", "panel.png"];

    /// <summary>The ball.</summary>
    public required BallSpec Ball { get; init; }

    /// <summary>What the ball's file assumed.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>Its panel where it was made already, or null.</summary>
    public FlatPanel? Made { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames => Names;

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        FlatPanel panel = PanelFit.Felt(Ball, Made ?? PanelFlattener.Flatten(Ball));
        return new Outcome
        {
            Files = Files(Ball, panel),
            Table = PanelReport.Text(Ball, panel, Assumed),
            Remarks = [.. Warnings(Ball, panel), .. NearMirrors(Ball)],
        };
    }

    /// <summary>Files of a panel whose fit was felt.</summary>
    internal static IReadOnlyList<ResultFile> Files(BallSpec ball, FlatPanel panel) =>
        [new(Names[0], () => PanelWriter.Write(ball, panel)), .. ResultFile.Pictures(Names.Skip(1), () => PanelSheet.Draw(ball, panel))];

    /// <summary>What must be looked at on a panel.</summary>
    internal static IReadOnlyList<Remark> Warnings(BallSpec ball, FlatPanel panel) =>
        [.. PanelWarnings.Of(ball, panel, MassBudget.Of(ball, panel.AreaMm2)).Select(Remark.Warning)];

    // Mirrors that the points of a seam only nearly have are taken as meant: that is said.
    private static IEnumerable<Remark> NearMirrors(BallSpec ball)
    {
        double radius = ball.FittedRadiusMm;
        if (ball.Seam.Curve == SeamFamily.Points && SeamCurve.For(ball.Seam, radius) is PointSeam { NearlyHadMirrors: true } seam)
        {
            yield return Remark.Note(Invariant(
                $"seam.points: the seam nearly has both mirrors; they are taken as meant and move it by up to ")
                + Invariant($"{seam.MirrorsMoved * radius:0.####} mm"));
        }
    }
}
