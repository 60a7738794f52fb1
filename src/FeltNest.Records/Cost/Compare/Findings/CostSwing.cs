namespace FeltNest.Cost.Compare.Findings;

/// <summary>What a figure that may be off does to the cost of the best row, all others as they are.</summary>
/// <param name="Assumption">What it is, with its unit.</param>
/// <param name="Low">Its least value.</param>
/// <param name="Likely">Its likely value.</param>
/// <param name="High">Its greatest value.</param>
/// <param name="TotalAtLow">Cost of a thousand balls of the best row at the least value.</param>
/// <param name="TotalAtHigh">The same at the greatest value.</param>
/// <param name="BestAtLow">Row that is the cheapest at the least value.</param>
/// <param name="BestAtHigh">Row that is the cheapest at the greatest value.</param>
public sealed record CostSwing(
    string Assumption, double Low, double Likely, double High, decimal TotalAtLow, decimal TotalAtHigh, string BestAtLow, string BestAtHigh)
{
    /// <summary>How far the total goes.</summary>
    public decimal Span => Math.Abs(TotalAtHigh - TotalAtLow);
}
