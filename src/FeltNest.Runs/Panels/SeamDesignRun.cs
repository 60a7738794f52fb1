using FeltNest.Ball;
using FeltNest.Design;
using FeltNest.Design.SeamDesign;
using FeltNest.Drawing.Sheets;
using FeltNest.Files.Balls;
using FeltNest.Files.Studies;
using FeltNest.Layout;
using FeltNest.Report;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Panels;

/// <summary>Seams designed for the least felt at each limit of stretch.</summary>
internal sealed class SeamDesignRun : IRun
{
    /// <summary>Ball and limits.</summary>
    public required SeamQuestion Question { get; init; }

    /// <summary>The question to the layout engine for a part.</summary>
    public required Func<LayoutPart, LayoutRequest> Lay { get; init; }

    /// <summary>Told each shaped seam as it is measured, or null.</summary>
    public IProgress<SeamMark>? Progress { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames =>
    [
        "seam-design.json", "seam-design.csv", "seam-design.svg", "seam-design.png",
        .. Question.StretchLimitsPercent.Select(BallFile),
    ];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? searchOver, CancellationToken search, CancellationToken interrupt)
    {
        SeamFront front = SeamFrontStudy.Run(Question, Lay, Progress, search);
        searchOver?.Invoke();
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => SeamDesignWriter.Json(front)), new(FileNames[1], () => SeamDesignWriter.Csv(front)),
                .. ResultFile.Pictures(FileNames.Skip(2).Take(2), () => SeamDesignSheet.Draw(front)),
                .. front.Of(SeamFamily.Shaped).Select(mark => new ResultFile(BallFile(mark.StretchLimitPercent), () => Ball(mark))),
            ],
            Table = SeamDesignReport.Text(front),
            CutShort = front.CutShort,
        };
    }

    private static string BallFile(double limit) => Invariant($"ball-{limit:0.###}.json");

    private byte[] Ball(SeamMark mark)
    {
        string words = Invariant($"seam for {mark.StretchLimitPercent:0.###} % of stretch");
        return BallWriter.Write(
            mark.Roll.Ball with { Name = $"{Question.Ball.Name}, {words}" },
            $"{words}, designed for least felt on a roll of {Invariant($"{RollWidth(mark):0.##}")} mm: wrap a trial ball first");
    }

    private double RollWidth(SeamMark mark) => Lay(CoverPart.Of(mark.Roll.Ball, mark.Roll.Panel)).RollWidthMm;
}
