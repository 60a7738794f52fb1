namespace FeltNest.Die.Check;

/// <summary>What the second geometry engine finds of a cutting edge.</summary>
/// <param name="OffMm">Greatest distance between edge and the layout's outline, either way, mm.</param>
/// <param name="TangentBreakDeg">Greatest bend at a joint, corners of the part itself left out, degrees.</param>
/// <param name="AreaShare">Difference of the areas over the part's area.</param>
/// <param name="MirrorOffMm">Greatest distance from the edge to its mirror image, in the mirrors it is said to have, mm; 0 where it has
/// none.</param>
public sealed record EdgeVerdict(double OffMm, double TangentBreakDeg, double AreaShare, double MirrorOffMm);
