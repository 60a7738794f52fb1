using FeltNest.Geometry;
using FeltNest.Geometry.Curves;

namespace FeltNest.Panel.Wrap.Edge;

/// <summary>A curve turned about the origin, then moved.</summary>
/// <param name="curve">The curve.</param>
/// <param name="turn">Angle, radians counter-clockwise.</param>
/// <param name="move">Move, mm.</param>
internal sealed class MovedCurve(IPlaneCurve curve, double turn, Point2 move) : IPlaneCurve
{
    /// <inheritdoc/>
    public double Period => curve.Period;

    /// <inheritdoc/>
    public CurvePoint At(double parameter)
    {
        CurvePoint here = curve.At(parameter);
        return new CurvePoint(here.Place.Turned(turn) + move, here.Derivative.Turned(turn));
    }
}
