using FeltNest.Ball;
using FeltNest.Geometry;
using FeltNest.Geometry.Curves;
using FeltNest.Panel.Wrap.Edge;
using FeltNest.Panel.Wrap.Solve;

namespace FeltNest.Panel.Wrap;

/// <summary>Lays a cut outline on its ball: at fitting, after the cure, and drawn to the seam. A computed panel and its own cut outline are
/// laid alike.</summary>
internal static class PieceWrap
{
    /// <summary>Lays an outline.</summary>
    /// <param name="ball">The ball; its allowances are those the outline was cut with.</param>
    /// <param name="cut">The outline as it is cut.</param>
    /// <param name="edgeMap">A computed panel's edge before allowances, which tells where on the seam each place belongs; or null.</param>
    /// <exception cref="InputException">The ball has no seam or felt that can be used.</exception>
    /// <exception cref="NoAnswerException">As <see cref="PanelWrap.Lay"/>.</exception>
    public static PieceResult Lay(BallSpec ball, ArcOutline cut, IReadOnlyList<EdgePoint>? edgeMap)
    {
        PanelRequest panel = PanelRequest.For(ball);
        SmoothEdge? smooth = EdgeSmoother.Smoothed(cut);
        double turn = smooth is { Symmetry: CurveSymmetry.Mirrors } ? -smooth.Axis : WrapRequest.TurnAlong(cut);
        IPlaneCurve edge = smooth?.Curve ?? new ArcLengthCurve(cut);
        FeltStates states = FeltStates.OfCut(panel, turn == 0 ? edge : new MovedCurve(edge, turn, default));
        WrapRequest plain = new(panel.RadiusMm, panel.Seam, panel.Law, null, edgeMap);
        WrapResult closed = PanelWrap.Lay(plain with { Edge = states.Closed });
        (EdgeFreeWrap asCut, EdgeFreeWrap afterCure) = Free(plain with { EdgeMap = null }, states);
        return new PieceResult
        {
            AsCut = asCut,
            AfterCure = afterCure,
            EdgeHeld = closed.EdgeHeld,
            WhyNotHeld = closed.WhyNotHeld,
            IsByMap = edgeMap is not null,
            Smoothing = smooth?.Smoothing,
            TurnedDeg = turn * 180 / Math.PI,
        };
    }

    /// <summary>A piece in its two states with its edge free.</summary>
    /// <exception cref="NoAnswerException">As <see cref="PanelWrap.Lay"/>.</exception>
    public static (EdgeFreeWrap AsCut, EdgeFreeWrap AfterCure) Free(WrapRequest request, FeltStates states)
    {
        EdgeFreeWrap afterCure = PanelWrap.LayFree(request with { Edge = states.AfterCure });
        return ReferenceEquals(states.AsCut, states.AfterCure)
            ? (afterCure, afterCure)
            : (PanelWrap.LayFree(request with { Edge = states.AsCut }), afterCure);
    }
}
