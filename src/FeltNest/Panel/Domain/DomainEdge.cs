namespace FeltNest.Panel.Domain;

/// <summary>A place on the edge of the piece.</summary>
/// <param name="Angle">Polar angle on the disc's rim, radians.</param>
/// <param name="AngleSlope">Its derivative by the seam parameter.</param>
/// <param name="Speed">Length of seam on the unit sphere for a unit of seam parameter.</param>
/// <param name="Curvature">Geodesic curvature of the seam.</param>
internal readonly record struct DomainEdge(double Angle, double AngleSlope, double Speed, double Curvature);
