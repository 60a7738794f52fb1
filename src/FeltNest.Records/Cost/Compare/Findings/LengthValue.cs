namespace FeltNest.Cost.Compare.Findings;

/// <summary>What a millimetre is worth on the best row, laid anew.</summary>
/// <param name="Change">What is changed, in words.</param>
/// <param name="SquareMetresPerMillionBalls">Change of the felt bought for a million good balls, m2; below 0 is saved.</param>
/// <param name="MoneyPerMillionBalls">Change of the cost, or null.</param>
public sealed record LengthValue(string Change, double SquareMetresPerMillionBalls, decimal? MoneyPerMillionBalls);
