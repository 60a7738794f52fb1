using FeltNest.Geometry;

namespace FeltNest.Panel.Proven;

/// <summary>How far the measured outline lies off the fitted panel at one place.</summary>
internal readonly record struct ProvenDeviation
{
    /// <summary>Place on the fitted panel's edge, panel frame, mm.</summary>
    public required Point2 Place { get; init; }

    /// <summary>Unit normal that points out of the panel there.</summary>
    public required Point2 Outward { get; init; }

    /// <summary>Distance of the measured outline along that normal, mm; above 0 where it lies outside the panel.</summary>
    public required double OffMm { get; init; }
}
