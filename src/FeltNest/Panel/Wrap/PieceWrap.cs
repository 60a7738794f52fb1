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
        (WrapRequest plain, FeltStates states, SmoothEdge? smooth, double turn) = Asked(ball, cut);
        plain = plain with { EdgeMap = edgeMap };
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

    /// <summary>An outline in its two states with its edge free.</summary>
    /// <exception cref="InputException">As <see cref="Lay"/>.</exception>
    /// <exception cref="NoAnswerException">As <see cref="PanelWrap.Lay"/>.</exception>
    public static (EdgeFreeWrap AsCut, EdgeFreeWrap AfterCure) Free(BallSpec ball, ArcOutline cut)
    {
        (WrapRequest plain, FeltStates states, _, _) = Asked(ball, cut);
        return Free(plain, states);
    }

    /// <summary>Gaps of an outline after the cure with its edge free, mm, at the lower degree: for differences between felts.</summary>
    /// <exception cref="InputException">As <see cref="Lay"/>.</exception>
    /// <exception cref="NoAnswerException">As <see cref="PanelWrap.Lay"/>.</exception>
    public static IReadOnlyList<double?> RoughGapsAfterCure(BallSpec ball, ArcOutline cut)
    {
        (WrapRequest plain, FeltStates states, _, _) = Asked(ball, cut);
        return PanelWrap.RoughGaps(plain with { Edge = states.AfterCure });
    }

    // The question of an outline, its felt in its states, its edge smoothed and turned along u.
    private static (WrapRequest Plain, FeltStates States, SmoothEdge? Smooth, double Turn) Asked(BallSpec ball, ArcOutline cut)
    {
        PanelRequest panel = PanelRequest.For(ball);
        SmoothEdge? smooth = EdgeSmoother.Smoothed(cut);
        double turn = smooth is { Symmetry: CurveSymmetry.Mirrors } ? -smooth.Axis : WrapRequest.TurnAlong(cut);
        IPlaneCurve edge = smooth?.Curve ?? new ArcLengthCurve(cut);
        FeltStates states = FeltStates.OfCut(panel, turn == 0 ? edge : new MovedCurve(edge, turn, default));
        return (new WrapRequest(panel.RadiusMm, panel.Seam, panel.Law, null, null), states, smooth, turn);
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
