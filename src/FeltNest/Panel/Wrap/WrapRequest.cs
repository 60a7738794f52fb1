using FeltNest.Ball;
using FeltNest.Geometry;
using FeltNest.Panel.Felt;
using FeltNest.Seam;

namespace FeltNest.Panel.Wrap;

/// <summary>A flat piece of felt to be laid on a sphere.</summary>
/// <param name="RadiusMm">Radius of the fitted sphere, mm.</param>
/// <param name="Seam">The seam it is to close.</param>
/// <param name="Law">Stiffness of the felt in the outline's own axes, N/mm.</param>
/// <param name="Outline">The flat outline, mm, in any place; not used where an edge map is given.</param>
/// <param name="EdgeMap">The edge of one of our own panels before allowances, at equal steps of the seam parameter from 0: it then defines both the outline and where each place of it belongs. Null
/// for any other outline, whose edge slides along the seam.</param>
public sealed record WrapRequest(double RadiusMm, SeamCurve Seam, FeltLaw Law, ArcOutline? Outline, IReadOnlyList<EdgePoint>? EdgeMap)
{
    /// <summary>Any outline on a ball; its u axis lies to the warp as the ball's panel does.</summary>
    /// <exception cref="InputException">The ball has no seam or felt that can be used.</exception>
    public static WrapRequest For(BallSpec ball, ArcOutline outline) => From(ball, outline, null);

    /// <summary>A panel of our own on a ball, by its edge before allowances.</summary>
    /// <exception cref="InputException">The ball has no seam or felt that can be used.</exception>
    public static WrapRequest For(BallSpec ball, IReadOnlyList<EdgePoint> edgeMap) => From(ball, null, edgeMap);

    private static WrapRequest From(BallSpec ball, ArcOutline? outline, IReadOnlyList<EdgePoint>? edgeMap)
    {
        PanelRequest panel = PanelRequest.For(ball);
        return new WrapRequest(panel.RadiusMm, panel.Seam, panel.Law, outline, edgeMap);
    }
}
