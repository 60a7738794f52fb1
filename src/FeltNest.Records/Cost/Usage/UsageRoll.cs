using FeltNest.Yield;

namespace FeltNest.Cost.Usage;

/// <summary>One roll against its standard.</summary>
/// <param name="Actual">What it gave.</param>
/// <param name="Balls">Good balls it stands for.</param>
/// <param name="RowsPercent">Panels per metre that its width takes, per cent of the layout's.</param>
/// <param name="PerThousandBalls">Felt used per thousand good balls; infinite where it gave none.</param>
/// <param name="MorePercent">Felt used above the standard for its balls, in the unit of the account, %; infinite where it gave
/// none.</param>
public sealed record UsageRoll(ActualRoll Actual, double Balls, double RowsPercent, FeltUsage PerThousandBalls, double MorePercent);
