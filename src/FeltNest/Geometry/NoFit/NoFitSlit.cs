namespace FeltNest.Geometry.NoFit;

/// <summary>A straight piece of allowed places inside a no-fit region, without area: the moving part fits exactly between two
/// sides.</summary>
/// <param name="From">One end, mm.</param>
/// <param name="To">Other end, mm.</param>
public readonly record struct NoFitSlit(Point2 From, Point2 To);
