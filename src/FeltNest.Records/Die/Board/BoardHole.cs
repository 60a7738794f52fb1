using FeltNest.Geometry;

namespace FeltNest.Die.Board;

/// <summary>A round hole, its kerf taken off.</summary>
/// <param name="Layer">Its layer.</param>
/// <param name="At">Centre, mm.</param>
/// <param name="DiameterMm">Of the line that the beam follows, mm.</param>
public sealed record BoardHole(string Layer, Point2 At, double DiameterMm);
