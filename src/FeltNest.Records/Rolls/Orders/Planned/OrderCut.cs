namespace FeltNest.Rolls.Orders.Planned;

/// <summary>One piece of work: an order cut from one roll by one die in one run of strikes.</summary>
/// <param name="Number">Place in the work list: press by press, in the order of cutting.</param>
/// <param name="Order">The order.</param>
/// <param name="Roll">The roll.</param>
/// <param name="Die">The die.</param>
/// <param name="Press">The press.</param>
/// <param name="Strikes">Strikes.</param>
/// <param name="GoodBalls">Whole good balls to expect.</param>
/// <param name="FromM">Where its cloth begins on the roll, m.</param>
/// <param name="StartHour">Hour of the press at which it begins.</param>
/// <param name="EndHour">Hour of the press at which it ends.</param>
public sealed record OrderCut(
    int Number, CoverOrder Order, StockRoll Roll, CutDie Die, PressSpec Press, int Strikes, int GoodBalls, double FromM, double StartHour,
    double EndHour)
{
    /// <summary>Cloth it takes, m.</summary>
    public double Metres => Die.Shape.MetresOf(Strikes);

    /// <summary>Where its cloth ends on the roll, m.</summary>
    public double ToM => FromM + Metres;
}
