namespace FeltNest.Panel.Domain;

/// <summary>A place on the edge of the piece.</summary>
internal readonly record struct DomainEdge
{
    /// <summary>Polar angle on the disc's rim, radians.</summary>
    public required double Angle { get; init; }

    /// <summary>Its derivative by the seam parameter.</summary>
    public required double AngleSlope { get; init; }

    /// <summary>Length of seam on the unit sphere for a unit of seam parameter.</summary>
    public required double Speed { get; init; }

    /// <summary>Geodesic curvature of the seam.</summary>
    public required double Curvature { get; init; }
}
