namespace FeltNest.Cost.Families;

/// <summary>Balls that are each cut on one stocked width, in whole hundredths of the currency.</summary>
internal sealed record StockQuestion
{
    /// <summary>Money a year to keep each width in stock.</summary>
    public required IReadOnlyList<long> WidthCosts { get; init; }

    /// <summary>Money a year of each ball on each width; null where it cannot be cut there.</summary>
    public required IReadOnlyList<IReadOnlyList<long?>> BallCosts { get; init; }

    /// <summary>Most widths stocked, or null for any number.</summary>
    public required int? MostWidths { get; init; }
}
