namespace FeltNest.Die.Stock;

/// <summary>How one length of stock is cut.</summary>
public sealed record StockCut
{
    /// <summary>Lengths that are cut so.</summary>
    public required int Times { get; init; }

    /// <summary>Pieces, by their places in the list of strips, longest first, each so many times.</summary>
    public required IReadOnlyList<(int Strip, int Count)> Pieces { get; init; }

    /// <summary>What is left over, mm.</summary>
    public required double OffcutMm { get; init; }
}
