namespace FeltNest.Rolls.Plan;

/// <summary>Strikes that follow each other on one line, one feed apart: what an operator sets once.</summary>
internal sealed record StrikeRun
{
    /// <summary>Number of its first strike, from 1.</summary>
    public required int First { get; init; }

    /// <summary>Strikes in it.</summary>
    public required int Count { get; init; }

    /// <summary>Where its first strike begins, mm.</summary>
    public required double XMm { get; init; }

    /// <summary>Advance that leads to it, mm: from the strike before, or from where whole cloth begins.</summary>
    public required double AdvanceMm { get; init; }

    /// <summary>Move across, mm.</summary>
    public required double ShiftYMm { get; init; }

    /// <summary>Good panels.</summary>
    public required int GoodPanels { get; init; }

    /// <summary>Lost panels.</summary>
    public required int LostPanels { get; init; }

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
                runs.Add(new StrikeRun
                {
                    First = i + 1,
                    Count = 1,
                    XMm = strike.XMm,
                    AdvanceMm = advance,
                    ShiftYMm = strike.ShiftYMm,
                    GoodPanels = strike.GoodPanels,
                    LostPanels = strike.Lost.Count,
                });
            }

            last = strike;
        }

        return runs;
    }
}
