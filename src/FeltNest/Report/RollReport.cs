using System.Globalization;
using FeltNest.Layout;
using FeltNest.Rolls;
using FeltNest.Rolls.Plan;
using FeltNest.Rolls.Plan.Chain;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a roll plan prints.</summary>
internal static class RollReport
{
    // Longest list of runs printed; all strikes are in the files.
    private const int MostRuns = 12;

    /// <summary>The text, lines ending in a line feed.</summary>
    public static string Text(RollPlan plan)
    {
        TextTable table = new();
        if (RollRoom.Warning(plan) is { } narrow)
        {
            table.Note(narrow);
        }

        foreach (string loud in new[] { OffCentre(plan), Gain(plan) }.OfType<string>())
        {
            table.Note(loud);
        }

        Strikes(table, plan);
        table.Heading("Panels lost in these strikes").Line("all causes", Whole(plan.Strikes.Sum(s => s.Lost.Count)));
        foreach (LossCause cause in Enum.GetValues<LossCause>())
        {
            table.Line(NameOf(cause), Whole(plan.LostPanels(cause)));
        }

        Roll(table, plan);
        Runs(table, plan);
        Proof(table, plan);
        return table.ToString();
    }

    private static void Strikes(TextTable table, RollPlan plan)
    {
        FeltRoll roll = plan.Request.Roll;
        int more = plan.GoodPanels - plan.BackToBackGoodPanels;
        double end = (plan.Strikes[^1].XMm + plan.Pattern.LengthMm) / 1000;
        (string ends, double at) =
            plan.OverhangMm > 0 ? ("last strike overhangs", plan.OverhangMm / 1000) : ("last strike ends at", end);
        IReadOnlyList<LayoutPart> parts = plan.Request.Layout.Parts;
        table.Heading($"Roll {roll.Name}: strikes of {string.Join(" and ", parts.Select(p => p.Name))}");
        foreach (PartYield part in parts.Count > 1 ? plan.Yields : [])
        {
            table.Line($"good, part {part.Part + 1}", Whole(part.GoodPanels), $"{part.Balls} balls, {parts[part.Part].Name}");
        }

        table.Line("good panels", Whole(plan.GoodPanels), $"{plan.Balls} balls (pairs of one pairing group)")
            .Line("plain cutting", Whole(plan.BackToBackGoodPanels), "good panels, one feed apart from the start, no strike moved")
            .Line("gain over that", Whole(more), Invariant($"panels, {100.0 * more / Math.Max(1, plan.BackToBackGoodPanels):0.00} %"))
            .Line(
                "strikes", Whole(plan.Strikes.Count),
                Invariant($"of {plan.Pattern.Panels.Count} panels; feed {plan.Pattern.FeedMm:0.###} mm, {Repeats(plan.Pattern.Repeats)}"))
            .Line(ends, at, "0.00", "m", Invariant($"the roll is {roll.LengthMm / 1000:0.##} m long"));
    }

    private static void Roll(TextTable table, RollPlan plan)
    {
        FeltRoll roll = plan.Request.Roll;
        FourPointScore score = FourPointScore.Of(roll, plan.Request.Layout.Trims.TotalMm);
        table.Heading("The roll")
            .Line(
                "width", Invariant($"{roll.LeastWidthMm:0.#} to {roll.MostWidthMm:0.#} mm"),
                Invariant($"layout made for {plan.Request.Layout.RollWidthMm:0.#} mm"))
            .Line("faults, splices", Invariant($"{roll.Faults.Count}, {roll.Splices.Count}"))
            .Line(
                "four-point score", score.Per100SquareYards, "0.0", string.Empty,
                Invariant($"points per 100 yd2 of cuttable width ({score.Per100SquareMetres:0.0} per 100 m2; {score.Points} points)"))
            .Line("skew", roll.SkewDeg, "0.##", "degrees", Skew(plan));
    }

    private static void Runs(TextTable table, RollPlan plan)
    {
        table.Heading("Strikes in order: runs one feed apart")
            .Row("  strikes          begins at mm     advance mm    moved across   good   lost");
        IReadOnlyList<StrikeRun> runs = StrikeRun.Of(plan);
        foreach (StrikeRun run in runs.Take(MostRuns))
        {
            table.Row(Invariant(
                $"{Numbers(run),9}{run.XMm,22:0.00}{run.AdvanceMm,15:0.00}{run.ShiftYMm,16:0.##}{run.GoodPanels,7}{run.LostPanels,7}"));
        }

        if (runs.Count > MostRuns)
        {
            table.Note($"... and {runs.Count - MostRuns} more runs: all strikes are in roll.csv.");
        }
    }

    private static void Proof(TextTable table, RollPlan plan)
    {
        string across = plan.Grid.SideSteps > 0 ? Invariant($", {plan.Grid.SideStepMm:0.##} mm across") : ", no moves across";
        table.Heading("How far this is the best")
            .Note(Invariant(
                $"No other choice of strikes on the grid has more good panels: {plan.Grid.StepMm:0.####} mm along the roll{across}. "
                    + $"From an "
                    + $"advance of {plan.ClearAdvanceMm:0.#} mm strikes are clear of each other; below it the gap to the strike before "
                    + $"was worked out for every step."));
        if (plan.LeastOffLineMm > plan.Pattern.FeedMm + plan.Grid.StepMm)
        {
            table.Note(Invariant(
                $"Strikes interlock over more than their neighbours, so advances off the line below {plan.LeastOffLineMm:0.#} mm were "
                    + $"left out: safe, perhaps a little short. More repeats a strike lift that."));
        }
    }

    /// <summary>Warnings, one line each.</summary>
    public static IEnumerable<string> Warnings(RollPlan plan)
    {
        FeltRoll roll = plan.Request.Roll;
        if (RollRoom.Warning(plan) is { } narrow)
        {
            yield return narrow;
        }

        foreach (string loud in new[] { OffCentre(plan), Gain(plan) }.OfType<string>())
        {
            yield return loud;
        }

        if (plan.Request.Layout.Rules.Plies.Count > 1)
        {
            yield return $"the layout is cut in {plan.Request.Layout.Rules.Plies.Count} plies, this plan is for one ply of this roll: "
                + $"faults of other plies lie elsewhere";
        }

        foreach (WarpReport warp in WarpReport.Of(plan.Pattern, plan.Request.Layout, roll.SkewDeg)
            .Where(w => Math.Abs(w.OffDesignDeg ?? 0) > plan.Request.Layout.Rules.WarpToleranceDeg + 0.05))
        {
            yield return Invariant(
                $"panels lie {warp.OffDesignDeg:0.##} degrees off the angle to the warp they are designed for (tolerance "
                    + $"{plan.Request.Layout.Rules.WarpToleranceDeg:0.##})");
        }
    }

    private static string? Gain(RollPlan plan) => plan.Better is { } better
        ? Invariant(
            $"A LAYOUT MADE FOR THIS ROLL would give {better.GoodPanels} good panels in place of {plan.GoodPanels}, "
                + $"{better.GainPercent:0.0} % more: lay it out for {better.WidthMm:0.#} mm, the least width measured; this one is made "
                + $"for {plan.Request.Layout.RollWidthMm:0.#} mm")
        : null;

    private static string? OffCentre(RollPlan plan) => plan.OverhangMm > 0
        ? Invariant(
            $"OFF-CENTRE LOAD: the last strike reaches {plan.OverhangMm:0.#} mm past the end of the roll; keep within the limit of the "
                + $"press's maker")
        : null;

    private static string Skew(RollPlan plan) =>
        string.Join("; ", WarpReport.Of(plan.Pattern, plan.Request.Layout, plan.Request.Roll.SkewDeg)
        .Take(3)
        .Select(w =>
            Invariant(
                $"panels at {w.LaidAngleDeg:0.##} lie at {w.WarpAngleDeg:0.##} to the warp"
                    + $"{(w.OffDesignDeg is { } off ? Invariant($", {off:0.##} off design") : string.Empty)}")));

    /// <summary>The numbers of a run's strikes.</summary>
    internal static string Numbers(StrikeRun run) => run.Count == 1 ? $"{run.First}" : $"{run.First} to {run.First + run.Count - 1}";

    private static string NameOf(LossCause cause) => cause switch
    {
        LossCause.RollEnd => "past the roll's end",
        LossCause.Joint => "at a roll splice",
        LossCause.Width => "outside the usable width",
        _ => "at a fault",
    };

    private static string Repeats(int count) => count == 1 ? "one repeat" : $"{count} repeats";

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);
}
