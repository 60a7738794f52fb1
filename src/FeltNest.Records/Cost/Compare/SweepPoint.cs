namespace FeltNest.Cost.Compare;

/// <summary>Parallel rows on one width, a die designed for it.</summary>
/// <param name="WidthMm">Roll width, mm.</param>
/// <param name="Rows">Rows.</param>
/// <param name="WastePercent">Waste, per cent of the full width, one repeat.</param>
public sealed record SweepPoint(double WidthMm, int Rows, double WastePercent);
