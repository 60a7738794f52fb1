using FeltNest.Die.Effort;

namespace FeltNest.Die.Gang;

/// <summary>Which copies of a die's cavities, one feed apart, make the die shortest: lefts in order, and one sweep.</summary>
internal sealed class FeedFold
{
    private readonly double feed;
    private readonly double[] lefts;

    // Furthest right of the runs of 1, 2, 4, 8 ... cavities that begin at each.
    private readonly List<double[]> furthest;

    /// <summary>The fold of cavities.</summary>
    /// <param name="reaches">How far each reaches along the roll, mm.</param>
    /// <param name="feedMm">From copy to copy, mm.</param>
    /// <param name="work">Counts what is looked at.</param>
    public FeedFold(IReadOnlyList<(double Left, double Right)> reaches, double feedMm, DieWork work)
    {
        feed = feedMm;
        (double Left, double Right)[] order = [.. reaches.OrderBy(r => r.Left)];
        lefts = [.. order.Select(r => r.Left)];
        furthest = [[.. order.Select(r => r.Right)]];
        for (int run = 1; 2 * run <= order.Length; run *= 2)
        {
            double[] half = furthest[^1];
            furthest.Add([.. Enumerable.Range(0, order.Length - (2 * run) + 1).Select(i => Math.Max(half[i], half[i + run]))]);
        }

        LengthMm = double.PositiveInfinity;
        foreach ((double cut, _) in reaches)
        {
            double length = Reach(cut, work) - cut;
            (StartMm, LengthMm) = length < LengthMm ? (cut, length) : (StartMm, LengthMm);
        }
    }

    /// <summary>Where the shortest die begins, mm along.</summary>
    public double StartMm { get; }

    /// <summary>Its length, mm.</summary>
    public double LengthMm { get; }

    /// <summary>What a cavity is moved by so that it begins at or behind the start, mm.</summary>
    public double Move(double left) => Moved(left, StartMm);

    private double Moved(double left, double cut) => -Copies(left, cut) * feed;

    private double Copies(double left, double cut) => Math.Floor(((left - cut) / feed) + 1e-9);

    // Cavities that are moved by as many feeds stand side by side in the order: of each such group the furthest right counts.
    private double Reach(double cut, DieWork work)
    {
        double most = double.NegativeInfinity;
        for (int from = 0; from < lefts.Length;)
        {
            double copies = Copies(lefts[from], cut);
            int low = from + 1;
            int high = lefts.Length;
            while (low < high)
            {
                int middle = (low + high) / 2;
                (low, high) = Copies(lefts[middle], cut) > copies ? (low, middle) : (middle + 1, high);
                work.Look();
            }

            most = Math.Max(most, Furthest(from, low) + Moved(lefts[from], cut));
            from = low;
        }

        return most;
    }

    private double Furthest(int from, int to)
    {
        int level = System.Numerics.BitOperations.Log2((uint)(to - from));
        return Math.Max(furthest[level][from], furthest[level][to - (1 << level)]);
    }
}
