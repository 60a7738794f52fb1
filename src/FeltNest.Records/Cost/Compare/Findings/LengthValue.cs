using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>What a millimetre is worth on the best row, laid anew.</summary>
/// <param name="Change">What is changed, in words.</param>
/// <param name="SquareMetresPerMillionBalls">Change of the felt bought for a million good balls, m2; below 0 is saved.</param>
/// <param name="PartsPerMillionBalls">Change of the cost by felt, strikes, die and the rest, or null.</param>
public sealed record LengthValue(string Change, double SquareMetresPerMillionBalls, CostParts? PartsPerMillionBalls)
{
    /// <summary>Change of the cost, or null.</summary>
    public decimal? MoneyPerMillionBalls => PartsPerMillionBalls?.Total;
}
