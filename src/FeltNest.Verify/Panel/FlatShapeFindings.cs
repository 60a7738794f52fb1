namespace FeltNest.Panel;

/// <summary>What an independent look at a cut edge found.</summary>
/// <param name="OutlineInsideMm">How far the polygon lies inside the arcs anywhere, mm; 0 for a sound one.</param>
/// <param name="OutlineOutsideMm">How far the polygon lies outside the arcs anywhere, mm.</param>
/// <param name="AreaMm2">Area within the arcs, mm2.</param>
/// <param name="PerimeterMm">Length of the arcs, mm.</param>
/// <param name="HalfTurnMm">Greatest distance between the cut edge and itself after a half-turn, mm.</param>
internal readonly record struct FlatShapeFindings(
    double OutlineInsideMm, double OutlineOutsideMm, double AreaMm2, double PerimeterMm, double HalfTurnMm);
