using FeltNest.Cost.Offers;

namespace FeltNest.Cost.Sheet;

/// <summary>The standard cost of a thousand good balls, line by line.</summary>
/// <param name="Currency">Currency of every amount.</param>
/// <param name="Price">Price of the felt as quoted.</param>
/// <param name="Lines">Lines 1 to 19 in order.</param>
/// <param name="NotCounted">Lines for which no figure was given.</param>
public sealed record CostSheet(string Currency, FeltPrice Price, IReadOnlyList<CostLine> Lines, IReadOnlyList<string> NotCounted)
{
    /// <summary>The die that line 15 counts, at the price for its cavities; null where none is known.</summary>
    public DieCost? Die { get; init; }

    /// <summary>Line 19: everything, for a thousand balls.</summary>
    public decimal Total => Lines[^1].Amount ?? 0;

    /// <summary>Money of a line, 0 where it is not counted.</summary>
    public decimal AmountOf(int number) => Lines[number - 1].Amount ?? 0;

    /// <summary>Line 10: the felt as it is bought, in the unit of its price.</summary>
    public CostLine BoughtFelt => Lines[10 - 1];

    /// <summary>The price of this felt, in its own unit and currency, at which the total would be another one; below 0 where even a gift
    /// would cost more.</summary>
    public decimal PriceForTotal(decimal total, CostInputs costs) =>
        Price.Amount + ((total - Total) / ((decimal)BoughtFelt.Quantity!.Value * costs.RateOf(Price.Currency)));
}
