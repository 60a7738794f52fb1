using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Seam;
using FeltNest.Yield;

namespace FeltNest.Design;

/// <summary>Makes the panel of a ball flat for every seam family at one waist, and for its own seam where that is given as points, and lays
/// each over the same roll.</summary>
internal static class SeamStudy
{
    /// <summary>Runs the comparison.</summary>
    /// <param name="ball">The ball; its curve is replaced, its waist kept.</param>
    /// <param name="lay">The question to the layout engine for a part.</param>
    /// <param name="progress">Told each seam as it is done; may be null.</param>
    /// <param name="stop">Ends the comparison with the seams done so far.</param>
    /// <exception cref="InputException">A seam given as points whose waist lies outside the range of the families.</exception>
    /// <exception cref="NoAnswerException">No seam has a panel that keeps the felt's limit and fits the roll; the message is the first
    /// seam's.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the first seam was done.</exception>
    public static SeamComparison Run(
        BallSpec ball, Func<LayoutPart, LayoutRequest> lay, IProgress<SeamEntry>? progress = null, CancellationToken stop = default) =>
        Run(ball, lay, progress, LayoutSearch.Of, stop);

    // Long because it is one loop that keeps what is done when it is stopped.
    /// <summary>The same with what gives the layout of a panel.</summary>
    internal static SeamComparison Run(
        BallSpec ball, Func<LayoutPart, LayoutRequest> lay, IProgress<SeamEntry>? progress, LayoutSource search, CancellationToken stop)
    {
        bool own = ball.Seam.Curve is SeamFamily.Points or SeamFamily.Shaped;
        double waist = own ? ball.FittedRadiusMm * SeamCurve.For(ball.Seam, ball.FittedRadiusMm).WaistAngle : ball.Seam.WaistMm;
        IEnumerable<SeamSpec> families = Enum.GetValues<SeamFamily>()
            .Where(family => family is not (SeamFamily.Points or SeamFamily.Shaped))
            .Select(family => new SeamSpec { Curve = family, WaistMm = waist, SeamGapMm = ball.Seam.SeamGapMm });
        IEnumerable<SeamSpec> seams = own ? families.Append(ball.Seam) : families;
        BallSpec[] balls = [.. seams.Select(seam => BallRanges.Checked(ball with { Seam = seam }))];
        List<SeamEntry> entries = [];
        List<(SeamFamily Curve, string Reason)> unanswered = [];
        LayoutRequest? roll = null;
        foreach (BallSpec of in balls)
        {
            try
            {
                FlatPanel panel = PanelFlattener.Flatten(of);
                LayoutRequest request = lay(CoverPart.Of(of, panel));
                RollLayout layout = search(request, stop);

                // A layout that was cut short would make its seam look worse than the others: it is left out.
                if (stop.IsCancellationRequested)
                {
                    break;
                }

                roll ??= request;
                entries.Add(new SeamEntry(of, panel, YieldAccount.Of(layout)));
                progress?.Report(entries[^1]);
            }
            catch (NoAnswerException none)
            {
                unanswered.Add((of.Seam.Curve, none.Message));
            }
        }

        if (roll is null)
        {
            throw unanswered.Count > 0 ? new NoAnswerException(unanswered[0].Reason) : new OperationCanceledException(stop);
        }

        return new SeamComparison
        {
            Ball = ball,
            WaistMm = waist,
            Roll = roll,
            Entries = entries,
            Unanswered = unanswered,
            CutShort = entries.Count + unanswered.Count < balls.Length,
        };
    }
}
