namespace FeltNest.Rolls.Orders;

/// <summary>Rolls of one kind that can be bought.</summary>
/// <param name="Roll">What one of them is: its name is the offer's.</param>
/// <param name="MinimumM">Least length that is sold, m; 0 for none.</param>
internal sealed record FeltPurchase(StockRoll Roll, double MinimumM)
{
    /// <summary>Roll number k of the offer, from 1.</summary>
    public StockRoll Copy(int k) => Roll with { Name = $"{Roll.Name} #{k}", Offer = Roll.Name };
}
