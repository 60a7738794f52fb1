namespace FeltNest.Files.Orders;

/// <summary>Names in the lists of a plan that an order may be held to or kept from.</summary>
internal sealed record ShopNames
{
    /// <summary>Shade lots in stock and on offer.</summary>
    public IReadOnlyList<string> Lots { get; init; } = [];

    /// <summary>Rolls in stock and offers.</summary>
    public IReadOnlyList<string> Rolls { get; init; } = [];

    /// <summary>Presses.</summary>
    public IReadOnlyList<string> Presses { get; init; } = [];

    /// <summary>Dies on the rack or to be made.</summary>
    public IReadOnlyList<string> Dies { get; init; } = [];

    /// <summary>What the felt in stock reaches for, or null where no order is asked about.</summary>
    public StockReach? Reach { get; init; }
}
