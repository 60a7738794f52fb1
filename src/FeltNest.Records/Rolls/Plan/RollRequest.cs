using FeltNest.Layout;

namespace FeltNest.Rolls.Plan;

/// <summary>The question: where on this roll to strike this layout.</summary>
/// <param name="Layout">Layout with one repeat for the whole width.</param>
/// <param name="Roll">The roll.</param>
/// <param name="RepeatsPerStrike">Repeats one strike cuts, 1 or more.</param>
/// <param name="GuidePlayMm">How far the roll can be moved to either side under the press, mm.</param>
/// <param name="FromMm">Where whole cloth begins, mm: nothing is struck before it.</param>
public sealed record RollRequest(RollLayout Layout, FeltRoll Roll, int RepeatsPerStrike, double GuidePlayMm, double FromMm);
