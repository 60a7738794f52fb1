namespace FeltNest.Die.Proof;

/// <summary>By what a measured outline is judged.</summary>
internal sealed record ProfileRule
{
    /// <summary>Steepest change of the distance along the edge where nothing else is said, mm a mm: a steeper nick shows to the eye
    /// (common practice, no source).</summary>
    public const double UsualSteepness = 0.05;

    /// <summary>Profile tolerance: width of the zone, mm; a place may lie within half of it.</summary>
    public required double ToleranceMm { get; init; }

    /// <summary>Expanded uncertainty of a measured distance, coverage factor 2, mm; null where it is unknown.</summary>
    public double? UncertaintyMm { get; init; }

    /// <summary>Steepest change of the distance along the edge that may hide between points, mm a mm.</summary>
    public double Steepness { get; init; } = UsualSteepness;

    /// <summary>Whether the points stand in the frame of the drawing, so that they are neither turned nor moved.</summary>
    public bool InFrame { get; init; }
}
