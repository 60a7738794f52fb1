using System.Globalization;
using FeltNest.Rolls.Plan.Chain;

namespace FeltNest.Rolls.Plan;

/// <summary>Plans the strikes of one roll: the most good panels, proved on a stated grid.</summary>
internal static class StrikePlanner
{
    /// <summary>Most repeats one strike may hold.</summary>
    public const int MostRepeats = 100;

    /// <summary>Furthest a guide may play to either side, mm.</summary>
    public const double MostPlayMm = 200;

    /// <summary>The plan of a roll.</summary>
    /// <exception cref="InputException">The layout has bands whose repeats have no common length, a number is out of its range, or the
    /// start lies outside the roll.</exception>
    /// <exception cref="NoAnswerException">No panel would be good anywhere.</exception>
    public static RollPlan Run(RollRequest request)
    {
        Require(request);
        StrikePattern pattern = StrikePattern.Of(request.Layout, request.RepeatsPerStrike);
        StrikeGrid grid = StrikeGrid.Of(request, pattern.FeedMm);
        LossMap losses = new(request, pattern, grid);
        StrikeSpacing spacing = new(pattern, grid, request.Layout.GapMm);
        List<PlannedStrike> strikes = Best(losses, spacing, grid);
        if (strikes.Count == 0)
        {
            throw NoStrike(request, pattern);
        }

        int backToBack = InLine(losses, grid);
        int clear = Enumerable.Range(-2 * grid.SideSteps, (4 * grid.SideSteps) + 1).Max(spacing.Clear);
        RollPlan plan = new()
        {
            Request = request,
            Pattern = pattern,
            Grid = grid,
            Strikes = strikes,
            BackToBackGoodPanels = backToBack,
            ClearAdvanceMm = clear * grid.StepMm,
            LeastOffLineMm = spacing.LeastSteps * grid.StepMm,
        };
        return plan.GoodPanels >= backToBack
            ? plan
            : throw new InvalidOperationException($"the plan has {plan.GoodPanels} good panels, strikes in line have {backToBack}");
    }

    private static List<PlannedStrike> Best(LossMap losses, StrikeSpacing spacing, StrikeGrid grid) =>
    [
        .. new StrikeChain(losses, spacing, grid).Best().Select(at => new PlannedStrike
        {
            XMm = grid.XMm(at.Place),
            ShiftYMm = grid.ShiftMm(at.Shift),
            GoodPanels = losses.Good(at.Place, at.Shift),
            Lost = losses.Lost(at.Place, at.Shift),
        }),
    ];

    // Good panels of strikes set back to back in line from the start of the roll.
    private static int InLine(LossMap losses, StrikeGrid grid)
    {
        int good = 0;
        for (int k = 0; k < grid.Places; k += grid.FeedSteps)
        {
            good += losses.Good(k, grid.SideSteps);
        }

        return good;
    }

    private static NoAnswerException NoStrike(RollRequest request, StrikePattern pattern)
    {
        double restMm = request.Roll.LengthMm - request.FromMm;
        if (!request.PastEnd && pattern.LengthMm > restMm)
        {
            return new NoAnswerException(string.Create(
                CultureInfo.InvariantCulture,
                $"roll {request.Roll.Name} has {restMm:0.###} mm left to cut, and one strike is {pattern.LengthMm:0.###} mm long: a "
                    + $"longer rest, fewer repeats a strike, or a strike allowed past the end would work"));
        }

        double widthMm = request.Layout.Trims.UpperMm + pattern.Panels.Min(p => p.MaxY);
        double lengthMm = pattern.Panels.Min(p => p.MaxX - p.MinX);
        return new NoAnswerException(string.Create(
            CultureInfo.InvariantCulture,
            $"no panel of this layout is good anywhere on roll {request.Roll.Name}: with the trims the lowest panel needs "
                + $"{widthMm:0.###} mm of width and {lengthMm:0.###} mm of length; the roll is {request.Roll.LeastWidthMm:0.###} to "
                + $"{request.Roll.MostWidthMm:0.###} mm wide with {restMm:0.###} mm left to cut: a narrower layout, a longer rest or a "
                + $"roll with fewer faults would work"));
    }

    private static void Require(RollRequest request)
    {
        InputException.RequireWithin(AskedFor.RepeatsPerStrike, request.RepeatsPerStrike, 1, MostRepeats, string.Empty);
        InputException.RequireWithin(AskedFor.SideShift, request.GuidePlayMm, 0, MostPlayMm, "mm");
        if (!(request.FromMm >= 0 && request.FromMm < request.Roll.LengthMm))
        {
            throw new InputException(AskedFor.PlanFrom, FormattableString.Invariant(
                $"{request.FromMm:0.###} mm is outside the roll: from 0 to below {request.Roll.LengthMm:0.###} mm is allowed"));
        }
    }
}
