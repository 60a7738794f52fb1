using FeltNest.Cost.Offers;

namespace FeltNest.Cost.Sheet;

/// <summary>The standard cost of a thousand good balls, line by line.</summary>
/// <param name="Currency">Currency of every amount.</param>
/// <param name="Price">Price of the felt as quoted, that of its tier where there are tiers.</param>
/// <param name="Lines">Lines 1 to 19 in order, then 20 to 25, the parts of line 10.</param>
/// <param name="NotCounted">Lines for which no figure was given.</param>
public sealed record CostSheet(string Currency, FeltPrice Price, IReadOnlyList<CostLine> Lines, IReadOnlyList<string> NotCounted)
{
    /// <summary>The die that line 15 counts, at the price for its cavities; null where none is known.</summary>
    public DieCost? Die { get; init; }

    /// <summary>Line 19: everything, for a thousand balls.</summary>
    public decimal Total => AmountOf(19);

    /// <summary>The total without the wear of the die and its overhead.</summary>
    public decimal WithoutDie
    {
        get
        {
            decimal conversion = Enumerable.Range(13, 5).Sum(AmountOf);
            return conversion == 0 ? Total : Total - (AmountOf(15) * (1 + (AmountOf(18) / conversion)));
        }
    }

    /// <summary>Money of a line, 0 where it is not counted.</summary>
    public decimal AmountOf(int number) => Lines[number - 1].Amount ?? 0;

    /// <summary>What is bought, or null where no number of balls is known.</summary>
    public FeltBought? Purchase { get; init; }

    /// <summary>Money by which the total grows where the price of one unit grows by one, in the sheet's currency.</summary>
    public required decimal TotalPerPrice { get; init; }

    /// <summary>Parts of line 10: felt at its price, freight, duty, credit, surplus, coating and cement.</summary>
    public IEnumerable<CostLine> FeltParts => Lines.Skip(19);

    /// <summary>The price of this felt, in its own unit and currency, at which the total would be another one; below 0 where even a gift
    /// would cost more.</summary>
    public decimal PriceForTotal(decimal total) => Price.Amount + ((total - Total) / TotalPerPrice);
}
