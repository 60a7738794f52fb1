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
/// <param name="EdgeMap">The edge of one of our own panels before allowances, at equal steps of the seam parameter from 0: it then defines
/// both the outline and where each place of it belongs. Null for any other outline, whose edge slides along the seam.</param>
public sealed record WrapRequest(double RadiusMm, SeamCurve Seam, FeltLaw Law, ArcOutline? Outline, IReadOnlyList<EdgePoint>? EdgeMap)
{
    // A long axis this far off u, radians (5 degrees), is a matter of how the outline was drawn and not of its shape: a panel askew to the
    // warp has its area's axis less than a degree off its chord. A piece hardly longer than wide has no such axis.
    private const double Askew = 5 * Math.PI / 180;
    private const double Long = 1.1;

    /// <summary>How far the outline was turned so that its long axis lies along u, degrees; 0 where it was drawn so, or has no long
    /// axis.</summary>
    public double TurnedDeg { get; private init; }

    /// <summary>Any outline on a ball, turned where its long axis is not drawn along u: the seam, and the second copy beside the first,
    /// have it there. Its u axis then lies to the warp as the ball's panel does.</summary>
    /// <exception cref="InputException">The ball has no seam or felt that can be used.</exception>
    public static WrapRequest For(BallSpec ball, ArcOutline outline)
    {
        // The polygon's distance from the arcs, mm: the axis it gives is good to a hundredth of a degree.
        const double close = 0.05;
        LongAxis axis = LongAxis.Of(outline.ContainingPolygon(close).Points, outline.Centroid);
        if (axis.Ratio < Long || Math.Abs(axis.Angle) <= Askew)
        {
            return From(ball, outline, null);
        }

        ArcOutline turned = ArcOutline.From(
            outline.Vertices.Select(v => v.Point.Turned(-axis.Angle)).Zip(outline.Vertices, (p, v) => new ArcVertex(p.X, p.Y, v.Turn)));
        return From(ball, turned, null) with { TurnedDeg = -axis.Angle * 180 / Math.PI };
    }

    /// <summary>A panel of our own on a ball, by its edge before allowances.</summary>
    /// <exception cref="InputException">The ball has no seam or felt that can be used.</exception>
    public static WrapRequest For(BallSpec ball, IReadOnlyList<EdgePoint> edgeMap) => From(ball, null, edgeMap);

    private static WrapRequest From(BallSpec ball, ArcOutline? outline, IReadOnlyList<EdgePoint>? edgeMap)
    {
        PanelRequest panel = PanelRequest.For(ball);
        return new WrapRequest(panel.RadiusMm, panel.Seam, panel.Law, outline, edgeMap);
    }
}
