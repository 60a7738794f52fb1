namespace FeltNest.Rolls.Orders.Planned;

/// <summary>One piece of work: an order cut from one roll by one die in one run of strikes.</summary>
internal sealed record OrderCut
{
    /// <summary>Place in the work list: press by press, in the order of cutting.</summary>
    public required int Number { get; init; }

    /// <summary>The order.</summary>
    public required CoverOrder Order { get; init; }

    /// <summary>The roll.</summary>
    public required StockRoll Roll { get; init; }

    /// <summary>The die.</summary>
    public required CutDie Die { get; init; }

    /// <summary>The press.</summary>
    public required PressSpec Press { get; init; }

    /// <summary>Strikes.</summary>
    public required int Strikes { get; init; }

    /// <summary>Whole good balls to expect.</summary>
    public required int GoodBalls { get; init; }

    /// <summary>Whole good balls of the layout's other part that come besides; they serve no order.</summary>
    public int AlsoBalls { get; init; }

    /// <summary>Where its cloth begins on the roll, m.</summary>
    public required double FromM { get; init; }

    /// <summary>Whether its roll is put on the press before it; that ends where the piece begins.</summary>
    public bool RollChange { get; init; }

    /// <summary>When its first strike begins, hours since 00:00 of the first day of cutting.</summary>
    public required double StartHour { get; init; }

    /// <summary>When its last strike ends, hours since 00:00 of the first day of cutting.</summary>
    public required double EndHour { get; init; }

    /// <summary>Open hours its strikes take.</summary>
    public double WorkHours => Strikes / Press.StrokesPerMinute / 60;

    /// <summary>Cloth it takes, m.</summary>
    public double Metres => Die.Shape.MetresOf(Strikes);

    /// <summary>Where its cloth ends on the roll, m.</summary>
    public double ToM => FromM + Metres;
}
