using FeltNest.Geometry;

namespace FeltNest.Drawing;

/// <summary>A symbol put on the sheet.</summary>
/// <param name="Symbol">The symbol; one of the sheet's.</param>
/// <param name="At">Where its origin goes, mm.</param>
/// <param name="AngleDeg">How far it is turned about its origin, degrees counter-clockwise.</param>
internal sealed record CopyMark(Symbol Symbol, Point2 At, double AngleDeg) : Mark;
