namespace FeltNest.Cost.Sheet;

/// <summary>Dies and layers to be weighed against each other.</summary>
public sealed record GangOptions
{
    /// <summary>Most panels of one layer that each die cuts.</summary>
    public required IReadOnlyList<int> Cavities { get; init; }

    /// <summary>Layers under one strike.</summary>
    public required IReadOnlyList<int> Plies { get; init; }

    /// <summary>Price of a die for each of its cavities, on top of the price of the die.</summary>
    public required decimal PricePerCavity { get; init; }

    /// <summary>Labour of a strike for each layer above the first, on top of the price of the strike.</summary>
    public required decimal PricePerExtraPly { get; init; }
}
