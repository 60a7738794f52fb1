namespace FeltNest.Geometry.Curves;

/// <summary>A place on a curve, mm, with the derivative by the curve's parameter, whose direction is the tangent.</summary>
internal readonly record struct CurvePoint(Point2 Place, Point2 Derivative);
