using FeltNest.Geometry.Curves;

namespace FeltNest.Panel.Wrap.Edge;

/// <summary>A smooth edge laid through the places of an outline.</summary>
/// <param name="Curve">The edge, mm, seen from the outline's own origin.</param>
/// <param name="Smoothing">By how much it is off the outline.</param>
/// <param name="Symmetry">What it is kept by.</param>
/// <param name="Axis">Direction of its long axis in the outline's frame, radians; of an edge without mirrors that of its area.</param>
internal sealed record SmoothEdge(IPlaneCurve Curve, EdgeSmoothing Smoothing, CurveSymmetry Symmetry, double Axis);
