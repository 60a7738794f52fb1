using System.Runtime.ExceptionServices;
using FeltNest.Ball;
using FeltNest.Layout;
using FeltNest.Panel;
using FeltNest.Yield;

namespace FeltNest.Design;

/// <summary>Designs a panel for the tilt at which the layout wants to lay it, and lays it at the tilt it is designed for.</summary>
/// <remarks>Felt with a warp makes the panel's shape depend on its angle to the warp, and the layout picks that angle. The two are solved
/// in turn: design for an angle, lay free, design for the angle laid, until the angle stands; each angle met is then laid with its own
/// design at exactly that angle, and the best of these is kept.</remarks>
internal sealed class JointDesign(
    BallSpec ball, Func<LayoutPart, double?, LayoutRequest> lay, IProgress<DesignChoice>? progress, LayoutSource search,
    CancellationToken stop)
{
    private readonly List<DesignChoice> choices = [];

    /// <summary>Rounds of design and layout: the panel changes little with the angle, so the angle stands after two or three.</summary>
    private const int MostRounds = 5;

    // Angles closer than this, in degrees, are one design: their outlines differ by less than the arcs' 0.01 mm.
    private const double SameAngleDeg = 0.05;

    /// <summary>Solves tilt and panel together.</summary>
    /// <param name="ball">The ball; its design angle is where the search starts (0 where any serves).</param>
    /// <param name="lay">The question to the layout engine for a part, given the warp angle rule: null for free.</param>
    /// <param name="made">The ball's own panel where it is made already, or null.</param>
    /// <param name="progress">Told each design as it is laid; may be null.</param>
    /// <param name="stop">Ends the rounds with the best so far.</param>
    /// <exception cref="InputException">The ball cannot be made flat at an angle.</exception>
    /// <exception cref="NoAnswerException">No design fits the roll.</exception>
    public static JointResult Run(
        BallSpec ball, Func<LayoutPart, double?, LayoutRequest> lay, FlatPanel? made = null, IProgress<DesignChoice>? progress = null,
        CancellationToken stop = default) =>
        Run(ball, lay, made, progress, LayoutSearch.Of, stop);

    /// <summary>The same with what gives the layout of a panel.</summary>
    internal static JointResult Run(
        BallSpec ball, Func<LayoutPart, double?, LayoutRequest> lay, FlatPanel? made, IProgress<DesignChoice>? progress,
        LayoutSource search, CancellationToken stop)
    {
        JointDesign work = new(ball, lay, progress, search, stop);
        return work.Rounds(made);
    }

    private JointResult Rounds(FlatPanel? made)
    {
        double first = ball.Panel.WarpAngleDeg ?? 0;
        LaidDesign best = Laid(At(ball, first), ball.Panel.WarpAngleDeg is null ? null : made);
        Tell("as designed, laid at that angle", first, first, best.Layout, best.Panel.Strain);
        double angle = first;
        List<double> met = [first];
        FlatPanel last = best.Panel;
        for (int round = 0; round < MostRounds && !stop.IsCancellationRequested; round++)
        {
            LaidDesign free = Laid(At(ball, angle), last, free: true);
            double tilt = TiltOf(free.Layout);
            if (round == 0)
            {
                // Laid off its design angle the panel's strains are no longer those it was designed with, so none are given here.
                StrainSummary? strain = SameAngle(tilt, first) ? free.Panel.Strain : null;
                Tell("designed as before, laid free", first, tilt, free.Layout, strain);
            }

            if (met.Any(m => SameAngle(m, tilt)) || stop.IsCancellationRequested || Flat(At(ball, tilt), stop) is not { } flat)
            {
                break;
            }

            met.Add(tilt);
            angle = tilt;
            LaidDesign joint = Laid(At(ball, tilt), flat);
            last = joint.Panel;
            Tell("designed for the tilt, laid at it", tilt, tilt, joint.Layout, joint.Panel.Strain);
            best = SquareMetres(joint.Layout) < SquareMetres(best.Layout) ? joint : best;
        }

        return new JointResult(best.Ball, best.Panel, best.Layout, choices);
    }

    // A ball designed for an angle, laid at that angle or free.
    private LaidDesign Laid(BallSpec designed, FlatPanel? flat, bool free = false)
    {
        flat ??= PanelFlattener.Flatten(designed);
        double? warp = free ? null : designed.Panel.WarpAngleDeg;
        return new LaidDesign(designed, flat, search(lay(CoverPart.Of(designed, flat), warp), stop));
    }

    private void Tell(string name, double designDeg, double laidDeg, RollLayout layout, StrainSummary? strain)
    {
        DesignChoice choice = new()
        {
            Name = name,
            DesignAngleDeg = designDeg,
            LaidAngleDeg = laidDeg,
            Yield = YieldAccount.Of(layout),
            Strain = strain,
        };
        choices.Add(choice);
        progress?.Report(choice);
    }

    // The panel of a further design, or null where the work was stopped before it was there: it is left behind, as nothing waits for it.
    private static FlatPanel? Flat(BallSpec ball, CancellationToken stop)
    {
        Task<FlatPanel> flat = Task.Run(() => PanelFlattener.Flatten(ball), CancellationToken.None);
        try
        {
            flat.Wait(stop);
            return flat.Result;
        }
        catch (OperationCanceledException)
        {
            return null;
        }
        catch (AggregateException failed)
        {
            ExceptionDispatchInfo.Throw(failed.InnerException!);
            throw;
        }
    }

    private static BallSpec At(BallSpec ball, double angleDeg) => ball with { Panel = ball.Panel with { WarpAngleDeg = angleDeg } };

    private static double TiltOf(RollLayout layout)
    {
        double angle = layout.Bands[0].Repeat.Panels[0].AngleDeg;
        return angle - (Math.Floor(angle / 180) * 180);
    }

    private static bool SameAngle(double a, double b) => Math.Abs(Math.IEEERemainder(a - b, 180)) < SameAngleDeg;

    private static double SquareMetres(RollLayout layout) => YieldAccount.Of(layout).PerThousandBalls.SquareMetres;

    private sealed record LaidDesign(BallSpec Ball, FlatPanel Panel, RollLayout Layout);
}
