using FeltNest.Layout;

namespace FeltNest.Rolls.Check;

/// <summary>What a roll plan states, to be checked against its layout and roll.</summary>
/// <param name="Repeats">Repeats in one strike.</param>
/// <param name="FeedMm">Feed, mm.</param>
/// <param name="Panels">Panels of one strike in its frame.</param>
/// <param name="GuidePlayMm">Greatest shift to either side, mm.</param>
/// <param name="FromMm">Where whole cloth begins, mm.</param>
/// <param name="Strikes">Strikes.</param>
/// <param name="GoodPanels">Good panels of all strikes.</param>
/// <param name="BackToBackGoodPanels">Good panels of strikes in line from the start.</param>
/// <param name="LostPanels">Lost panels of all strikes, all causes.</param>
public sealed record StatedPlan(
    int Repeats, double FeedMm, IReadOnlyList<PlacedPanel> Panels, double GuidePlayMm, double FromMm, IReadOnlyList<StatedStrike> Strikes,
    int GoodPanels,
    int BackToBackGoodPanels, long LostPanels);
