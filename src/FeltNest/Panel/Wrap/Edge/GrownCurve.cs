using FeltNest.Geometry;
using FeltNest.Geometry.Curves;

namespace FeltNest.Panel.Wrap.Edge;

/// <summary>A closed edge moved outwards along its normals, then stretched along and across the warp: an allowance undone, or felt that
/// shrinks or is pulled.</summary>
/// <param name="edge">The edge.</param>
/// <param name="outset">How far it is moved outwards first, mm; below 0 inwards.</param>
/// <param name="along">Factor along the warp.</param>
/// <param name="across">Factor across the warp.</param>
/// <param name="warp">Direction of the warp, radians.</param>
internal sealed class GrownCurve(IPlaneCurve edge, double outset, double along, double across, double warp) : IPlaneCurve
{
    // Step of the parameter over which the edge's bend is taken, as a part of the period, and the most of its own length that a piece of
    // edge may grow by: the bend at a corner has no size.
    private const double Step = 1e-6;
    private const double MostGrowth = 0.5;

    private readonly Point2 axis = new(Math.Cos(warp), Math.Sin(warp));

    /// <inheritdoc/>
    public double Period => edge.Period;

    /// <inheritdoc/>
    public CurvePoint At(double parameter)
    {
        CurvePoint here = edge.At(parameter);
        if (outset == 0)
        {
            return new CurvePoint(Stretched(here.Place), Stretched(here.Derivative));
        }

        double speed = here.Derivative.Length;
        Point2 tangent = here.Derivative * (1 / speed);
        double step = Step * edge.Period;
        Point2 next = edge.At((parameter + step) % edge.Period).Derivative;
        double bend = Math.Atan2(tangent.Cross(next), tangent.Dot(next)) / (speed * step);
        double growth = Math.Clamp(outset * bend, -MostGrowth, MostGrowth);
        return new CurvePoint(Stretched(here.Place - (tangent.Left * outset)), Stretched(here.Derivative * (1 + growth)));
    }

    private Point2 Stretched(Point2 p) =>
        along == across ? p * along : (axis * (along * p.Dot(axis))) + (axis.Left * (across * p.Dot(axis.Left)));
}
