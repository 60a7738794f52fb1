using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Priced;

/// <summary>One thing changed in what rows cost, the lays as they are.</summary>
/// <param name="Costs">Costs of all rows.</param>
/// <param name="Row">The only row that the next two hold for, or null.</param>
/// <param name="FaultPercent">Faults of that row, per cent, or null for those it has.</param>
/// <param name="Price">Price of that row's felt, or null for the one it has.</param>
internal sealed record PriceChange(CostInputs Costs, string? Row = null, double? FaultPercent = null, decimal? Price = null)
{
    /// <summary>The same without what does not hold for a row.</summary>
    public PriceChange For(string row) => Row is null || Row == row ? this : this with { FaultPercent = null, Price = null };
}
