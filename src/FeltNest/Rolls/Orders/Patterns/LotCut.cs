namespace FeltNest.Rolls.Orders.Patterns;

/// <summary>A run of strikes on a roll of a lot.</summary>
internal readonly record struct LotCut
{
    /// <summary>The roll.</summary>
    public required StockRoll Roll { get; init; }

    /// <summary>Place of the order in the question.</summary>
    public required int Order { get; init; }

    /// <summary>Place of the die in the question.</summary>
    public required int Die { get; init; }

    /// <summary>Strikes.</summary>
    public required int Strikes { get; init; }
}
