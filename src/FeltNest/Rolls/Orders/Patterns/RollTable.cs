namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>The best pieces of some orders for every length of roll at once: a bounded knapsack over the length, one order after the
/// other, at most one piece of each by each die.</summary>
/// <remarks>Lengths are rounded up to steps, so that what the table holds fits the roll. For each order the best number of strikes in a
/// length comes from a sliding window over one remainder of its feed (D. Pisinger, "Algorithms for knapsack problems", 1995, from
/// memory). A table is filled again and again without new memory; one thread at a time.</remarks>
internal sealed class RollTable
{
    private readonly int steps;
    private readonly double step;
    private readonly List<RollWish> wishes = [];
    private readonly List<short[]> layers = [];
    private readonly Dictionary<double, int[]> tops = [];
    private readonly HashSet<double> toppedNow = [];
    private readonly int[] window;
    private double[] best;
    private double[] made;

    /// <summary>An empty table.</summary>
    /// <param name="longest">Longest roll, m.</param>
    /// <param name="step">Step, m.</param>
    public RollTable(double longest, double step)
    {
        this.step = step;
        steps = 1 + LengthStep.Count(longest, step, up: false);
        best = new double[steps];
        made = new double[steps];
        window = new int[steps + 1];
    }

    /// <summary>Empties the table.</summary>
    public void Clear()
    {
        wishes.Clear();
        toppedNow.Clear();
        Array.Clear(best);
    }

    /// <summary>The most that is gained in the length of a place.</summary>
    public double GainAt(int at) => best[at];

    /// <summary>Length of a place, m.</summary>
    public double MetresAt(int at) => at * step;

    /// <summary>Of all places up to one that at which most is gained where each metre costs so much.</summary>
    public int TopAt(int at, double metreCost)
    {
        if (!tops.TryGetValue(metreCost, out int[]? found))
        {
            found = new int[steps];
            tops.Add(metreCost, found);
        }

        if (toppedNow.Add(metreCost))
        {
            (double most, int top) = (double.NegativeInfinity, 0);
            for (int c = 0; c < steps; c++)
            {
                double gain = best[c] - (c * step * metreCost);
                (most, top) = gain > most ? (gain, c) : (most, top);
                found[c] = top;
            }
        }

        return found[at];
    }

    /// <summary>Place of a length in the table.</summary>
    public int At(double metres) => Math.Clamp(LengthStep.Count(metres, step, up: false), 0, steps - 1);

    /// <summary>Adds an order that may be cut in one piece: all that it wants, or less so that as much is left as a piece must
    /// have.</summary>
    public void Add(RollWish wish)
    {
        if (layers.Count == wishes.Count)
        {
            layers.Add(new short[steps]);
        }

        short[] strikes = layers[wishes.Count];
        wishes.Add(wish);
        Array.Clear(strikes);
        Array.Copy(best, made, steps);
        int feed = Feed(wish);
        int over = Over(wish);
        for (int rest = 0; rest < Math.Min(feed, steps - over); rest++)
        {
            Slide(wish, rest, feed, over, strikes);
        }

        (best, made) = (made, best);
    }

    /// <summary>The pieces of a place.</summary>
    public IEnumerable<(RollWish Wish, int Strikes)> Pieces(int at)
    {
        for (int k = wishes.Count - 1; k >= 0; k--)
        {
            int strikes = layers[k][at];
            if (strikes > 0)
            {
                yield return (wishes[k], strikes);
                at -= Over(wishes[k]) + (strikes * Feed(wishes[k]));
            }
        }
    }

    private int Feed(RollWish wish) => LengthStep.Count(wish.FeedM, step, up: true);

    private int Over(RollWish wish) => Math.Max(0, LengthStep.Count(wish.OverM, step, up: true));

    // All lengths of one remainder: the window holds the places from which a piece may begin, the best of them first.
    private void Slide(RollWish wish, int rest, int feed, int over, short[] strikes)
    {
        (int head, int tail) = (0, 0);
        int part = wish.Most - wish.Least;
        for (int j = Math.Min(wish.Least, wish.Most); rest + (j * feed) + over < steps; j++)
        {
            double gain = double.NegativeInfinity;
            int struck = 0;
            if (part >= wish.Least)
            {
                int enters = j - wish.Least;
                double value = Worth(enters);
                while (tail > head && Worth(window[tail - 1]) <= value)
                {
                    tail--;
                }

                window[tail++] = enters;
                head += window[head] < j - part ? 1 : 0;
                (gain, struck) = (Worth(window[head]) + (j * wish.StrikeValue), j - window[head]);
            }

            if (j >= wish.Most && Worth(j - wish.Most) + (j * wish.StrikeValue) + wish.WholeValue is var whole && whole > gain)
            {
                (gain, struck) = (whole, wish.Most);
            }

            int c = rest + (j * feed) + over;
            if (gain > made[c])
            {
                made[c] = gain;
                strikes[c] = (short)struck;
            }
        }

        double Worth(int from) => best[rest + (from * feed)] - (from * wish.StrikeValue);
    }
}
