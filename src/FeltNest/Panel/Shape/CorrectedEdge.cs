using FeltNest.Geometry;
using FeltNest.Geometry.Curves;

namespace FeltNest.Panel.Shape;

/// <summary>A cut edge moved along its normals by a few smooth waves.</summary>
/// <param name="edge">The cut edge.</param>
/// <param name="waves">The waves by the edge's parameter, mm outwards.</param>
internal sealed class CorrectedEdge(CutEdge edge, IReadOnlyList<EdgeWave> waves) : IPlaneCurve
{
    /// <summary>Whether the waves keep the mirrors an edge may have.</summary>
    public bool KeepsMirrors => waves.All(wave => !wave.IsSine);

    /// <inheritdoc/>
    public double Period => edge.Period;

    /// <inheritdoc/>
    public CurvePoint At(double parameter)
    {
        CurvePoint here = edge.At(parameter);
        double move = waves.Sum(wave => wave.At(parameter));
        double slope = waves.Sum(wave => wave.SlopeAt(parameter));
        Point2 outward = here.Derivative.Left * (-1 / here.Derivative.Length);
        return new CurvePoint(
            here.Place + (outward * move), (here.Derivative * (1 + (move * edge.CurvatureAt(parameter)))) + (outward * slope));
    }
}
