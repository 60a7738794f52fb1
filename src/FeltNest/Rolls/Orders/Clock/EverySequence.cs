namespace FeltNest.Rolls.Orders.Clock;

/// <summary>The best of all sequences on all presses, where these are few.</summary>
internal static class EverySequence
{
    // Sequences times choices of presses: about what a step of effort of the search times.
    private const double Most = 50_000;

    /// <summary>Whether a shop is small enough.</summary>
    public static bool IsFew(ClockShop shop) =>
        Enumerable.Range(1, shop.Pieces.Count).Aggregate(1.0, (all, i) => all * i * shop.Open.Length) <= Most;

    /// <summary>The best; of equal ones the first that is met.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="best">The best so far.</param>
    public static (int[] Sequence, int[] PressOf, ClockScore Score) Best(
        ClockShop shop, (int[] Sequence, int[] PressOf, ClockScore Score) best)
    {
        PressClock clock = new(shop);
        int presses = shop.Open.Length;
        foreach (int[] sequence in Sequences([.. Enumerable.Range(0, shop.Pieces.Count)]))
        {
            for (int code = 0; code < (int)Math.Pow(presses, sequence.Length); code++)
            {
                int[] pressOf = Digits(code, presses, sequence.Length);
                ClockScore score = clock.Run(sequence, pressOf);
                best = score.CompareTo(best.Score) < 0 ? ([.. sequence], pressOf, score) : best;
            }
        }

        return best;
    }

    private static int[] Digits(int code, int radix, int count)
    {
        int[] digits = new int[count];
        for (int i = 0; i < count; i++)
        {
            (code, digits[i]) = Math.DivRem(code, radix);
        }

        return digits;
    }

    private static IEnumerable<int[]> Sequences(int[] pieces) => pieces.Length <= 1
        ? [pieces]
        : pieces.SelectMany(first => Sequences([.. pieces.Where(p => p != first)]).Select(rest => (int[])[first, .. rest]));
}
