namespace FeltNest.Geometry.Curves;

/// <summary>A closed curve as tangent arcs.</summary>
/// <param name="Arcs">The arcs.</param>
/// <param name="Deviation">Greatest distance found from the curve to the arcs, mm.</param>
internal sealed record BiarcFit(ArcOutline Arcs, double Deviation);
