using FeltNest.Layout;
using NetTopologySuite.Geometries;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Check;

/// <summary>Whether what one strike cuts is the layout: whole repeats of every band, laid one feed apart.</summary>
internal static class PatternRules
{
    /// <summary>What is told of a pattern that does not tile the layout.</summary>
    public const string NotTheLayout = "pattern: its panels, laid one feed apart, are not the layout";

    private const double Slack = 1e-4;

    /// <summary>What is violated.</summary>
    public static IEnumerable<string> Broken(RollLayout layout, StatedPlan plan, IReadOnlyList<Polygon> shapes)
    {
        if (!AreRepeats(layout, plan))
        {
            string bands = string.Join(
                ", ", layout.Bands.Select(b => Invariant($"{b.Repeat.Panels.Count} panels on {b.Repeat.LengthMm:0.####} mm")));
            yield return Invariant(
                $"pattern: {plan.Panels.Count} panels on a feed of {plan.FeedMm:0.####} mm are not {plan.Repeats} repeats of {bands}");
            yield break;
        }

        if (!Tiles(layout, plan))
        {
            yield return NotTheLayout;
        }

        double first = shapes.Min(s => s.EnvelopeInternal.MinX);
        if (Math.Abs(first) > Slack)
        {
            yield return Invariant($"pattern: its first cut edge stands at {first:0.####} mm, not at 0");
        }
    }

    /// <summary>True where a strike has as many panels as its feed has room for whole repeats of every band.</summary>
    public static bool AreRepeats(RollLayout layout, StatedPlan plan) =>
        plan.Repeats >= 1
            && layout.Bands.All(band => Times(band, plan) is var times
                && times >= 1
                && Math.Abs(plan.FeedMm - (times * band.Repeat.LengthMm)) <= Slack
                && times % plan.Repeats == 0)
            && (layout.Bands.Count > 1 || Times(layout.Bands[0], plan) == plan.Repeats)
            && plan.Panels.Count == layout.Bands.Sum(band => Times(band, plan) * band.Repeat.Panels.Count);

    private static long Times(LayoutBand band, StatedPlan plan) => (long)Math.Round(plan.FeedMm / band.Repeat.LengthMm);

    // Every panel of a repeat must stand in the pattern once for each of its repeats, at copies that differ from each other modulo the
    // feed. The strike's frame is the layout's, moved along: the first panel says how far, up to whole repeats.
    private static bool Tiles(RollLayout layout, StatedPlan plan)
    {
        double[] moves =
        [
            .. layout.Bands.SelectMany(band => band.Repeat.Panels)
                .Where(p => Same(p, plan.Panels[0])).Select(p => plan.Panels[0].XMm - p.XMm),
        ];
        return moves.Any(move => layout.Bands.All(band => Tiles(band, plan, move)));
    }

    private static bool Tiles(LayoutBand band, StatedPlan plan, double move)
    {
        double length = band.Repeat.LengthMm;
        long times = Times(band, plan);
        return band.Repeat.Panels.All(home => plan.Panels
            .Where(p => Same(home, p))
            .Select(p => (p.XMm - home.XMm - move) / length)
            .Where(k => Math.Abs(k - Math.Round(k)) * length <= Slack)
            .Select(k => (((long)Math.Round(k) % times) + times) % times)
            .Distinct().Count() == times);
    }

    private static bool Same(PlacedPanel a, PlacedPanel b) =>
        a.Part == b.Part && Math.Abs(a.YMm - b.YMm) <= Slack && Math.Abs(Math.IEEERemainder(a.AngleDeg - b.AngleDeg, 360)) <= 1e-6;
}
