namespace FeltNest.Files.Check;

/// <summary>The least cost of a family by plain counting: every choice of widths, each ball on the cheapest of them; or every way to part
/// the balls into groups, each group on its cheapest width. Whichever is less work.</summary>
/// <param name="keep">Hundredths of the currency a year to keep one width.</param>
/// <param name="costs">Hundredths a year of each ball on each width; null where it has no layout.</param>
internal sealed class StockCount(long keep, long?[][] costs)
{
    // Steps of either way that still take a moment.
    private const double MostSteps = 3e7;

    // Groups are counted by the bits of a number.
    private const int MostGrouped = 15;

    private int Widths => costs.Length == 0 ? 0 : costs[0].Length;

    /// <summary>True where the least cost can be counted.</summary>
    /// <param name="most">Most widths, or null for any number.</param>
    public bool CanCount(int? most) => Math.Min(ChoiceSteps(Most(most)), GroupSteps(Most(most))) <= MostSteps;

    /// <summary>The least cost, or null where not every ball can be cut.</summary>
    /// <param name="most">Most widths, or null for any number.</param>
    public long? Least(int? most)
    {
        int widths = Most(most);
        long least = GroupSteps(widths) < ChoiceSteps(widths) ? ByGroups(widths) : ByChoices(widths);
        return least == long.MaxValue ? null : least;
    }

    // More widths than balls are never used.
    private int Most(int? most) => Math.Min(Math.Min(most ?? int.MaxValue, costs.Length), Widths);

    private double ChoiceSteps(int most)
    {
        double sum = 0;
        double choices = 1;
        for (int i = 1; i <= most; i++)
        {
            choices *= (Widths - i + 1.0) / i;
            sum += choices * costs.Length;
        }

        return sum;
    }

    private double GroupSteps(int most) => costs.Length > MostGrouped
        ? double.PositiveInfinity
        : (most * Math.Pow(3, costs.Length)) + (Widths * Math.Pow(2, costs.Length) * costs.Length);

    internal long ByChoices(int most)
    {
        long least = long.MaxValue;
        Choose(0, most, [.. Enumerable.Repeat(long.MaxValue, costs.Length)], 0, ref least);
        return least;
    }

    // All choices from a width on: with it, and without it.
    private void Choose(int from, int left, long[] cheapest, long stock, ref long least)
    {
        if (!cheapest.Contains(long.MaxValue))
        {
            least = Math.Min(least, stock + cheapest.Sum());
        }

        for (int width = from; left > 0 && width < Widths; width++)
        {
            long[] with = [.. cheapest.Select((cost, ball) => Math.Min(cost, costs[ball][width] ?? long.MaxValue))];
            Choose(width + 1, left - 1, with, stock + keep, ref least);
        }
    }

    internal long ByGroups(int most)
    {
        int all = (1 << costs.Length) - 1;
        long[] group = [.. Enumerable.Range(0, all + 1).Select(GroupCost)];
        long[] before = [0, .. Enumerable.Repeat(long.MaxValue, all)];
        for (int groups = 0; groups < most; groups++)
        {
            long[] next = [.. before];
            for (int set = 1; set <= all; set++)
            {
                for (int part = set; part > 0; part = (part - 1) & set)
                {
                    long rest = before[set ^ part];
                    if (rest < long.MaxValue && group[part] < long.MaxValue)
                    {
                        next[set] = Math.Min(next[set], rest + group[part]);
                    }
                }
            }

            before = next;
        }

        return before[all];
    }

    // A group on the width that is cheapest for it, with the width's keeping.
    private long GroupCost(int set)
    {
        long least = long.MaxValue;
        for (int width = 0; set > 0 && width < Widths; width++)
        {
            long? sum = keep;
            for (int ball = 0; ball < costs.Length; ball++)
            {
                sum += (set >> ball & 1) == 1 ? costs[ball][width] : 0;
            }

            least = Math.Min(least, sum ?? long.MaxValue);
        }

        return least;
    }
}
