namespace FeltNest.Rolls.Orders.Clock;

/// <summary>Times a changed sequence from the first piece that is another one: states of the kept sequence are held at marks.</summary>
internal sealed class ChangedClock
{
    // Marks of a sequence: more cost more to copy than they save.
    private const int Marks = 16;

    private readonly PressClock clock;
    private readonly ClockState[] kept;
    private readonly ClockState[] tried;
    private readonly int step;
    private int from;

    /// <summary>A clock for a shop.</summary>
    /// <param name="shop">The shop.</param>
    public ChangedClock(ClockShop shop)
    {
        clock = new PressClock(shop);
        step = (shop.Pieces.Count / Marks) + 1;
        kept = [.. Enumerable.Range(0, Marks + 1).Select(_ => new ClockState(shop))];
        tried = [.. Enumerable.Range(0, Marks + 1).Select(_ => new ClockState(shop))];
    }

    /// <summary>The clock, as it stands after the sequence that was timed last.</summary>
    public PressClock Clock => clock;

    /// <summary>Pieces timed so far.</summary>
    public long Timed { get; private set; }

    /// <summary>Times a sequence that is the kept one up to a place.</summary>
    /// <param name="sequence">The pieces.</param>
    /// <param name="pressOf">The press of each piece, by its number.</param>
    /// <param name="first">The first place that differs from the kept sequence; 0 where none is kept.</param>
    public ClockScore Run(int[] sequence, int[] pressOf, int first)
    {
        from = first / step;
        clock.Now.Take(kept[from]);
        for (int i = from * step; i < sequence.Length; i++)
        {
            if (i % step == 0 && i / step > from)
            {
                tried[i / step].Take(clock.Now);
            }

            clock.Add(sequence[i], pressOf[sequence[i]]);
        }

        Timed += sequence.Length - (from * step);
        return clock.Score();
    }

    /// <summary>Keeps the sequence that was timed last.</summary>
    public void Keep()
    {
        for (int mark = from + 1; mark < kept.Length; mark++)
        {
            (kept[mark], tried[mark]) = (tried[mark], kept[mark]);
        }
    }
}
