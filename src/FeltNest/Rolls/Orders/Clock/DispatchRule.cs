namespace FeltNest.Rolls.Orders.Clock;

/// <summary>Builds a sequence: whenever a press is free it takes the piece that is most urgent for what it takes.</summary>
/// <remarks>The index of a piece is priority / hours left of its order, times e^(-slack / (k hours)) times e^(-wait / (m mounting)). Slack
/// is what remains until the due day when all the rest of the order is cut at once; wait is how long the press stands, mounts and changes
/// rolls before it. This is the apparent tardiness cost rule with set-ups (A. Vepsalainen and T. Morton, 1987; Y. Lee, K. Bhaskaran and
/// M. Pinedo, 1997; both from memory). A small k goes by due days, a small m keeps to the die that
/// stands.</remarks>
internal sealed class DispatchRule
{
    private readonly ClockShop shop;
    private readonly PressClock clock;
    private readonly double[] fastest;
    private readonly double[] rest;
    private readonly double slackHours;
    private readonly double waitHours;

    /// <summary>The rule for a shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="slack">k, in three mean orders.</param>
    /// <param name="wait">m.</param>
    public DispatchRule(ClockShop shop, double slack, double wait)
    {
        this.shop = shop;
        clock = new PressClock(shop);
        fastest = [.. Enumerable.Range(0, shop.Pieces.Count).Select(piece => shop.Hours.Min(hours => hours[piece]))];
        rest = new double[shop.Due.Length];
        for (int piece = 0; piece < fastest.Length; piece++)
        {
            rest[shop.OrderOf[piece]] += fastest[piece];
        }

        slackHours = slack * 3 * Math.Max(1e-6, rest.Average());
        waitHours = wait * Math.Max(0.05, shop.MountHours.Average());
    }

    /// <summary>The sequence, and what it comes to.</summary>
    public (int[] Sequence, int[] PressOf, ClockScore Score) Built()
    {
        int[] pressOf = new int[fastest.Length];
        List<int> sequence = [];
        List<int> left = [.. Enumerable.Range(0, fastest.Length)];
        while (NextOf(left) is { } next)
        {
            (int piece, int press) = (next.Piece, next.Press);
            clock.Add(piece, press);
            rest[shop.OrderOf[piece]] -= fastest[piece];
            pressOf[piece] = press;
            sequence.Add(piece);
            left.Remove(piece);
        }

        // What no press has hours for goes to the end, to a press that takes its die.
        foreach (int piece in left)
        {
            pressOf[piece] = Math.Max(0, Array.FindIndex(shop.Hours, hours => double.IsFinite(hours[piece])));
            clock.Add(piece, pressOf[piece]);
            sequence.Add(piece);
        }

        return ([.. sequence], pressOf, clock.Score());
    }

    // Jobs that are begun go before all others.
    private (int Piece, int Press)? NextOf(List<int> left) => Next(left.FindAll(piece => shop.First[piece])) ?? Next(left);

    // The press that is free first and takes one of them.
    private (int Piece, int Press)? Next(List<int> from)
    {
        foreach (int press in Enumerable.Range(0, shop.Open.Length).OrderBy(clock.FreeAt))
        {
            (double Index, int Piece) best = (double.NegativeInfinity, -1);
            double at = shop.Open[press].NextOpen(clock.FreeAt(press));
            foreach (int piece in from)
            {
                double index = double.IsFinite(shop.Hours[press][piece]) ? Index(piece, press, at) : double.NegativeInfinity;
                best = index > best.Index ? (index, piece) : best;
            }

            if (best.Piece >= 0)
            {
                return (best.Piece, press);
            }
        }

        return null;
    }

    // In logarithms: far slack would be nothing otherwise.
    private double Index(int piece, int press, double at)
    {
        double start = clock.StartOf(piece, press);
        if (double.IsInfinity(start))
        {
            return double.NegativeInfinity;
        }

        int order = shop.OrderOf[piece];
        double hours = Math.Max(1e-6, rest[order]);
        double slack = Math.Max(0, shop.Due[order] - hours - at);
        return Math.Log(shop.Priority[order] / hours) - (slack / slackHours) - ((start - at) / waitHours);
    }
}
