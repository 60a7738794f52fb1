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
    private readonly ClockState now;

    /// <summary>A clock for a shop.</summary>
    /// <param name="shop">The shop.</param>
    public PressClock(ClockShop shop)
    {
        this.shop = shop;
        Times = new PieceTimes(shop.Pieces.Count);
        now = new ClockState(shop);
    }

    /// <summary>The times of the pieces timed so far.</summary>
    public PieceTimes Times { get; }

    /// <summary>When a press is free.</summary>
    public double FreeAt(int press) => now.Free[press];

    /// <summary>When the last piece of an order ends; below 0 where none is cut.</summary>
    public double DoneAt(int order) => now.Done[order];

    /// <summary>How things stand.</summary>
    public ClockState Now => now;

    /// <summary>Times all pieces of a sequence.</summary>
    /// <param name="sequence">The pieces in the order in which they are given out.</param>
    /// <param name="pressOf">The press of each piece, by its number.</param>
    public ClockScore Run(int[] sequence, int[] pressOf)
    {
        now.Begin();
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
            now.Unplaced += shop.Balls[piece];
            return false;
        }

        int die = shop.DieOf[piece];
        int roll = shop.RollOf[piece];
        bool mounts = now.On[press] != die || !now.Used[die];
        bool paid = now.On[press] != die;
        bool rolls = Changes(roll, press);
        now.Busy[press] += hours;
        TakeDown(die, press);

        (now.On[press], now.PlaceOfDie[die], now.Used[die], now.DieFree[die]) = (die, press, true, slot.End);
        (now.RollOn[press], now.PlaceOfRoll[roll], now.RollFree[roll]) = (roll, press, slot.End);
        now.Free[press] = slot.End;
        int order = shop.OrderOf[piece];
        now.Done[order] = Math.Max(now.Done[order], slot.End);
        now.Mountings += paid ? 1 : 0;
        now.Money += Money(slot, press, paid, rolls);
        Note(piece, slot, (mounts, paid, rolls));
        return true;
    }

    /// <summary>What the pieces so far come to.</summary>
    public ClockScore Score()
    {
        long days = 0;
        int late = 0;
        double weighted = 0;
        for (int order = 0; order < now.Done.Length; order++)
        {
            double over = now.Done[order] - shop.Due[order];
            if (now.Done[order] >= 0 && over > Midnight)
            {
                days += shop.Priority[order] * (long)Math.Ceiling((over - Midnight) / 24);
                weighted += shop.Priority[order] * over;
                late++;
            }
        }

        return new ClockScore
        {
            Unplaced = now.Unplaced,
            WeightedDays = days,
            Late = late,
            Money = now.Money,
            Mountings = now.Mountings,
            WeightedHours = weighted,
        };
    }

    // Where a piece would lie on a press, or nothing where it has no hours for it.
    private Slot? Seen(int piece, int press, out double hours)
    {
        int die = shop.DieOf[piece];
        int roll = shop.RollOf[piece];
        double mount = now.On[press] == die ? 0 : shop.MountHours[press];
        double change = Changes(roll, press) ? shop.RollHours[press] : 0;
        hours = shop.Hours[press][piece] + mount + change;
        if (now.Busy[press] + hours > shop.MostHours[press] + Slack)
        {
            return null;
        }

        OpenHours open = shop.Open[press];
        double at = Math.Max(now.Free[press], now.DieFree[die]);
        double mountStart = mount > 0 ? open.NextOpen(at) : at;
        double mountEnd = mount > 0 ? open.After(mountStart, mount) : at;
        at = Math.Max(Math.Max(mountEnd, now.RollFree[roll]), shop.OrderFrom[shop.OrderOf[piece]]);
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
        if (now.PlaceOfDie[die] is var from && from >= 0 && from != press)
        {
            now.On[from] = -1;
        }

        if (now.On[press] is var old && old >= 0 && old != die)
        {
            now.PlaceOfDie[old] = -1;
        }
    }

    private bool Changes(int roll, int press) => now.RollOn[press] != roll || now.PlaceOfRoll[roll] != press;

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
