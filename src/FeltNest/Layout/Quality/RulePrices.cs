using FeltNest.Geometry;

namespace FeltNest.Layout.Quality;

/// <summary>What every rule that can cost something costs, by a short search without it.</summary>
internal static class RulePrices
{
    /// <summary>The prices of a layout's rules.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="layout">What was found.</param>
    /// <param name="tiltIsFree">True where no warp angle is held.</param>
    /// <param name="freer">Panels per metre that a search without a rule finds.</param>
    public static IReadOnlyList<RuleCost> Of(
        LayoutRequest request, RollLayout layout, bool tiltIsFree, Func<LayoutRequest, double> freer)
    {
        List<RuleCost> costs = [];
        if (!tiltIsFree)
        {
            costs.Add(Price("warp angle held", request.Rules with { WarpAngleDeg = null, WarpToleranceDeg = 0 }, "every tilt allowed"));
        }

        if (request.Rules.OneWay)
        {
            bool half = OutlineSymmetry.HasHalfTurn(request.Part.Outline, default, 1e-6 * request.Part.Outline.Points.Max(p => p.Length));
            costs.Add(half
                ? new RuleCost("one way", layout.PanelsPerMetre, "the panel is its own half-turn: laying it one way costs nothing")
                : Price("one way", request.Rules with { OneWay = false }, "half-turns allowed"));
        }

        if (request.Rules.Forbidden.Count > 0)
        {
            costs.Add(Price("forbidden stripes", request.Rules with { Forbidden = [] }, "no stripes"));
        }

        return costs;

        RuleCost Price(string rule, LayoutRules without, string words)
        {
            LayoutRequest shorter = request with { Rules = without, Effort = Math.Max(1, request.Effort / 5) };
            return new RuleCost(
                rule, Math.Max(freer(shorter), layout.PanelsPerMetre),
                FormattableString.Invariant($"{words}, searched with effort {shorter.Effort}"));
        }
    }
}
