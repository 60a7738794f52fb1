namespace FeltNest.Rolls.Orders.Clock;

/// <summary>Builds sequences by a rule of dispatch: several settings of one rule are tried.</summary>
internal static class ClockStart
{
    private static readonly (double Slack, double Wait)[] Settings =
    [
        (0.3, 0.3), (0.3, 3), (1, 0.3), (1, 3), (4, 0.3), (4, 3), (0.05, 1), (30, 1),
    ];

    /// <summary>The best sequence of the rule.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="stop">Ends it with the best so far, one at the least.</param>
    public static (int[] Sequence, int[] PressOf, ClockScore Score) Best(ClockShop shop, CancellationToken stop)
    {
        (int[] Sequence, int[] PressOf, ClockScore Score)? best = null;
        foreach ((double slack, double wait) in Settings)
        {
            if (best is null || !stop.IsCancellationRequested)
            {
                (int[] Sequence, int[] PressOf, ClockScore Score) built = new DispatchRule(shop, slack, wait).Built();
                best = best is { } known && known.Score.CompareTo(built.Score) <= 0 ? known : built;
            }
        }

        return best!.Value;
    }
}
