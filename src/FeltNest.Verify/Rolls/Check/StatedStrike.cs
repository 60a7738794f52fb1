namespace FeltNest.Rolls.Check;

/// <summary>A strike as a plan states it.</summary>
/// <param name="XMm">Where its first cut edge stands, mm.</param>
/// <param name="ShiftYMm">Move across, mm.</param>
/// <param name="GoodPanels">Good panels.</param>
/// <param name="LostPanels">Lost panels.</param>
public readonly record struct StatedStrike(double XMm, double ShiftYMm, int GoodPanels, int LostPanels);
