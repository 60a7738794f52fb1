using FeltNest.Ball;
using FeltNest.Ball.Tolerance;
using FeltNest.Seam;

namespace FeltNest.Panel.Budget;

/// <summary>From a ball with tolerances to the budget of its seam gap.</summary>
/// <remarks>Each part is solved with the whole of its tolerance either way. Between the ends the gap is taken as the parabola through both
/// and the middle, and the parts as adding up; two solves with all parts off together say how far that holds.</remarks>
internal static class GapBudgetStudy
{
    /// <summary>The budget.</summary>
    /// <param name="ball">The ball.</param>
    /// <param name="panel">Its panel.</param>
    /// <exception cref="InputException">The ball states no tolerance that moves the gap, or one reaches where no ball is.</exception>
    /// <exception cref="NoAnswerException">The panel cannot be laid on a ball that is off.</exception>
    public static GapBudget Run(BallSpec ball, FlatPanel panel)
    {
        IReadOnlyList<GapPart> parts = ball.Tolerances is { } stated ? GapParts.Of(stated) : [];
        if (!parts.Any(part => part.Source.PlusMinus > 0))
        {
            throw new InputException(
                null, "tolerances", "hold none that moves the seam gap: state what may be off, for example tolerances.coreDiameterMm");
        }

        (GapPart Part, BallSpec Minus, BallSpec Plus)[] ends = [.. parts.Select(part => (part, Off(ball, part, -1), Off(ball, part, 1)))];
        GapSolver solver = new(ball, panel, ends.SelectMany(end => new[] { end.Minus, end.Plus }));
        ToleranceReading reading = ball.Tolerances!.ReadAs;
        GapSamples samples = new(reading, GapEffects.Panels(parts).Count);
        bool shrinks = ends.Any(end => Shrinks(end.Minus) || Shrinks(end.Plus));
        GapState fitting = State(false);
        return new GapBudget
        {
            ReadAs = reading,
            Balls = GapSamples.Balls,
            Adhesive = ball.Seam.Adhesive,
            Sources = [.. parts.Select(part => part.Source)],
            NotStated = GapParts.NotStated(ball.Tolerances),
            AtFitting = fitting,
            AfterCure = shrinks ? State(true) : fitting,
        };

        GapState State(bool cured)
        {
            GapEffects effects = GapEffects.Of(solver, ball, ends, cured);
            return new GapAccount(effects, ball.Seam.Adhesive, reading, samples).State(
                shares => Solved(solver, ball, parts, effects, shares, cured));
        }
    }

    /// <summary>A ball with one part off by a share of its tolerance; the ball itself for a part of the placing.</summary>
    /// <exception cref="InputException">No such ball can be.</exception>
    internal static BallSpec Off(BallSpec ball, GapPart part, double share)
    {
        if (part.Ball is not { } off)
        {
            return ball;
        }

        BallSpec made = off(ball, share * part.Source.PlusMinus);
        bool sound = made is
        {
            Cement.ThicknessMm: >= 0, Felt: { ThicknessMm: > 0, NeutralLayer: >= 0 and <= 1, Poisson: >= 0 and < 1 },
            Felt: { WarpModulusNPerMm: > 0, WeftModulusNPerMm: > 0, ShearModulusNPerMm: > 0 },
        };
        return sound ? made : throw new InputException(null, part.Source.Field, FormattableString.Invariant(
            $"{part.Source.PlusMinus}{(part.Source.Unit.Length == 0 ? string.Empty : " ")}{part.Source.Unit} off the {part.Source.Words} ")
                + "reaches where no ball can be made: state less");
    }

    private static bool Shrinks(BallSpec ball) => ball.Felt.CureShrinkWarpPercent != 0 || ball.Felt.CureShrinkWeftPercent != 0;

    // The gaps with all parts off together, each by a share of its tolerance; null where felt cannot be off so far together.
    private static double[]? Solved(
        GapSolver solver, BallSpec ball, IReadOnlyList<GapPart> parts, GapEffects effects, IReadOnlyList<double> shares, bool cured)
    {
        BallSpec off = ball;
        PanelPlacing a = default;
        PanelPlacing b = default;
        for (int i = 0; i < shares.Count; i++)
        {
            GapEffect effect = effects.All[i];
            GapPart part = parts[effect.Source];
            double amount = shares[i] * part.Source.PlusMinus;
            off = part.Ball?.Invoke(off, amount) ?? off;
            PanelPlacing placing = part.Placing?.Invoke(amount, ball.FittedRadiusMm) ?? default;
            (a, b) = effect.Panels == GapEffects.SecondPanel ? (a, b + placing) : (a + placing, b);
        }

        try
        {
            IReadOnlyList<SpherePoint> edge = solver.Edge(off, cured);
            return GapSolver.Gaps(edge, off.FittedRadiusMm, a, b);
        }
        catch (Exception error) when (error is InputException or NoAnswerException)
        {
            return null;
        }
    }
}
