using FeltNest.Cost.Compare.Findings;
using static FeltNest.InvariantText;

namespace FeltNest.Cost.Compare.Handover;

/// <summary>The three risks of a comparison in sentences.</summary>
internal static class SummaryRisks
{
    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(Comparison comparison)
    {
        if (!comparison.HasCosts)
        {
            return ["Without prices no risk of cost can be told."];
        }

        return [Spread(comparison), Chance(comparison), Change(comparison)];
    }

    /// <summary>How far a change of the ranking is off, as a share of what the figure is now.</summary>
    public static double Distance(RankFlip flip) => Math.Abs(flip.At - flip.Now) / Math.Max(Math.Abs(flip.Now), 1e-9);

    private static string Spread(Comparison comparison)
    {
        if (comparison.Outlook is not { Shares.Count: > 0 } outlook)
        {
            return "Spread: no figure has a range, so nothing can be said of it. Give low, likely and high in the costs file.";
        }

        RowOutlook best = outlook.Rows.First(row => row.Name == comparison.Best.Case.Name);
        IEnumerable<string> most =
            outlook.Shares.Take(2).Select(share => Invariant($"{FigureName.Of(share.Figure).Name} ({share.Percent:0} % of the spread)"));
        return Invariant(
            $"Spread: {best.Name} costs {best.P5:0.00} to {best.P95:0.00} {comparison.Best.Sheet!.Currency} in 18 of 20 cases. ")
            + $"It comes most from {string.Join(" and ", most)}.";
    }

    private static string Chance(Comparison comparison)
    {
        if (comparison.Rows.Count == 1)
        {
            return "Chance: there is no other offer.";
        }

        if (comparison.Outlook is not { } outlook)
        {
            return "Chance that another is cheaper: not known without ranges.";
        }

        string name = comparison.Best.Case.Name;
        RowOutlook best = outlook.Rows.First(row => row.Name == name);
        RowOutlook other = outlook.Rows.Where(row => row.Name != name).MaxBy(row => row.CheapestPercent)!;
        return Invariant(
            $"Chance that another is cheaper: {100 - best.CheapestPercent:0.0} %, most often {other.Name} ({other.CheapestPercent:0.0} "
                + $"%).");
    }

    private static string Change(Comparison comparison)
    {
        RankFlip? nearest = comparison.Flips.OrderByDescending(flip => flip.IsStated).ThenBy(Distance).FirstOrDefault();
        if (nearest is null)
        {
            return comparison.Question.Scan
                ? "Change of the ranking: not looked for in a range of widths."
                : "Change of the ranking: no single figure of the costs file makes another one the cheapest.";
        }

        string within = nearest.IsStated ? ", within its stated range" : ", outside any stated range";
        FigureName figure = FigureName.Of(nearest.Assumption);
        return Invariant($"Nearest change of the ranking: {nearest.Best} is the cheapest where {figure.Name} comes to ")
            + Invariant($"{nearest.At:0.###}{figure.Unit} (now {nearest.Now:0.###}{within}).");
    }
}
