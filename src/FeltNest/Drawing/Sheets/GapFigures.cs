using FeltNest.Panel.Budget;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets;

/// <summary>The seam gap with its tolerances and their verdict, in lines of a sheet.</summary>
internal static class GapFigures
{
    /// <summary>The lines: the adhesive's range, then each state of the felt, then the tolerances in the order to buy them
    /// down.</summary>
    public static IReadOnlyList<(string Name, string Value)> Lines(GapBudget budget)
    {
        List<(string, string)> lines = [("Seam gap with tolerances", string.Empty), ("adhesive bridges", Range(budget))];
        lines.AddRange(State("at fitting", budget, budget.AtFitting));
        if (budget.Shrinks)
        {
            lines.AddRange(State("after cure", budget, budget.AfterCure));
        }

        return lines;
    }

    /// <summary>The tolerances of a state, the one to buy down first first.</summary>
    public static IReadOnlyList<(string Name, string Value)> Order(string state, GapBudget budget, GapState of) =>
    [
        ($"Buy down in this order, {state}", string.Empty),
        .. of.Shares.Select(share =>
        {
            GapSource source = budget.Sources[share.Source];
            string gain = share.GainPercent is { } won ? Invariant($", halved {won:+0.0;-0.0;0.0} points") : string.Empty;
            string off = Invariant($"{source.PlusMinus:0.####} {source.Unit}").TrimEnd();
            return ($"{share.Rank} {source.Words}, \u00B1{off}", Invariant($"{share.VariancePercent:0.0} % of variance") + gain);
        }),
    ];

    private static IEnumerable<(string, string)> State(string state, GapBudget budget, GapState of)
    {
        string Line(double least, double most) =>
            Invariant($"{least:0.00} to {most:0.00} mm: ") + GapWords.Verdict(budget.Adhesive, least, most);
        yield return ($"{state}, nominal", Line(of.NominalLeastMm, of.NominalMostMm));
        yield return ($"{state}, worst case", Line(of.WorstLeastMm, of.WorstMostMm));
        yield return ($"{state}, root sum square", Line(of.RootLeastMm, of.RootMostMm));
        if (of.BallsWithinPercent is { } balls)
        {
            yield return ($"{state}, balls within", Invariant($"{balls:0.0} %, {of.SeamWithinPercent:0.0} % of seam"));
        }
    }

    private static string Range(GapBudget budget) => budget.Adhesive is { } range
        ? Invariant($"{range.LeastMm:0.##} to {range.MostMm:0.##} mm")
        : "no range stated";
}
