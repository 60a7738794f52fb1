using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Die.Gang;

/// <summary>A die that tiles a layout, told by its cavities alone: what is chosen from before any is built.</summary>
/// <param name="Share">Panels of one repeat that the die cuts.</param>
/// <param name="Places">Moves of the die within a feed.</param>
/// <param name="Repeats">Repeats to one feed.</param>
internal sealed record GangCount(IReadOnlyList<PlacedPanel> Share, IReadOnlyList<Point2> Places, int Repeats)
{
    /// <summary>Its cavities.</summary>
    public int Cavities => Share.Count * Repeats;
}
