using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Findings;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a comparison says of figures that may be off, and of dies that may be bought.</summary>
internal static class CompareRisks
{
    /// <summary>Adds both to a table.</summary>
    public static void Add(IFindings table, Comparison comparison)
    {
        Swings(table, comparison);
        Flips(table, comparison);
        Gang(table, comparison);
    }

    private static void Swings(IFindings table, Comparison comparison)
    {
        if (comparison.Swings.Count == 0)
        {
            return;
        }

        CompareRow best = comparison.Best;
        table.Heading($"{best.Case.Name}: from low to high, one figure at a time, {best.Sheet!.Currency}");
        FindingTable figures = new(
            "  figure                               low  likely    high      at low   at high",
            ["figure", "low", "likely", "high", "cost at low", "cost at high"]);
        foreach (CostSwing swing in comparison.Swings)
        {
            string name = swing.Assumption.Length <= 34 ? swing.Assumption : swing.Assumption[..31] + "...";
            figures.Add(
                Invariant(
                    $"  {name,-34}{swing.Low,8:0.####}{swing.Likely,8:0.####}{swing.High,8:0.####}{swing.TotalAtLow,10:0.00}"
                        + $"{swing.TotalAtHigh,10:0.00}"),
                swing.Assumption, Invariant($"{swing.Low:0.####}"), Invariant($"{swing.Likely:0.####}"),
                Invariant($"{swing.High:0.####}"), Invariant($"{swing.TotalAtLow:0.00}"), Invariant($"{swing.TotalAtHigh:0.00}"));
        }

        table.Table(figures);
    }

    private static void Flips(IFindings table, Comparison comparison)
    {
        if (comparison.Flips.Count > 0)
        {
            table.Heading("What would make another one the cheapest (one figure changed at a time)");
            foreach (RankFlip flip in comparison.Flips)
            {
                string within = flip.IsStated ? ", within its stated range" : string.Empty;
                table.Note(Invariant($"{flip.Assumption}: {flip.Best} from {flip.At:0.###} (now {flip.Now:0.###}){within}."));
            }
        }
        else if (comparison.HasCosts && comparison.Question is { Scan: false, Costs: not null } && comparison.Rows.Count > 1)
        {
            table.Note(comparison.Swings.Count > 0
                ? "No stated range, and no other figure of the costs file up to 20 %, 2 m or ten times its value, makes another one the "
                    + "cheapest."
                : "No single figure of the costs file, up to 20 %, 2 m or ten times its value, makes another one the cheapest.");
        }
    }

    private static void Gang(IFindings table, Comparison comparison)
    {
        if (comparison.Gang.Count == 0)
        {
            return;
        }

        CompareRow best = comparison.Best;
        table.Heading($"{best.Case.Name}: dies and plies, thousand good balls, {best.Sheet!.Currency}");
        FindingTable dies = new(
            "  panels at most   plies  panels a strike  strikes  die price     total  pays from",
            ["panels at most", "plies", "panels a strike", "strikes", "die price", "total", "pays from, thousand"]);
        foreach (GangChoice choice in comparison.Gang)
        {
            string from = choice.PaysFromThousandBalls is { } balls ? Invariant($"{balls:0.0}") : "never";
            dies.Add(
                Invariant(
                    $"{choice.Cavities,16}{choice.Plies,8}{choice.PanelsPerStrike,17:0.##}{choice.StrikesPerThousandBalls,9:0.00}"
                        + $"{choice.DiePrice,11:0.00}{choice.Total,10:0.00}{from,11}"),
                Invariant($"{choice.Cavities}"), Invariant($"{choice.Plies}"), Invariant($"{choice.PanelsPerStrike:0.##}"),
                Invariant($"{choice.StrikesPerThousandBalls:0.00}"), Invariant($"{choice.DiePrice:0.00}"),
                Invariant($"{choice.Total:0.00}"), from);
        }

        table.Table(dies);
        table.Note(
            "Total: the die by its wear. Pays from: thousand balls from which this die, bought once, is the cheapest to buy and run; "
                + "until then the one before it that is not 'never'.");
    }
}
