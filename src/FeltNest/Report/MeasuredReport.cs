using System.Globalization;
using FeltNest.Die.Proof;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a measured panel and a die's life print.</summary>
internal static class MeasuredReport
{
    /// <summary>The judgement of a panel.</summary>
    public static string Text(string name, MeasuredPanel panel)
    {
        double half = panel.Rule.ToleranceMm / 2;
        TextTable table = new();
        table.Heading($"{name}: {ConformityWords.Of(panel.Verdict)}")
            .Line("zone that holds all points", panel.ZoneMm, "0.000", "mm", Invariant($"wide; {panel.Rule.ToleranceMm:0.###} is allowed"))
            .Line(
                "worst place", panel.Worst.OffMm, "+0.000;-0.000", "mm",
                Invariant($"at ({Tenths(panel.Worst.Place.X)}, {Tenths(panel.Worst.Place.Y)}); {half:0.###} either way is allowed"))
            .Line("points outside the zone", panel.Failing.ToString(CultureInfo.InvariantCulture), Invariant($"of {panel.Points.Count}"))
            .Line(
                "may hide between points", panel.HiddenMm, "0.000", "mm",
                Invariant($"where the edge leaves its line by {panel.Rule.Steepness:0.###} mm a mm at the most"))
            .Line(
                "longest unmeasured stretch", panel.WidestGapMm, "0.0", "mm",
                Invariant($"at ({Tenths(panel.WidestGapPlace.X)}, {Tenths(panel.WidestGapPlace.Y)})"));
        if (panel.SpacingWantedMm is { } spacing)
        {
            table.Line("points enough for this edge", Invariant($"{panel.PointsWanted}"), Invariant($"at most {spacing:0.0} mm apart"));
        }

        Uncertain(table, panel);
        table.Line("laid", panel.TurnDeg, "0.000", "degrees", panel.Rule.InFrame ? "in the frame of the drawing" : "turned to lie best")
            .Heading("By least squares, as information")
            .Line("worst place", panel.SquaresWorstMm, "+0.000;-0.000", "mm")
            .Line("mean", panel.SquaresMeanMm, "+0.000;-0.000", "mm", panel.SquaresMeanMm > 0 ? "larger all round" : "smaller all round")
            .Line("root mean square", panel.SquaresRmsMm, "0.000", "mm");
        return table.ToString();
    }

    private static void Uncertain(TextTable table, MeasuredPanel panel)
    {
        double half = panel.Rule.ToleranceMm / 2;
        if (panel.Rule.UncertaintyMm is { } expanded)
        {
            table.Line(
                "uncertainty", expanded, "0.000", "mm",
                Invariant($"expanded, k = 2; accepted to {half - panel.GuardMm:0.000}, rejected from {half + panel.RejectGuardMm:0.000}"));
        }
        else
        {
            table.Line("uncertainty", "unknown", "judged by the values as measured, without a guard");
        }

        if (panel.Chance is { } chance)
        {
            table.Line("chance that the worst place is in", 100 * chance, "0.0", "%");
        }
    }

    /// <summary>Warnings of a panel, one line each.</summary>
    public static IEnumerable<string> Warnings(MeasuredPanel panel)
    {
        if (panel.Mirrored)
        {
            yield return "the points lie much better mirrored: was the panel measured nap side down?";
        }

        if (panel.Rule.UncertaintyMm is null)
        {
            yield return "the measurement uncertainty is unknown: the verdict stands on the values as measured and proves nothing by "
                + "ISO 14253-1";
        }

        if (panel.Verdict == Conformity.Undecided)
        {
            yield return Undecided(panel);
        }
    }

    // Near the limit no number of points helps; elsewhere it is the stretch without points that leaves it open.
    private static string Undecided(MeasuredPanel panel)
    {
        double half = panel.Rule.ToleranceMm / 2;
        if (panel.SpacingWantedMm is not { } spacing)
        {
            return Invariant($"undecided: the worst place is {Math.Abs(panel.Worst.OffMm):0.000} mm off, within the uncertainty of the ")
                + Invariant($"limit {half:0.###}: measure it better, or agree with the other side");
        }

        return Invariant($"undecided: {panel.WidestGapMm:0.0} mm of the edge at ({Tenths(panel.WidestGapPlace.X)}, ")
            + Invariant($"{Tenths(panel.WidestGapPlace.Y)}) have no point, and {panel.HiddenMm:0.000} mm may hide there: measure points ")
            + Invariant($"at most {spacing:0.0} mm apart");
    }

    private static string Tenths(double value) => Invariant($"{Math.Round(value, 1) + 0.0:0.0}");

    /// <summary>The life of a die.</summary>
    public static string Text(DieLife life)
    {
        TextTable table = new();
        table.Heading($"Life of die {life.Name}{(life.Revision is { } r ? $", revision {r}" : string.Empty)}")
            .Line("strikes so far", life.Strikes.ToString(CultureInfo.InvariantCulture), "by the last reading")
            .Line("allowed off the outline", life.ToleranceMm / 2, "0.###", "mm")
            .Line(
                "drift reaches it at", life.DriftLimit is { } limit ? Invariant($"{limit:0}") : "not seen",
                life.First is { LimitFrom: { } early } first
                    ? Invariant(
                        $"strikes, the first to do so; {early:0} to {(first.LimitTo is { } late ? Invariant($"{late:0}") : "no end")}, "
                            + $"95 %")
                    : "strikes, the first cavity and ply to do so")
            .Line("stated life", life.StatedLife is { } stated ? Invariant($"{stated}") : "not stated", "strikes")
            .Line("re-rule at", life.ReRuleAt is { } at ? Invariant($"{at:0}") : "not known", "strikes, whichever comes first");
        if (life.Drifts.Count > 0)
        {
            table
                .Heading("Drift of the worst place")
                .Row("  cavity  ply       at 0 strikes mm   mm a thousand strikes   reaches the limit at");
            foreach (DieDrift d in life.Drifts)
            {
                table.Row(
                    Invariant(
                        $"{d.Cavity,8}  {d.Ply,-8}{d.StartMm,17:0.000}{d.PerThousandMm,24:0.00000}"
                            + $"{(d.LimitStrikes is { } l ? Invariant($"{l:0}") : "-"),23}"));
            }
        }

        return table.ToString();
    }

    /// <summary>Warnings of a life.</summary>
    public static IEnumerable<string> Warnings(DieLife life)
    {
        if (life.SupersededBy is { } newer)
        {
            yield return $"SUPERSEDED by {newer}: do not strike with this die";
        }

        if (life.Failed)
        {
            yield return "a last reading is outside the tolerance: rule the die again or take it out";
        }

        if (life.ReRuleAt is { } at && life.Strikes >= at)
        {
            yield return Invariant($"due for re-ruling: {life.Strikes} strikes, {at:0} is the limit");
        }

        if (life.First?.LimitFrom is { } from && life.Strikes >= from && life.Strikes < (life.ReRuleAt ?? double.PositiveInfinity))
        {
            yield return Invariant($"the limit may be reached already: {life.Strikes} strikes, {from:0} is the early end of its interval");
        }

        foreach (string doubt in life.Drifts.SelectMany(Doubts))
        {
            yield return doubt;
        }

        if (life.Drifts.Count == 0)
        {
            yield return "no cavity and ply was read at two counts of strikes: no drift can be seen yet";
        }
    }

    // What speaks against the straight line of a drift.
    private static IEnumerable<string> Doubts(DieDrift drift)
    {
        string named = $"cavity {drift.Cavity}, {drift.Ply}";
        return drift.Fit switch
        {
            DriftFit.OneOff => [$"{named}: one reading lies off the line of the others: do not use the drift before it is measured again"],
            DriftFit.Bends => [$"{named}: the readings bend, a straight line does not fit: read more often, the limit may come earlier"],
            DriftFit.TooFew => [$"{named}: fewer than four readings: whether a straight line fits is not known"],
            _ => [],
        };
    }
}
