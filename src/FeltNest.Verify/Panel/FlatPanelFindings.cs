namespace FeltNest.Panel;

/// <summary>What an independent look at a flat panel found: every figure is 0 for a perfect one.</summary>
/// <param name="OutlineInsideMm">How far the polygon lies inside the arcs anywhere, mm.</param>
/// <param name="OutlineOutsideMm">How far the polygon lies outside the arcs anywhere, mm.</param>
/// <param name="AreaDifferencePercent">Area of the arcs against the area of a fine polygon through them, per cent.</param>
/// <param name="HalfTurnMm">Greatest distance between the cut edge and itself after a half-turn, mm.</param>
/// <param name="SeamLengthDifferencePercent">Length of flat edge times its stretch against the length of the seam, per cent.</param>
/// <param name="SphereAreaDifferencePercent">Area that small triangles of felt cover on the sphere against half the sphere, per
/// cent.</param>
/// <param name="EdgeOffSeamMm">Greatest distance of the fitted edge from the seam, mm.</param>
/// <param name="EnergyDifferencePercent">Energy reported against that of small triangles, each evenly stretched, per cent.</param>
/// <param name="EdgeMismatchPercent">Greatest difference in flat length between pieces of edge that meet, per cent, from the edge map
/// alone.</param>
/// <param name="EdgeAboveLimitPercent">How far any piece of a mated elastic edge is pushed together beyond its limit, per cent of flat
/// length, from the edge map and the seam alone; 0 where there is no limit.</param>
public sealed record FlatPanelFindings(
    double OutlineInsideMm,
    double OutlineOutsideMm,
    double AreaDifferencePercent,
    double HalfTurnMm,
    double SeamLengthDifferencePercent,
    double SphereAreaDifferencePercent,
    double EdgeOffSeamMm,
    double EnergyDifferencePercent,
    double EdgeMismatchPercent,
    double EdgeAboveLimitPercent);
