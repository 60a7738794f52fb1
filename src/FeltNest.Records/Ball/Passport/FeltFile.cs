namespace FeltNest.Ball.Passport;

/// <summary>What a ball takes from the file of a measured felt.</summary>
internal sealed record FeltFile
{
    /// <summary>Name of the felt.</summary>
    public required string Name { get; init; }

    /// <summary>The lot.</summary>
    public required FeltLot Lot { get; init; }

    /// <summary>The figures that were measured, each with half of its 95 % interval, which a bracket has not.</summary>
    public required IReadOnlyDictionary<FeltQuantity, (double Value, double? Interval)> Values { get; init; }
}
