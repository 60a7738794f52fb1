namespace FeltNest.Rolls.Orders.Model;

/// <summary>An order cut by a die from one roll.</summary>
internal sealed record CutChoice
{
    /// <summary>The order.</summary>
    public required CoverOrder Order { get; init; }

    /// <summary>The die.</summary>
    public required CutDie Die { get; init; }

    /// <summary>Least strikes of a piece.</summary>
    public required int Least { get; init; }

    /// <summary>Most strikes of a piece.</summary>
    public required int Most { get; init; }

    /// <summary>The choices a roll offers.</summary>
    public static CutChoice[] On(StockRoll roll, OrderRequest question) =>
    [
        .. from order in question.Orders
           from die in question.Dies
           where question.Fits(order, roll, die) && question.Presses.Any(press => OrderRequest.CutsOn(order, press, die))
           let least = question.LeastStrikes(order, roll, die)
           let most = Math.Min(die.Shape.StrikesIn(question.ClearM(roll)), Enough(order, roll, die, question))
           where most >= least
           select new CutChoice { Order = order, Die = die, Least = least, Most = most },
    ];

    // What the order needs were it all cut here, in the safe count of the model: one strike covers what uneven classes leave.
    private static int Enough(CoverOrder order, StockRoll roll, CutDie die, OrderRequest question)
    {
        double share = question.GoodShare(roll, die);
        return (int)Math.Ceiling((order.Balls + die.Shape.UnevenClasses(share)) / die.Shape.BallsPerStrike(share));
    }
}
