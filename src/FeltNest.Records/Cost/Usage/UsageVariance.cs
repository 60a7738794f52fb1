using FeltNest.Cost.Offers;
using FeltNest.Yield;

namespace FeltNest.Cost.Usage;

/// <summary>The difference between the felt used and the standard, split by cause.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Balls">Good balls: pairs of good panels.</param>
/// <param name="Unit">What felt is counted in: that of the standard price, square metres without one.</param>
/// <param name="Standard">Felt that the standard allows for these balls.</param>
/// <param name="Actual">Felt used.</param>
/// <param name="StandardCost">That felt at the standard price; null without one.</param>
/// <param name="ActualCost">What was paid; at the standard price where no price was recorded; null without a standard price.</param>
/// <param name="Currency">Currency of the money, or null.</param>
/// <param name="Parts">One part a cause, in the order of the causes: quantities add to the difference of the felt, money to that of the
/// cost.</param>
/// <param name="NotRecorded">Causes taken at their standard because nothing was recorded; what they really did stands in the part of the
/// lay.</param>
/// <param name="Rolls">The rolls one by one.</param>
public sealed record UsageVariance(
    UsageQuestion Question, double Balls, PriceUnit Unit, FeltUsage Standard, FeltUsage Actual, decimal? StandardCost, decimal? ActualCost,
    string? Currency,
    IReadOnlyList<UsagePart> Parts, IReadOnlyList<UsageCause> NotRecorded, IReadOnlyList<UsageRoll> Rolls)
{
    /// <summary>Felt used above standard, in the unit of the account.</summary>
    public double MoreQuantity => FeltPrice.QuantityOf(Unit, Actual) - FeltPrice.QuantityOf(Unit, Standard);

    /// <summary>The same, per cent of the standard.</summary>
    public double MorePercent => 100 * MoreQuantity / FeltPrice.QuantityOf(Unit, Standard);

    /// <summary>Cost above standard, or null.</summary>
    public decimal? MoreMoney => ActualCost - StandardCost;
}
