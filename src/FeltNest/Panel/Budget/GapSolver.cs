using FeltNest.Ball;
using FeltNest.Geometry.Curves;
using FeltNest.Panel.Felt;
using FeltNest.Panel.Wrap;
using FeltNest.Panel.Wrap.Solve;
using FeltNest.Seam;

namespace FeltNest.Panel.Budget;

/// <summary>The gap round the seam of one cut panel on balls that are not quite what it was drawn for.</summary>
/// <remarks>The outline that is cut stays the same; sphere, felt and die are those of each ball. Both panels of a ball are of the same felt
/// and the same die, so they are off alike; each is placed for itself.</remarks>
internal sealed class GapSolver
{
    /// <summary>Stations round the seam: waists and tips are among them.</summary>
    public const int Stations = 120;

    private readonly PanelRequest drawn;
    private readonly IPlaneCurve cut;
    private readonly bool keepsMirrors;
    private readonly Dictionary<bool, double[]> near = [];

    /// <summary>Flattens the panel of a ball and lays it on.</summary>
    /// <param name="ball">The ball.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="others">Balls whose panels have to keep the mirrors too if only such functions are to be used.</param>
    /// <exception cref="NoAnswerException">The panel cannot be laid on.</exception>
    public GapSolver(BallSpec ball, FlatPanel panel, IEnumerable<BallSpec> others)
    {
        drawn = PanelRequest.For(ball);
        cut = FeltStates.Cut(drawn, new EdgeMapCurve(panel.EdgeMap));
        keepsMirrors = others.Prepend(ball).All(KeepsMirrors);
        foreach (bool cured in new[] { false, true })
        {
            (IPlaneCurve edge, WrapRequest request) = Asked(ball, cured);
            near[cured] = PanelWrap.LayFree(request, edge, keepsMirrors, null).Solution;
        }
    }

    /// <summary>The edge of a panel on a ball, turned for the least mean square gap, on the unit sphere.</summary>
    /// <exception cref="NoAnswerException">The panel cannot be laid on.</exception>
    public IReadOnlyList<SpherePoint> Edge(BallSpec ball, bool cured)
    {
        (IPlaneCurve edge, WrapRequest request) = Asked(ball, cured);
        EdgeFreeWrap free = PanelWrap.LayFree(request, edge, keepsMirrors, near[cured]).Wrap;
        return [.. free.TurnedEdge.Select(p => 1 / request.RadiusMm * p)];
    }

    /// <summary>Gap at each station, mm, of two panels with their placings.</summary>
    /// <exception cref="NoAnswerException">The edges do not face each other somewhere.</exception>
    public static double[] Gaps(IReadOnlyList<SpherePoint> edge, double radiusMm, PanelPlacing a, PanelPlacing b)
    {
        double?[] gaps = SeamGap.Between(a.Of(edge), b.Of(edge));
        int step = edge.Count / Stations;
        return [.. Enumerable.Range(0, Stations).Select(i => radiusMm * (gaps[i * step] ?? throw new NoAnswerException(
            FormattableString.Invariant(
                $"the edges of the two panels do not face each other {360.0 * i / Stations:0} degrees round the seam from the waist"))))];
    }

    private (IPlaneCurve Edge, WrapRequest Request) Asked(BallSpec ball, bool cured)
    {
        double? angle = ball.Panel.WarpAngleDeg * Math.PI / 180;
        PanelRequest actual = drawn with
        {
            RadiusMm = ball.FittedRadiusMm,
            Law = FeltLaw.For(ball.Felt, angle),
            ShrinkWarp = ball.Felt.CureShrinkWarpPercent / 100,
            ShrinkWeft = ball.Felt.CureShrinkWeftPercent / 100,
            StretchWarp = ball.Felt.ApplicationStretchWarpPercent / 100,
            StretchWeft = ball.Felt.ApplicationStretchWeftPercent / 100,
            WarpAngle = angle,
            DieOffsetMm = ball.Panel.DieOffsetMm,
        };
        FeltStates states = FeltStates.OfCut(actual, cut);
        WrapRequest request = new(actual.RadiusMm, actual.Seam, actual.Law, null, null);
        return (cured ? states.AfterCure : states.AsCut, request);
    }

    private bool KeepsMirrors(BallSpec ball)
    {
        (IPlaneCurve edge, WrapRequest request) = Asked(ball, cured: true);
        return PanelWrap.KeepsMirrors(request, edge);
    }
}
