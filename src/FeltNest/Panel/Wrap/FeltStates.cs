using FeltNest.Geometry.Curves;
using FeltNest.Panel.Wrap.Edge;

namespace FeltNest.Panel.Wrap;

/// <summary>The edge of one piece of felt at fitting, after the cure, and with the gap for the adhesive closed.</summary>
internal sealed record FeltStates
{
    /// <summary>At fitting: as cut, pulled on by the stretch on application.</summary>
    public required IPlaneCurve AsCut { get; init; }

    /// <summary>After the cure's shrinkage.</summary>
    public required IPlaneCurve AfterCure { get; init; }

    /// <summary>Half the seam gap wider all round: what would lie on the seam.</summary>
    public required IPlaneCurve Closed { get; init; }

    /// <summary>From the outline that is cut: the allowances in their order, undone.</summary>
    public static FeltStates OfCut(PanelRequest ball, IPlaneCurve cut)
    {
        IPlaneCurve felt = Grown(cut, -ball.DieOffsetMm);
        IPlaneCurve pulled = Stretched(felt, 1 + ball.StretchWarp, 1 + ball.StretchWeft, ball);
        IPlaneCurve cured = Stretched(pulled, 1 - ball.ShrinkWarp, 1 - ball.ShrinkWeft, ball);
        return new FeltStates { AsCut = pulled, AfterCure = cured, Closed = Grown(cured, ball.SeamGapMm / 2) };
    }

    /// <summary>From the edge before allowances.</summary>
    public static FeltStates OfClosed(PanelRequest ball, IPlaneCurve closed)
    {
        IPlaneCurve cured = Grown(closed, -ball.SeamGapMm / 2);
        return new FeltStates
        {
            AsCut = Stretched(cured, 1 / (1 - ball.ShrinkWarp), 1 / (1 - ball.ShrinkWeft), ball),
            AfterCure = cured,
            Closed = closed,
        };
    }

    /// <summary>The edge that is cut, from the edge before allowances: the allowances in their order.</summary>
    public static IPlaneCurve Cut(PanelRequest ball, IPlaneCurve closed)
    {
        IPlaneCurve pulled = OfClosed(ball, closed).AsCut;
        return Grown(Stretched(pulled, 1 / (1 + ball.StretchWarp), 1 / (1 + ball.StretchWeft), ball), ball.DieOffsetMm);
    }

    private static IPlaneCurve Grown(IPlaneCurve edge, double outset) => outset == 0 ? edge : new GrownCurve(edge, outset, 1, 1, 0);

    // The warp lies at minus the angle in the panel's own frame; without an angle both factors are the same.
    private static IPlaneCurve Stretched(IPlaneCurve edge, double along, double across, PanelRequest ball) =>
        along == 1 && across == 1 ? edge : new GrownCurve(edge, 0, along, across, -(ball.WarpAngle ?? 0));
}
