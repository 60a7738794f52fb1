namespace FeltNest.Cost.Sheet;

/// <summary>Dies and layers to be weighed against each other.</summary>
/// <param name="Cavities">Most panels of one layer that each die cuts.</param>
/// <param name="Plies">Layers under one strike.</param>
/// <param name="PricePerCavity">Price of a die for each of its cavities, on top of the price of the die.</param>
/// <param name="PricePerExtraPly">Labour of a strike for each layer above the first, on top of the price of the strike.</param>
public sealed record GangOptions(IReadOnlyList<int> Cavities, IReadOnlyList<int> Plies, decimal PricePerCavity, decimal PricePerExtraPly);
