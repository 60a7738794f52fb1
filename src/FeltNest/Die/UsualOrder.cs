using FeltNest.Die.Order;
using FeltNest.Layout;

namespace FeltNest.Die;

/// <summary>The order for a die where the shop has written none: figures that are common in the trade (common practice, no source), each to
/// be confirmed.</summary>
public static class UsualOrder
{
    /// <summary>What is assumed, in one sentence.</summary>
    public const string Words = "no order file: rule, board, ejection, tolerances and force are usual figures, assumed: confirm each";

    /// <summary>The order for a layout.</summary>
    public static DieOrder Of(RollLayout layout) => new(
        "die", new DieRule(0.71, 23.8, RuleBevel.SideWaste, "as the toolmaker advises", 1.5), new DieBoard("plywood", 18, 20, 680, 95, 6),
        new DieEjection("as the toolmaker advises", 2.4, 0.5),
        new DieTolerances(0.5, 1.2, "m"), new ForceFigures(20, ForceBasis.Placeholder, 15, 25, 6.35), 3.2, null, 1, layout.GapMm == 0,
        false, false,
        new DieTitle(null, null, null, null, null, "Gang die", null, "Die drawing", null, null, null, null, "en"),
        new DieWishes(1, null, null, null, null, null, null), null)
    {
        IsAssumed = true,
    };
}
