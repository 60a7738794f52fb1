using FeltNest.Cost.Compare;
using FeltNest.Cost.Compare.Findings;
using FeltNest.Layout.Scan;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a comparison says of widths and dies: the worth of a millimetre, least widths, a kept die, further dies, and where the
/// rows change.</summary>
internal static class CompareWidths
{
    /// <summary>Adds all of them to a table.</summary>
    public static void Add(IFindings table, Comparison comparison)
    {
        Millimetres(table, comparison);
        LeastWidths(table, comparison);
        KeptDie(table, comparison);
        FurtherDies(table, comparison);
        Crossovers(table, comparison);
    }

    private static void Millimetres(IFindings table, Comparison comparison)
    {
        if (comparison.Values.Count == 0)
        {
            return;
        }

        table.Heading($"What a millimetre is worth on {comparison.Best.Case.Name}, a million good balls");
        table.Note("Laid again with it: steps of whole rows, strikes and remnants are in it.");
        foreach (LengthValue value in comparison.Values)
        {
            string money = value.PartsPerMillionBalls is { } parts
                ? $", {CompareReport.Signed((double)parts.Total)} {comparison.Best.Sheet!.Currency} (felt "
                    + $"{CompareReport.Signed((double)parts.Felt)}, strikes {CompareReport.Signed((double)parts.Strikes)}, die "
                    + $"{CompareReport.Signed((double)parts.Die)})"
                : string.Empty;
            table.Note($"{value.Change}: {CompareReport.Signed(value.SquareMetresPerMillionBalls)} m2{money}.");
        }
    }

    private static void LeastWidths(IFindings table, Comparison comparison)
    {
        double low = comparison.Rows.Min(r => r.Case.WidthMm) * 0.9;
        DropWidth[] drops = [.. comparison.DropWidths.Where(d => d.LeastWidthMm >= low).TakeLast(12)];
        if (drops.Length == 0)
        {
            return;
        }

        table.Heading(
            comparison.Question.Kept is null
                ? $"Least widths of the die of {comparison.Best.Case.Name}"
                : $"Least widths of the kept die, edge trim {comparison.Question.Lay.Trims} mm");
        foreach (DropWidth drop in drops)
        {
            table.Line(
                $"{drop.Rows} rows from", Invariant($"{drop.LeastWidthMm:0.00} mm"),
                Invariant($"{drop.PanelsPerMetre:0.00} panels per metre"));
        }
    }

    private static void KeptDie(IFindings table, Comparison comparison)
    {
        foreach (CompareRow row in comparison.Ranking.Where(r => r.Kept is not null).Take(CompareReport.MostRows))
        {
            KeptDieRow kept = row.Kept!;
            string after = kept.NewDiePaysAfterThousandBalls is { } balls
                ? Invariant($"; a new die for {row.Sheet!.Die!.Price:0.00} {row.Sheet.Currency} pays after {balls:0.0} thousand balls")
                : string.Empty;
            table.Note(Invariant(
                $"{row.Case.Name}: the kept die cuts {kept.Rows} rows, {kept.PanelsPerMetre:0.00} panels per metre; a die of its own "
                    + $"{row.Yield.PanelsPerMetre:0.00}{after}."));
        }

        if (comparison.Question.Kept is null)
        {
            return;
        }

        foreach (CompareRow row in comparison.Ranking.Where(r => r.Kept is null).Take(CompareReport.MostRows))
        {
            table.Note(Invariant(
                $"{row.Case.Name}: the kept die cannot be used: none of its rows fits the usable width of "
                    + $"{row.Case.WidthMm - row.Case.Trims.TotalMm:0.##} mm."));
        }
    }

    private static void FurtherDies(IFindings table, Comparison comparison)
    {
        foreach (CompareRow row in comparison.Ranking.Where(r => r.Further is not null).Take(CompareReport.MostRows))
        {
            SecondDie further = row.Further!;
            string after = further.PaysAfterThousandBalls is { } balls
                ? Invariant($"; the further dies pay after {balls:0.0} thousand balls")
                : string.Empty;
            table.Note(Invariant(
                $"{row.Case.Name}: {further.Dies} dies cut {row.Yield.PanelsPerMetre:0.00} per metre, the best with one die "
                    + $"{further.OneDiePanelsPerMetre:0.00}{after}."));
        }
    }

    private static void Crossovers(IFindings table, Comparison comparison)
    {
        if (comparison.Crossovers.Count == 0)
        {
            return;
        }

        IEnumerable<string> places =
            comparison.Crossovers.Select(c => Invariant($"{c.RowsBelow} to {c.RowsAbove} at {c.WidthMm:0.0} mm"));
        table.Heading("Where a die designed anew changes its rows (parallel rows)");
        table.Note(string.Join(", ", places) + ".");
    }
}
