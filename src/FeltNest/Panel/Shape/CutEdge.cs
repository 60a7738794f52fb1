using FeltNest.Geometry;
using FeltNest.Geometry.Curves;

namespace FeltNest.Panel.Shape;

/// <summary>The flat edge with allowances: moved inwards along its normals, then stretched along and across the warp.</summary>
/// <param name="edge">Edge before allowances.</param>
/// <param name="inset">How far it is moved inwards, mm.</param>
/// <param name="along">Factor along the warp.</param>
/// <param name="across">Factor across the warp.</param>
/// <param name="warp">Direction of the warp in the panel frame, radians.</param>
internal sealed class CutEdge(FlatEdge edge, double inset, double along, double across, double warp) : IPlaneCurve
{
    // Warp directions this near to an axis, radians, lie on it: 90 degrees is not exact in binary.
    private const double Straight = 1e-12;

    private readonly Point2 axis = new(Math.Cos(warp), Math.Sin(warp));

    /// <summary>Whether the allowances keep the mirror symmetry an edge may have.</summary>
    public bool KeepsMirrors => along == across || Math.Abs(axis.X * axis.Y) < Straight;

    /// <inheritdoc/>
    public double Period => edge.Period;

    /// <inheritdoc/>
    public CurvePoint At(double parameter)
    {
        CurvePoint here = edge.At(parameter);
        double speed = here.Derivative.Length;
        Point2 place = here.Place + (here.Derivative.Left * (inset / speed));
        double share = inset == 0 ? 1 : 1 - (inset * edge.CurvatureAt(parameter));
        return new CurvePoint(Stretched(place), Stretched(here.Derivative * share));
    }

    private Point2 Stretched(Point2 p) => along == across ? p * along : (axis * (along * p.Dot(axis))) + (axis.Left * (across * p.Dot(axis.Left)));
}
