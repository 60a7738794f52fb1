using System.Globalization;
using FeltNest.Die.Proof;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a measured panel and a die's life print.</summary>
internal static class MeasuredReport
{
    // A stretch without a point longer than this share of the outline leaves part of it unjudged.
    private const double WidestShare = 40;

    /// <summary>The judgement of a panel.</summary>
    public static string Text(string name, MeasuredPanel panel)
    {
        TextTable table = new();
        table.Heading($"{name}: {(panel.Passed ? "PASS" : "FAIL")}")
            .Line(
                "worst place", panel.Worst.OffMm, "+0.000;-0.000", "mm",
                Invariant(
                    $"at ({Math.Round(panel.Worst.Place.X, 1) + 0.0:0.0}, {Math.Round(panel.Worst.Place.Y, 1) + 0.0:0.0}); "
                        + $"{panel.ToleranceMm / 2:0.###} either way is allowed"))
            .Line("points outside the zone", panel.Failing.ToString(CultureInfo.InvariantCulture), Invariant($"of {panel.Points.Count}"))
            .Line("mean", panel.MeanMm, "+0.000;-0.000", "mm", panel.MeanMm > 0 ? "larger all round" : "smaller all round")
            .Line("root mean square", panel.RmsMm, "0.000", "mm")
            .Line("turned by", panel.TurnDeg, "0.000", "degrees", "to lie best")
            .Line("longest unmeasured stretch", panel.WidestGapMm, "0.0", "mm");
        return table.ToString();
    }

    /// <summary>Warnings of a panel, one line each.</summary>
    public static IEnumerable<string> Warnings(MeasuredPanel panel)
    {
        if (panel.Mirrored)
        {
            yield return "the points lie much better mirrored: was the panel measured nap side down?";
        }

        if (panel.WidestGapMm > WidestShare)
        {
            yield return Invariant($"{panel.WidestGapMm:0.0} mm of the outline have no point: that stretch is not judged");
        }
    }

    /// <summary>The life of a die.</summary>
    public static string Text(DieLife life)
    {
        TextTable table = new();
        table.Heading($"Life of die {life.Name}{(life.Revision is { } r ? $", revision {r}" : string.Empty)}")
            .Line("strikes so far", life.Strikes.ToString(CultureInfo.InvariantCulture), "by the last reading")
            .Line("allowed off the outline", life.ToleranceMm / 2, "0.###", "mm")
            .Line(
                "drift reaches it at", life.DriftLimit is { } limit ? Invariant($"{limit:0}") : "not seen",
                "strikes, the first cavity and ply to do so")
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

        if (life.Drifts.Count == 0)
        {
            yield return "no cavity and ply was read at two counts of strikes: no drift can be seen yet";
        }
    }
}
