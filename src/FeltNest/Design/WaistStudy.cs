using FeltNest.Ball;
using FeltNest.Ball.Ranges;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Yield;

namespace FeltNest.Design;

/// <summary>Makes the panel of a ball flat for one waist after the other and lays each over the same roll, so that strain can be weighed
/// against felt.</summary>
internal static class WaistStudy
{
    /// <summary>Most waists of one study: a finer look belongs in a second one.</summary>
    public const int MostWaists = 200;

    /// <summary>Waists from one to another, both included where the step meets the end.</summary>
    /// <exception cref="InputException">No step forward, or more than <see cref="MostWaists"/>.</exception>
    public static IReadOnlyList<double> Range(double fromMm, double toMm, double stepMm)
    {
        // Steps that miss the end by rounding alone still reach it.
        const double slack = 1e-9;
        double steps = ((toMm - fromMm) / stepMm) + slack;
        return steps is >= 0 and < MostWaists
            ? [.. Enumerable.Range(0, (int)steps + 1).Select(i => Math.Round(fromMm + (i * stepMm), 9))]
            : throw new InputException(
                AskedFor.Waists,
                FormattableString.Invariant(
                    $"{fromMm}:{toMm}:{stepMm} is not allowed: from the narrow end to the wide one in at most {MostWaists} steps"));
    }

    /// <summary>Runs a study.</summary>
    /// <param name="ball">The ball; its waist is replaced.</param>
    /// <param name="waistsMm">Waists on the fitted sphere, mm.</param>
    /// <param name="lay">The question to the layout engine for a part.</param>
    /// <param name="progress">Told each waist as it is done; may be null.</param>
    /// <param name="stop">Ends the study with the waists done so far.</param>
    /// <exception cref="InputException">A waist out of its range, or a seam that has no family.</exception>
    /// <exception cref="NoAnswerException">No waist has a panel that keeps the felt's limit and fits the roll; the message is the first
    /// waist's.</exception>
    /// <exception cref="OperationCanceledException">Stopped before the first waist was done.</exception>
    public static WaistTradeOff Run(
        BallSpec ball, IReadOnlyList<double> waistsMm, Func<LayoutPart, LayoutRequest> lay, IProgress<WaistPoint>? progress = null,
        CancellationToken stop = default) =>
        Run(ball, waistsMm, lay, progress, LayoutSearch.Of, stop);

    // Long because it is one loop that keeps what is done when it is stopped.
    /// <summary>The same with what gives the layout of a panel.</summary>
    internal static WaistTradeOff Run(
        BallSpec ball, IReadOnlyList<double> waistsMm, Func<LayoutPart, LayoutRequest> lay, IProgress<WaistPoint>? progress,
        LayoutSource search, CancellationToken stop)
    {
        if (ball.Seam.Curve == SeamFamily.Points)
        {
            throw new InputException(
                null, "seam.curve", "points: a seam given as points has its own waist; choose a family that takes waistMm");
        }

        BallSpec[] balls = [.. waistsMm.Select(waist => BallRanges.Checked(ball with { Seam = ball.Seam with { WaistMm = waist } }))];
        List<WaistPoint> points = [];
        LayoutRequest? roll = null;
        List<(double WaistMm, string Reason)> unanswered = [];
        foreach (BallSpec of in balls)
        {
            try
            {
                FlatPanel panel = PanelFlattener.Flatten(of);
                LayoutRequest request = lay(CoverPart.Of(of, panel));
                RollLayout layout = search(request, stop);

                // A layout that was cut short would make its waist look worse than its neighbours: it is left out.
                if (stop.IsCancellationRequested)
                {
                    break;
                }

                roll ??= request;
                points.Add(PointOf(of, panel, layout));
                progress?.Report(points[^1]);
            }
            catch (NoAnswerException none)
            {
                unanswered.Add((of.Seam.WaistMm, none.Message));
            }
        }

        if (roll is not null)
        {
            return new WaistTradeOff(ball, roll, points, unanswered, points.Count + unanswered.Count < waistsMm.Count);
        }

        throw unanswered.Count > 0 ? new NoAnswerException(unanswered[0].Reason) : new OperationCanceledException(stop);
    }

    private static WaistPoint PointOf(BallSpec ball, FlatPanel panel, RollLayout layout) => new()
    {
        WaistMm = ball.Seam.WaistMm,
        Strain = panel.Strain,
        PanelAreaMm2 = panel.AreaMm2,
        SeamLengthMm = panel.Sphere.SeamLengthMm,
        Yield = YieldAccount.Of(layout),
        StretchAllowed = ball.Felt.TakesStretch(panel.Strain.MaxStretchPercent),
        EdgeAllowed = ball.Felt.TakesAlongEdge(panel.Strain.EdgeMaxCompressionPercent),
    };
}
