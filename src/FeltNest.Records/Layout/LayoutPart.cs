using FeltNest.Geometry;

namespace FeltNest.Layout;

/// <summary>A flat part to be laid over the roll.</summary>
public sealed record LayoutPart
{
    /// <summary>Name shown on results.</summary>
    public required string Name { get; init; }

    /// <summary>Ball it covers, or null for a plain outline.</summary>
    public required string? Ball { get; init; }

    /// <summary>Polygon that contains the part, in its own frame (a ball's panel frame, or centred on the area centroid).</summary>
    public required Outline Outline { get; init; }

    /// <summary>The true curve, or null where the polygon itself is the part.</summary>
    public required ArcOutline? Arcs { get; init; }

    /// <summary>Mass per area of the felt, g/m2, or null when not known.</summary>
    public required double? MassPerAreaGsm { get; init; }

    /// <summary>Angle from the warp to +u for which the panel is designed, degrees, or null where any angle serves.</summary>
    public required double? WarpAngleDeg { get; init; }

    /// <summary>Area of the part, mm2, from its true curve.</summary>
    public double AreaMm2 => Arcs?.Area ?? Outline.Area;

    /// <summary>Length of its edge, mm, from its true curve.</summary>
    public double PerimeterMm => Arcs?.Perimeter ?? Outline.Perimeter;
}
