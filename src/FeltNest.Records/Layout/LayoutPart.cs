using FeltNest.Geometry;

namespace FeltNest.Layout;

/// <summary>A flat part to be laid over the roll.</summary>
/// <param name="Name">Name shown on results.</param>
/// <param name="Ball">Ball it covers, or null for a plain outline.</param>
/// <param name="Outline">Polygon that contains the part, in its own frame (a ball's panel frame, or centred on the area centroid).</param>
/// <param name="Arcs">The true curve, or null where the polygon itself is the part.</param>
/// <param name="MassPerAreaGsm">Mass per area of the felt, g/m2, or null when not known.</param>
/// <param name="WarpAngleDeg">Angle from the warp to +u for which the panel is designed, degrees, or null where any angle serves.</param>
public sealed record LayoutPart(string Name, string? Ball, Outline Outline, ArcOutline? Arcs, double? MassPerAreaGsm, double? WarpAngleDeg)
{
    /// <summary>Area of the part, mm2, from its true curve.</summary>
    public double AreaMm2 => Arcs?.Area ?? Outline.Area;

    /// <summary>Length of its edge, mm, from its true curve.</summary>
    public double PerimeterMm => Arcs?.Perimeter ?? Outline.Perimeter;
}
