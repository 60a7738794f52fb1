namespace FeltNest.Layout.Quality;

/// <summary>Where the waste comes from, each share in per cent of the full roll width; with the good panels they add to 100.</summary>
/// <param name="ShapePercent">What the best lattice of the endless plane leaves without any gap.</param>
/// <param name="GapPercent">What the gap takes in the endless plane.</param>
/// <param name="TrimPercent">Cloth in edge trims and forbidden stripes that the plane's lattice would have used.</param>
/// <param name="EdgesPercent">What straight edges cost: half of (row height - row step) on each side, the step with its gap, in cloth the
/// lattice would have used.</param>
/// <param name="RowFitPercent">The rest: rows strained, or spaced out, so that a whole number of them fits; below 0 where the strip does
/// better than the lattice.</param>
public sealed record LossSplit(double ShapePercent, double GapPercent, double TrimPercent, double EdgesPercent, double RowFitPercent);
