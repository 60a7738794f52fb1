namespace FeltNest.Panel;

/// <summary>The seam and the panel on the fitted sphere, at zero seam gap.</summary>
public sealed record SphereFigures
{
    /// <summary>Radius of the fitted sphere, mm.</summary>
    public required double RadiusMm { get; init; }

    /// <summary>Length of the seam, mm.</summary>
    public required double SeamLengthMm { get; init; }

    /// <summary>Area of one panel, mm2.</summary>
    public required double PanelAreaMm2 { get; init; }

    /// <summary>Arc across the waist, mm.</summary>
    public required double WaistMm { get; init; }

    /// <summary>Arc from tip to tip, mm.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Greatest width as an arc, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Least geodesic radius of curvature of the seam, mm.</summary>
    public required double LeastRadiusMm { get; init; }
}
