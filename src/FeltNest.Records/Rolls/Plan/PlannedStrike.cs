namespace FeltNest.Rolls.Plan;

/// <summary>One strike of a plan.</summary>
/// <param name="XMm">Where the strike's first cut edge stands along the roll, mm.</param>
/// <param name="ShiftYMm">How far the pattern is moved across from where the layout has it, mm.</param>
/// <param name="GoodPanels">Panels without loss.</param>
/// <param name="Lost">The others.</param>
public sealed record PlannedStrike(double XMm, double ShiftYMm, int GoodPanels, IReadOnlyList<LostPanel> Lost);
