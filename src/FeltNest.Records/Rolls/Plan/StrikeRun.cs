namespace FeltNest.Rolls.Plan;

/// <summary>Strikes that follow each other on one line, one feed apart: what an operator sets once.</summary>
/// <param name="First">Number of its first strike, from 1.</param>
/// <param name="Count">Strikes in it.</param>
/// <param name="XMm">Where its first strike begins, mm.</param>
/// <param name="AdvanceMm">Advance that leads to it, mm: from the strike before, or from where whole cloth begins.</param>
/// <param name="ShiftYMm">Move across, mm.</param>
/// <param name="GoodPanels">Good panels.</param>
/// <param name="LostPanels">Lost panels.</param>
public sealed record StrikeRun(int First, int Count, double XMm, double AdvanceMm, double ShiftYMm, int GoodPanels, int LostPanels)
{
    // Advances this near to the feed are the feed, mm: rounding of the grid, far below any press.
    private const double SameMm = 1e-6;

    /// <summary>The runs of a plan, in order.</summary>
    public static IReadOnlyList<StrikeRun> Of(RollPlan plan)
    {
        List<StrikeRun> runs = [];
        PlannedStrike? last = null;
        for (int i = 0; i < plan.Strikes.Count; i++)
        {
            PlannedStrike strike = plan.Strikes[i];
            double advance = strike.XMm - (last?.XMm ?? plan.Request.FromMm);
            if (last is not null && Math.Abs(advance - plan.Pattern.FeedMm) <= SameMm && strike.ShiftYMm == last.ShiftYMm)
            {
                StrikeRun run = runs[^1];
                runs[^1] = run with
                {
                    Count = run.Count + 1,
                    GoodPanels = run.GoodPanels + strike.GoodPanels,
                    LostPanels = run.LostPanels + strike.Lost.Count,
                };
            }
            else
            {
                runs.Add(new StrikeRun(i + 1, 1, strike.XMm, advance, strike.ShiftYMm, strike.GoodPanels, strike.Lost.Count));
            }

            last = strike;
        }

        return runs;
    }
}
