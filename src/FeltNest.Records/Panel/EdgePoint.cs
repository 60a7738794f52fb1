namespace FeltNest.Panel;

/// <summary>A point of the flat edge before allowances.</summary>
/// <param name="U">mm along the panel.</param>
/// <param name="V">mm across.</param>
/// <param name="S">Seam parameter, radians, 0 at one waist, growing counter-clockwise seen from the nap side as the flat edge runs.</param>
/// <param name="StretchPercent">Stretch along the edge, 100 (sphere/flat - 1); negative where the edge is pushed together.</param>
public readonly record struct EdgePoint(double U, double V, double S, double StretchPercent);
