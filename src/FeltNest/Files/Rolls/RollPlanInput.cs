using FeltNest.Files.Layouts;
using FeltNest.Rolls;
using FeltNest.Rolls.Check;

namespace FeltNest.Files.Rolls;

/// <summary>A roll plan as read.</summary>
/// <param name="Layout">The layout it is for, with the figures it states.</param>
/// <param name="Roll">The roll it is for.</param>
/// <param name="Plan">What it says.</param>
internal sealed record RollPlanInput(LayoutInput Layout, FeltRoll Roll, StatedPlan Plan);
