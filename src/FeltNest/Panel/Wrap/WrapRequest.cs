using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using FeltNest.Panel.Felt;
using FeltNest.Seam;

namespace FeltNest.Panel.Wrap;

/// <summary>A flat piece of felt to be laid on a sphere.</summary>
/// <param name="RadiusMm">Radius of the fitted sphere, mm.</param>
/// <param name="Seam">The seam it is to close.</param>
/// <param name="Law">Stiffness of the felt in the outline's own axes, N/mm.</param>
/// <param name="Outline">The flat outline, mm, in any place; not used where an edge or an edge map is given.</param>
/// <param name="EdgeMap">The edge of one of our own panels before allowances, at equal steps of the seam parameter from 0: it then defines
/// both the outline and where each place of it belongs. Null for any other outline, whose edge slides along the seam.</param>
internal sealed record WrapRequest(double RadiusMm, SeamCurve Seam, FeltLaw Law, ArcOutline? Outline, IReadOnlyList<EdgePoint>? EdgeMap)
{
    /// <summary>The edge of the piece as a curve, mm, in any place; goes before the outline.</summary>
    public IPlaneCurve? Edge { get; init; }

    /// <summary>How far the outline was turned so that its long axis lies along u, degrees; 0 where it was drawn so, or has no long
    /// axis.</summary>
    public double TurnedDeg { get; init; }
}
