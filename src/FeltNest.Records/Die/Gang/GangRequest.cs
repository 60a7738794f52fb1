using FeltNest.Die.Bend;
using FeltNest.Die.Order;
using FeltNest.Layout;
using FeltNest.Rolls;

namespace FeltNest.Die.Gang;

/// <summary>The question: which cavities does one die for this layout have?</summary>
/// <param name="Layout">The layout.</param>
/// <param name="Band">Band the die is for, from 0.</param>
/// <param name="Order">What the shop wants.</param>
/// <param name="Press">The press, or null where none is known: one repeat is then one strike.</param>
/// <param name="Cavities">Cavities wanted, or null for as many as the press takes.</param>
public sealed record GangRequest(RollLayout Layout, int Band, DieOrder Order, PressSpec? Press, int? Cavities)
{
    /// <summary>Test bends of the shop's own rule; none where it has made none.</summary>
    public IReadOnlyList<BendTest> Bends { get; init; } = [];
}
