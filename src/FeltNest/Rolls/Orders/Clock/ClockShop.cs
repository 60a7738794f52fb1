namespace FeltNest.Rolls.Orders.Clock;

/// <summary>What timing needs of a question and of pieces to be cut, by number: presses, dies, rolls, orders.</summary>
internal sealed class ClockShop
{
    private readonly OrderRequest question;

    /// <summary>Numbers of a question.</summary>
    /// <param name="question">The question.</param>
    /// <param name="pieces">The pieces.</param>
    public ClockShop(OrderRequest question, IReadOnlyList<CutPiece> pieces)
    {
        this.question = question;
        Pieces = pieces;
        Dies = [.. pieces.Select(p => p.Die).DistinctBy(d => d.Name)];
        Orders = [.. pieces.Select(p => p.Order).DistinctBy(o => o.Name)];
        StockRoll[] rolls = [.. pieces.Select(p => p.Roll).DistinctBy(r => r.Name)];
        OrderOf = Numbers(pieces.Select(p => p.Order.Name), Orders.Select(o => o.Name));
        DieOf = Numbers(pieces.Select(p => p.Die.Name), Dies.Select(d => d.Name));
        RollOf = Numbers(pieces.Select(p => p.Roll.Name), rolls.Select(r => r.Name));
        Balls = [.. pieces.Select(p => p.BallsIn(question))];
        DieFrom = [.. Dies.Select(question.ThereFrom)];
        RollFrom = [.. rolls.Select(question.ThereFrom)];
        Due = [.. Orders.Select(o => question.Rules.HoursUntil(o.InTimeUntil))];
        OrderFrom = [.. Orders.Select(o => question.Rules.HourOf(o.Pins?.Day))];
        First = [.. pieces.Select(p => p.Order.Pins is { First: true })];
        Priority = [.. Orders.Select(o => o.Priority)];
        Hours = [.. question.Presses.Select(press => pieces.Select(piece => HoursOn(press, piece)).ToArray())];
        MountHours = [.. question.Presses.Select(press => press.ChangeOverMinutes / 60)];
        RollHours = [.. question.Presses.Select(press => press.RollChangeMinutes / 60)];
        MostHours = [.. question.Presses.Select(press => press.Hours ?? double.PositiveInfinity)];
        Mounted = [.. question.Presses.Select(press => Dies.ToList().FindIndex(die => die.Name == press.MountedDie))];
        HourRate = (double)question.Rules.HourRate;
        Open = [.. question.Presses.Select(press => new OpenHours(question.CalendarOf(press), question.Rules.Start))];
    }

    private ClockShop(ClockShop other, int press, OpenHours open)
    {
        question = other.question;
        (Pieces, Dies, Orders) = (other.Pieces, other.Dies, other.Orders);
        (OrderOf, DieOf, RollOf, Balls) = (other.OrderOf, other.DieOf, other.RollOf, other.Balls);
        (DieFrom, RollFrom, Due, Priority) = (other.DieFrom, other.RollFrom, other.Due, other.Priority);
        (OrderFrom, First) = (other.OrderFrom, other.First);
        (Hours, MountHours, RollHours, MostHours) = (other.Hours, other.MountHours, other.RollHours, other.MostHours);
        (Mounted, HourRate) = (other.Mounted, other.HourRate);
        Open = [.. other.Open];
        Open[press] = open;
    }

    /// <summary>The pieces.</summary>
    public IReadOnlyList<CutPiece> Pieces { get; }

    /// <summary>Dies of the pieces.</summary>
    public CutDie[] Dies { get; }

    /// <summary>Orders of the pieces.</summary>
    public CoverOrder[] Orders { get; }

    /// <summary>Order of each piece.</summary>
    public int[] OrderOf { get; }

    /// <summary>Die of each piece.</summary>
    public int[] DieOf { get; }

    /// <summary>Roll of each piece.</summary>
    public int[] RollOf { get; }

    /// <summary>Good balls of each piece.</summary>
    public int[] Balls { get; }

    /// <summary>Hour from which on each die is there.</summary>
    public double[] DieFrom { get; }

    /// <summary>Hour from which on each roll is there.</summary>
    public double[] RollFrom { get; }

    /// <summary>Hour before which nothing of each order may be cut.</summary>
    public double[] OrderFrom { get; }

    /// <summary>Whether each piece is the rest of a job that is begun: these stand first in every sequence.</summary>
    public bool[] First { get; }

    /// <summary>End of the last day on which each order is in time, hours.</summary>
    public double[] Due { get; }

    /// <summary>Weight of a day late of each order.</summary>
    public int[] Priority { get; }

    /// <summary>Open hours of each piece on each press; infinite where the press does not take its die, or not for its order.</summary>
    public double[][] Hours { get; }

    /// <summary>Hours to mount a die on each press.</summary>
    public double[] MountHours { get; }

    /// <summary>Hours to change the roll of each press.</summary>
    public double[] RollHours { get; }

    /// <summary>Most hours each press may be at work.</summary>
    public double[] MostHours { get; }

    /// <summary>Die that stands on each press at the start; -1 for none.</summary>
    public int[] Mounted { get; }

    /// <summary>What an hour of mounting costs.</summary>
    public double HourRate { get; }

    /// <summary>When each press is open.</summary>
    public OpenHours[] Open { get; }

    /// <summary>The same with only some of the overtime of one press.</summary>
    /// <param name="press">The press.</param>
    /// <param name="used">Whether an overtime is worked, by its place.</param>
    public ClockShop WithOvertime(int press, Func<int, bool> used)
    {
        PressSpec spec = question.Presses[press];
        return new ClockShop(this, press, new OpenHours(question.CalendarOf(spec), question.Rules.Start, used));
    }

    private static double HoursOn(PressSpec press, CutPiece piece) =>
        OrderRequest.CutsOn(piece.Order, press, piece.Die) ? piece.Strikes / press.StrokesPerMinute / 60 : double.PositiveInfinity;

    private static int[] Numbers(IEnumerable<string> names, IEnumerable<string> all)
    {
        Dictionary<string, int> numbers = all.Select((name, i) => (name, i)).ToDictionary(one => one.name, one => one.i);
        return [.. names.Select(name => numbers[name])];
    }
}
