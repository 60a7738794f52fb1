using FeltNest.Cost.Offers;
using FeltNest.Yield;

namespace FeltNest.Cost.Usage;

/// <summary>The difference between the felt used and the standard, split by cause.</summary>
internal sealed record UsageVariance
{
    /// <summary>What was asked.</summary>
    public required UsageRequest Question { get; init; }

    /// <summary>Good balls: pairs of good panels.</summary>
    public required double Balls { get; init; }

    /// <summary>What felt is counted in: that of the standard price, square metres without one.</summary>
    public required PriceUnit Unit { get; init; }

    /// <summary>Felt that the standard allows for these balls.</summary>
    public required FeltUsage Standard { get; init; }

    /// <summary>Felt used.</summary>
    public required FeltUsage Actual { get; init; }

    /// <summary>That felt at the standard price; null without one.</summary>
    public required decimal? StandardCost { get; init; }

    /// <summary>What was paid; at the standard price where no price was recorded; null without a standard price.</summary>
    public required decimal? ActualCost { get; init; }

    /// <summary>Currency of the money, or null.</summary>
    public required string? Currency { get; init; }

    /// <summary>One part a cause, in the order of the causes: quantities add to the difference of the felt, money to that of the
    /// cost.</summary>
    public required IReadOnlyList<UsagePart> Parts { get; init; }

    /// <summary>Causes taken at their standard because nothing was recorded; what they really did stands in the part of the
    /// lay.</summary>
    public required IReadOnlyList<UsageCause> NotRecorded { get; init; }

    /// <summary>The rolls one by one.</summary>
    public required IReadOnlyList<UsageRoll> Rolls { get; init; }

    /// <summary>Felt used above standard, in the unit of the account.</summary>
    public double MoreQuantity => FeltPrice.QuantityOf(Unit, Actual) - FeltPrice.QuantityOf(Unit, Standard);

    /// <summary>The same, per cent of the standard.</summary>
    public double MorePercent => 100 * MoreQuantity / FeltPrice.QuantityOf(Unit, Standard);

    /// <summary>Cost above standard, or null.</summary>
    public decimal? MoreMoney => ActualCost - StandardCost;
}
