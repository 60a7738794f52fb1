namespace FeltNest.Yield;

/// <summary>The closed account of the cloth in per cent of the full roll width; the four parts add to 100.</summary>
/// <param name="GoodPanelsPercent">Area of panels.</param>
/// <param name="BetweenPanelsPercent">Web between panels.</param>
/// <param name="UnusedEdgePercent">Usable width that no row reaches.</param>
/// <param name="EdgeTrimPercent">Both edge trims.</param>
public sealed record WasteAccount(double GoodPanelsPercent, double BetweenPanelsPercent, double UnusedEdgePercent, double EdgeTrimPercent);
