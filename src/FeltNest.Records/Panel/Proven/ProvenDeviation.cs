using FeltNest.Geometry;

namespace FeltNest.Panel.Proven;

/// <summary>How far the measured outline lies off the fitted panel at one place.</summary>
/// <param name="Place">Place on the fitted panel's edge, panel frame, mm.</param>
/// <param name="Outward">Unit normal that points out of the panel there.</param>
/// <param name="OffMm">Distance of the measured outline along that normal, mm; above 0 where it lies outside the panel.</param>
public readonly record struct ProvenDeviation(Point2 Place, Point2 Outward, double OffMm);
