namespace FeltNest.Cost.Families;

/// <summary>The width that each ball is cut on.</summary>
internal sealed record StockAnswer
{
    /// <summary>Place of the width of each ball.</summary>
    public required IReadOnlyList<int> WidthOf { get; init; }

    /// <summary>Hundredths of the currency a year.</summary>
    public required long Total { get; init; }

    /// <summary>No choice costs less than this.</summary>
    public required long Bound { get; init; }
}
