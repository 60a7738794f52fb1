using FeltNest.Geometry;
using FeltNest.Geometry.Curves;

namespace FeltNest.Panel.Shape;

/// <summary>The flat edge with allowances: moved inwards along its normals, stretched along and across the warp, then moved outwards along
/// its new normals.</summary>
/// <param name="edge">Edge before allowances.</param>
/// <param name="inset">How far it is moved inwards first, mm.</param>
/// <param name="along">Factor along the warp.</param>
/// <param name="across">Factor across the warp.</param>
/// <param name="warp">Direction of the warp in the panel frame, radians.</param>
/// <param name="outset">How far it is moved outwards last, mm; below 0 inwards.</param>
internal sealed class CutEdge(FlatEdge edge, double inset, double along, double across, double warp, double outset) : IPlaneCurve
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
        CurvePoint stretched = new(Stretched(place), Stretched(here.Derivative * share));
        if (outset == 0)
        {
            return stretched;
        }

        Point2 tangent = stretched.Derivative * (1 / stretched.Derivative.Length);
        return new CurvePoint(
            stretched.Place - (tangent.Left * outset), stretched.Derivative * (1 + (outset * StretchedCurvature(parameter))));
    }

    /// <summary>Curvature of the edge before it is moved outwards, 1/mm, positive where the panel is convex.</summary>
    public double StretchedCurvature(double parameter)
    {
        Point2 tangent = edge.At(parameter).Derivative;
        double curvature = edge.CurvatureAt(parameter);
        double length = Stretched(tangent * (1 / tangent.Length)).Length;

        // A linear map of factor along times across for areas: the curvature goes with the area over the cube of the length.
        return curvature / (1 - (inset * curvature)) * along * across / (length * length * length);
    }

    /// <summary>Curvature of the edge, 1/mm, positive where the panel is convex.</summary>
    public double CurvatureAt(double parameter)
    {
        double before = StretchedCurvature(parameter);
        return before / (1 + (outset * before));
    }

    private Point2 Stretched(Point2 p) =>
        along == across ? p * along : (axis * (along * p.Dot(axis))) + (axis.Left * (across * p.Dot(axis.Left)));
}
