using FeltNest.Layout;

namespace FeltNest.Die.Gang;

/// <summary>One cavity of a gang die.</summary>
/// <param name="Number">From 1, along the roll first in each row across.</param>
/// <param name="Placed">Its part in the die's frame: origin at the board's lower left corner, x along the feed, y across, seen from the nap
/// side.</param>
public readonly record struct DieCavity(int Number, PlacedPanel Placed);
