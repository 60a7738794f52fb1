using FeltNest.Ball;
using FeltNest.Geometry;

namespace FeltNest.Panel.Wrap;

/// <summary>The question of a wrap that an outline or a panel asks on a ball.</summary>
internal static class BallWrap
{
    // A long axis this far off u, radians (5 degrees), is a matter of how the outline was drawn and not of its shape: a panel askew to the
    // warp has its area's axis less than a degree off its chord. A piece hardly longer than wide has no such axis.
    private const double Askew = 5 * Math.PI / 180;
    private const double Long = 1.1;

    extension(WrapRequest)
    {
        /// <summary>Any outline on a ball, turned where its long axis is not drawn along u: the seam, and the second copy beside the first,
        /// have it there. Its u axis then lies to the warp as the ball's panel does.</summary>
        /// <exception cref="InputException">The ball has no seam or felt that can be used.</exception>
        public static WrapRequest For(BallSpec ball, ArcOutline outline)
        {
            double turn = TurnAlong(outline);
            if (turn == 0)
            {
                return From(ball, outline, null);
            }

            ArcOutline turned = ArcOutline.From(
                outline.Vertices.Select(v => v.Point.Turned(turn)).Zip(outline.Vertices, (p, v) => new ArcVertex(p.X, p.Y, v.Turn)));
            return From(ball, turned, null) with { TurnedDeg = turn * 180 / Math.PI };
        }

        /// <summary>How far an outline is turned so that its long axis lies along u, radians; 0 where it is drawn so, or has no long
        /// axis.</summary>
        public static double TurnAlong(ArcOutline outline)
        {
            // The polygon's distance from the arcs, mm: the axis it gives is good to a hundredth of a degree.
            const double close = 0.05;
            LongAxis axis = LongAxis.Of(outline.ContainingPolygon(close).Points, outline.Centroid);
            return axis.Ratio < Long || Math.Abs(axis.Angle) <= Askew ? 0 : -axis.Angle;
        }

        /// <summary>A panel of our own on a ball, by its edge before allowances.</summary>
        /// <exception cref="InputException">The ball has no seam or felt that can be used.</exception>
        public static WrapRequest For(BallSpec ball, IReadOnlyList<EdgePoint> edgeMap) => From(ball, null, edgeMap);
    }

    private static WrapRequest From(BallSpec ball, ArcOutline? outline, IReadOnlyList<EdgePoint>? edgeMap)
    {
        PanelRequest panel = PanelRequest.For(ball);
        return new WrapRequest(panel.RadiusMm, panel.Seam, panel.Law, outline, edgeMap);
    }
}
