using FeltNest.Cost.Compare;
using FeltNest.Cost.Sheet;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a comparison says of least felt against least cost: both ways to cut a felt side by side, with what the difference is made
/// of.</summary>
internal static class CompareFronts
{
    /// <summary>Adds it to a table; nothing where no price is known or the two are one everywhere.</summary>
    public static void Add(TextTable table, Comparison comparison)
    {
        if (comparison.Best.Sheet is not { } priced)
        {
            return;
        }

        CompareRow[] rows = [.. comparison.Ranking.Where(row => row.CostsLessThanLeastFelt).Take(CompareReport.MostRows)];
        if (rows.Length == 0)
        {
            table.Note("Every layout taken is the one with least felt: none within 2 % of its felt costs less.");
            return;
        }

        table.Heading($"Least felt and least cost, thousand good balls, {priced.Currency}")
            .Row("  name                  m2  strikes  a strike    felt  strikes    die   total");
        foreach (CompareRow row in rows)
        {
            CostParts most = CostParts.Of(row.LeastFelt.Sheet!);
            CostParts least = CostParts.Of(row.Sheet!);
            CostParts more = least.Above(most);
            string name = row.Case.Name.Length <= 16 ? row.Case.Name : row.Case.Name[..14] + "..";
            table.Row(Invariant($"  {name}"));
            table.Row(Line("least felt", row.LeastFelt.Account, most)).Row(Line("least cost", row.Account, least));
            table.Row(Invariant(
                $"    difference {row.Account.PerThousandBalls.SquareMetres - row.LeastFelt.SquareMetres,9:+0.00;-0.00;0.00}"
                    + $"{row.Account.StrikesPerThousandBalls - row.LeastFelt.Account.StrikesPerThousandBalls,9:+0.00;-0.00;0.00}"
                    + $"{string.Empty,10}{more.Felt,8:+0.00;-0.00;0.00}{more.Strikes,9:+0.00;-0.00;0.00}"
                    + $"{more.Die,7:+0.00;-0.00;0.00}{more.Total,8:+0.00;-0.00;0.00}"));
        }

        table.Note(
            "Ranked and costed is the least cost: of all layouts within 2 % of the least felt the one with the least total. A strike: "
                + "panels of one layer. Strikes and die with their overhead; the total also holds what does not depend on the layout.");
    }

    private static string Line(string words, FeltAccount felt, CostParts parts) => Invariant(
        $"    {words,-11}{felt.PerThousandBalls.SquareMetres,9:0.00}{felt.StrikesPerThousandBalls,9:0.00}{felt.Cavities,10:0.##}"
            + $"{parts.Felt,8:0.00}{parts.Strikes,9:0.00}{parts.Die,7:0.00}{parts.Total,8:0.00}");
}
