namespace FeltNest.Rolls.Orders.Clock;

/// <summary>Times pieces one after the other, each as early as its press, die and roll allow.</summary>
/// <remarks>A press does one thing at a time: it mounts a die, then puts a roll on, then strikes. A die and a roll are in one place at a
/// time. A die is free again with its last strike, a roll too; whoever mounts a die that stands elsewhere takes it down there in the same
/// minutes. Work and changes pause while the press is closed, and go on after it. A piece that no press has hours for is left out, and
/// holds nothing up.</remarks>
internal sealed class PressClock
{
    // A press may be busy for so much longer, hours: rounding of sums.
    private const double Slack = 1e-9;

    // Work that ends so shortly after midnight, hours, ends in the day before.
    private const double Midnight = 1e-7;

    private readonly ClockShop shop;
    private readonly double[] free;
    private readonly double[] busy;
    private readonly int[] on;
    private readonly int[] rollOn;
    private readonly int[] placeOfDie;
    private readonly int[] placeOfRoll;
    private readonly double[] dieFree;
    private readonly double[] rollFree;
    private readonly double[] done;
    private readonly bool[] used;
    private long unplaced;
    private int mountings;
    private double money;

    /// <summary>A clock for a shop.</summary>
    /// <param name="shop">The shop.</param>
    public PressClock(ClockShop shop)
    {
        this.shop = shop;
        Times = new PieceTimes(shop.Pieces.Count);
        int presses = shop.Open.Length;
        (free, busy, on, rollOn) = (new double[presses], new double[presses], new int[presses], new int[presses]);
        (placeOfDie, dieFree, used) = (new int[shop.DieFrom.Length], new double[shop.DieFrom.Length], new bool[shop.DieFrom.Length]);
        (placeOfRoll, rollFree) = (new int[shop.RollFrom.Length], new double[shop.RollFrom.Length]);
        done = new double[shop.Due.Length];
        Begin();
    }

    /// <summary>The times of the pieces timed so far.</summary>
    public PieceTimes Times { get; }

    /// <summary>When a press is free.</summary>
    public double FreeAt(int press) => free[press];

    /// <summary>When the last piece of an order ends; below 0 where none is cut.</summary>
    public double DoneAt(int order) => done[order];

    /// <summary>Begins anew.</summary>
    public void Begin()
    {
        Array.Clear(free);
        Array.Clear(busy);
        Array.Clear(used);
        Array.Fill(rollOn, -1);
        Array.Fill(placeOfDie, -1);
        Array.Fill(placeOfRoll, -1);
        Array.Fill(done, -1);
        shop.DieFrom.CopyTo(dieFree, 0);
        shop.RollFrom.CopyTo(rollFree, 0);
        shop.Mounted.CopyTo(on, 0);
        for (int press = 0; press < on.Length; press++)
        {
            if (on[press] >= 0)
            {
                placeOfDie[on[press]] = press;
            }
        }

        (unplaced, mountings, money) = (0, 0, 0);
    }

    /// <summary>Times all pieces of a sequence.</summary>
    /// <param name="sequence">The pieces in the order in which they are given out.</param>
    /// <param name="pressOf">The press of each piece, by its number.</param>
    public ClockScore Run(int[] sequence, int[] pressOf)
    {
        Begin();
        foreach (int piece in sequence)
        {
            Add(piece, pressOf[piece]);
        }

        return Score();
    }

    /// <summary>When a piece could begin on a press as things stand; infinite where it cannot be cut there.</summary>
    public double StartOf(int piece, int press) => Seen(piece, press, out _) is { } slot ? slot.Start : double.PositiveInfinity;

    /// <summary>Gives a piece to a press.</summary>
    /// <returns>Whether the press has hours for it.</returns>
    public bool Add(int piece, int press)
    {
        if (Seen(piece, press, out double hours) is not { } slot)
        {
            Times.Placed[piece] = false;
            unplaced += shop.Balls[piece];
            return false;
        }

        int die = shop.DieOf[piece];
        int roll = shop.RollOf[piece];
        bool mounts = on[press] != die || !used[die];
        bool paid = on[press] != die;
        bool rolls = Changes(roll, press);
        busy[press] += hours;
        TakeDown(die, press);

        (on[press], placeOfDie[die], used[die], dieFree[die]) = (die, press, true, slot.End);
        (rollOn[press], placeOfRoll[roll], rollFree[roll]) = (roll, press, slot.End);
        free[press] = slot.End;
        int order = shop.OrderOf[piece];
        done[order] = Math.Max(done[order], slot.End);
        mountings += paid ? 1 : 0;
        money += Money(slot, press, paid, rolls);
        Note(piece, slot, (mounts, paid, rolls));
        return true;
    }

    /// <summary>What the pieces so far come to.</summary>
    public ClockScore Score()
    {
        long days = 0;
        int late = 0;
        double weighted = 0;
        for (int order = 0; order < done.Length; order++)
        {
            double over = done[order] - shop.Due[order];
            if (done[order] >= 0 && over > Midnight)
            {
                days += shop.Priority[order] * (long)Math.Ceiling((over - Midnight) / 24);
                weighted += shop.Priority[order] * over;
                late++;
            }
        }

        return new ClockScore
        {
            Unplaced = unplaced,
            WeightedDays = days,
            Late = late,
            Money = money,
            Mountings = mountings,
            WeightedHours = weighted,
        };
    }

    // Where a piece would lie on a press, or nothing where it has no hours for it.
    private Slot? Seen(int piece, int press, out double hours)
    {
        int die = shop.DieOf[piece];
        int roll = shop.RollOf[piece];
        double mount = on[press] == die ? 0 : shop.MountHours[press];
        double change = Changes(roll, press) ? shop.RollHours[press] : 0;
        hours = shop.Hours[press][piece] + mount + change;
        if (busy[press] + hours > shop.MostHours[press] + Slack)
        {
            return null;
        }

        OpenHours open = shop.Open[press];
        double at = Math.Max(free[press], dieFree[die]);
        double mountStart = mount > 0 ? open.NextOpen(at) : at;
        double mountEnd = mount > 0 ? open.After(mountStart, mount) : at;
        at = Math.Max(mountEnd, rollFree[roll]);
        double rolled = change > 0 ? open.After(at, change) : at;
        double start = open.NextOpen(rolled);
        double end = open.After(start, shop.Hours[press][piece]);
        return end <= OpenHours.MostHours
            ? new Slot { MountStart = mountStart, MountEnd = mountEnd, Rolled = rolled, Start = start, End = end }
            : null;
    }

    // A die that stands elsewhere leaves its press empty, one that stood on this press goes to the rack.
    private void TakeDown(int die, int press)
    {
        if (placeOfDie[die] is var from && from >= 0 && from != press)
        {
            on[from] = -1;
        }

        if (on[press] is var old && old >= 0 && old != die)
        {
            placeOfDie[old] = -1;
        }
    }

    private bool Changes(int roll, int press) => rollOn[press] != roll || placeOfRoll[roll] != press;

    private double Money(Slot slot, int press, bool paid, bool rolls)
    {
        OpenHours open = shop.Open[press];
        double cost = paid ? shop.HourRate * shop.MountHours[press] : 0;
        if (open.HasOvertime)
        {
            decimal changed = rolls ? open.Price(open.Back(slot.Rolled, shop.RollHours[press]), slot.Rolled) : 0;
            cost += (double)(open.Price(slot.MountStart, slot.MountEnd) + changed + open.Price(slot.Start, slot.End));
        }

        return cost;
    }

    private void Note(int piece, Slot slot, (bool Mounts, bool Paid, bool Rolls) changes)
    {
        Times.Placed[piece] = true;
        (Times.Start[piece], Times.End[piece]) = (slot.Start, slot.End);
        (Times.Mounts[piece], Times.Paid[piece], Times.RollChange[piece]) = changes;
        (Times.MountStart[piece], Times.MountEnd[piece]) = (slot.MountStart, slot.MountEnd);
    }

    // Where a piece lies: mounting, end of the roll change, strikes.
    private readonly record struct Slot
    {
        public required double MountStart { get; init; }

        public required double MountEnd { get; init; }

        public required double Rolled { get; init; }

        public required double Start { get; init; }

        public required double End { get; init; }
    }
}
