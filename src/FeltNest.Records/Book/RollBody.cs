namespace FeltNest.Book;

/// <summary>A roll as it came in.</summary>
internal sealed record RollBody
{
    public required string Felt { get; init; }

    public required string Lot { get; init; }

    public string? Supplier { get; init; }

    public required decimal WidthMm { get; init; }

    /// <summary>Length as invoiced or listed, m.</summary>
    public required decimal LengthM { get; init; }

    public required decimal Price { get; init; }

    public required string PriceUnit { get; init; }

    public required string Currency { get; init; }

    public required bool Available { get; init; }

    public decimal? MassPerAreaGsm { get; init; }

    public decimal? FaultPercent { get; init; }

    public string? Received { get; init; }

    public string? NapToward { get; init; }

    public string? MeasuredFile { get; init; }
}
