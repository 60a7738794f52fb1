namespace FeltNest.Rolls.Orders.Clock;

/// <summary>Betters a sequence by changing it, taking a worse one now and then at first and never at the end.</summary>
/// <remarks>Simulated annealing (S. Kirkpatrick, C. Gelatt and M. Vecchi, *Science* 220 (1983) 671-680, from memory) over the changes of
/// <see cref="ClockMoves"/>. Its work is counted in pieces timed.</remarks>
internal sealed class ClockSearch
{
    // Pieces timed for one step of effort, and most changes for each piece of a shop, of which so many count.
    private const long PiecesPerEffort = 3_000_000;
    private const int ChangesPerEffort = 1200;
    private const int MostCounted = 50;

    // Weights of the one figure that is lowered: a day late is 100.
    private const double OfBall = 20;
    private const double OfDay = 100;
    private const double OfHour = 1.5;
    private const double OfLate = 15;
    private const double OfMounting = 0.5;

    // It begins warm and ends cold. A small shop is warmed up again some times from its best, as warm as a late order costs.
    private const double Warm = 60;
    private const double Coolest = 0.2;
    private const int ChangesPerPiece = 200;
    private const int MostRounds = 10;

    private readonly ClockShop shop;
    private readonly ChangedClock clock;
    private readonly ClockMoves moves;
    private readonly Random chance = new(2);
    private int[] sequence;
    private int[] pressOf;
    private int[] changed;
    private int[] changedPress;
    private double value;
    private List<int> late;

    private ClockSearch(ClockShop shop, (int[] Sequence, int[] PressOf, ClockScore Score) start)
    {
        this.shop = shop;
        clock = new ChangedClock(shop);
        moves = new ClockMoves(shop, new Random(1));
        (changed, changedPress) = (new int[start.Sequence.Length], new int[start.Sequence.Length]);
        (sequence, pressOf, late) = ([], [], []);
        Best = start;
        Return();
    }

    private (int[] Sequence, int[] PressOf, ClockScore Score) Best { get; set; }

    // Nothing can be better: all is cut in time, and each die that does not stand on a press is mounted once.
    private bool IsLeast =>
        Best.Score is { Unplaced: 0, WeightedDays: 0 }
            && Best.Score.Mountings <= shop.DieFrom.Length - shop.Mounted.Count(die => die >= 0)
            && Array.TrueForAll(shop.Open, open => !open.HasOvertime);

    /// <summary>The best sequence found.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="start">Where it starts.</param>
    /// <param name="effort">Counted work; 0 for none.</param>
    /// <param name="stop">Ends it with the best so far.</param>
    public static (int[] Sequence, int[] PressOf, ClockScore Score) Run(
        ClockShop shop, (int[] Sequence, int[] PressOf, ClockScore Score) start, int effort, CancellationToken stop)
    {
        int count = shop.Pieces.Count;
        ClockSearch search = new(shop, start);
        double most = count < 2 ? 0 : effort * (double)PiecesPerEffort;
        double changes = (double)effort * ChangesPerEffort * Math.Min(count, MostCounted);
        int rounds = (int)Math.Clamp(Math.Min(most / count, changes) / ((double)ChangesPerPiece * count), 1, MostRounds);
        double warmest = Warm;
        int round = 0;
        for (long change = 0; !search.IsLeast && !stop.IsCancellationRequested; change++)
        {
            double spent = most > 0 ? rounds * Math.Max(search.clock.Timed / most, change / changes) : rounds;
            if (spent >= rounds)
            {
                break;
            }

            if ((int)spent > round)
            {
                round = (int)spent;
                search.Return();
                warmest = Math.Max(Warm, search.value / (1 + search.Best.Score.Late));
            }

            search.Step(warmest * Math.Pow(Coolest / warmest, spent - round));
        }

        return search.Best;
    }

    // One change, kept where it is better or chance allows it.
    private void Step(double warmth)
    {
        if (!moves.Change(sequence, pressOf, late, changed, changedPress))
        {
            return;
        }

        ClockScore score = clock.Run(changed, changedPress, FirstChanged());
        double other = ValueOf(score);
        if (other > value && chance.NextDouble() >= Math.Exp((value - other) / warmth))
        {
            return;
        }

        clock.Keep();
        (sequence, changed) = (changed, sequence);
        (pressOf, changedPress) = (changedPress, pressOf);
        (value, late) = (other, Late());
        if (score.CompareTo(Best.Score) < 0)
        {
            Best = ([.. sequence], [.. pressOf], score);
        }
    }

    private int FirstChanged()
    {
        int first = 0;
        while (first < sequence.Length && sequence[first] == changed[first] && pressOf[sequence[first]] == changedPress[changed[first]])
        {
            first++;
        }

        return first == sequence.Length ? 0 : first;
    }

    // Goes on from the best.
    private void Return()
    {
        (sequence, pressOf, value) = ([.. Best.Sequence], [.. Best.PressOf], ValueOf(Best.Score));
        clock.Run(sequence, pressOf, 0);
        clock.Keep();
        late = Late();
    }

    private double ValueOf(ClockScore score)
    {
        double mounting = shop.HourRate * shop.MountHours.Average();
        double money = mounting > 0 ? score.Money / mounting : score.Money;
        return (OfBall * score.Unplaced) + (OfDay * score.WeightedDays) + (OfHour * score.WeightedHours) + (OfLate * score.Late) + money
            + (OfMounting * score.Mountings);
    }

    // Pieces of late orders, and those without a place.
    private List<int> Late() =>
    [
        .. Enumerable.Range(0, shop.Pieces.Count).Where(piece =>
            !clock.Clock.Times.Placed[piece] || clock.Clock.DoneAt(shop.OrderOf[piece]) > shop.Due[shop.OrderOf[piece]]),
    ];
}
