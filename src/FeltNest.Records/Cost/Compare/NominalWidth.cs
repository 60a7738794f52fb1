namespace FeltNest.Cost.Compare;

/// <summary>A felt laid over its nominal width.</summary>
/// <param name="WidthMm">Nominal width, mm.</param>
/// <param name="PanelsPerMetre">Panels per metre on it.</param>
/// <param name="SquareMetresPerThousandBalls">Square metres bought.</param>
/// <param name="Total">Cost of a thousand balls, or null.</param>
public sealed record NominalWidth(
    double WidthMm, double PanelsPerMetre, double SquareMetresPerThousandBalls, decimal? Total);
