namespace FeltNest.Rolls.Orders;

/// <summary>A run of strikes that is to be: an order, a die, a roll.</summary>
/// <param name="Order">The order.</param>
/// <param name="Die">The die.</param>
/// <param name="Roll">The roll.</param>
/// <param name="Strikes">Strikes.</param>
internal sealed record CutPiece(CoverOrder Order, CutDie Die, StockRoll Roll, int Strikes)
{
    /// <summary>Whole good balls to expect of it.</summary>
    public int BallsIn(OrderRequest question) => Die.Shape.BallsOf(Strikes, question.GoodShare(Roll, Die));
}
