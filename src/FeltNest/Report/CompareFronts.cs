using FeltNest.Cost.Compare;
using FeltNest.Cost.Sheet;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What a comparison says of least felt against least cost: both ways to cut a felt side by side, with what the difference is made
/// of.</summary>
internal static class CompareFronts
{
    // Long because it puts three lines of each row in two shapes, in the order they are read.
    /// <summary>Adds it to a table; nothing where no price is known or the two are one everywhere.</summary>
    public static void Add(IFindings table, Comparison comparison)
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

        FindingTable ways = new(
            "  name                  m2  strikes  a strike    felt  strikes    die   total",
            [string.Empty, "m2", "strikes", "a strike", "felt", "strikes", "die", "total"]);
        foreach (CompareRow row in rows)
        {
            CostParts most = CostParts.Of(row.LeastFelt.Sheet!);
            CostParts least = CostParts.Of(row.Sheet!);
            CostParts more = least.Above(most);
            string name = row.Case.Name.Length <= 16 ? row.Case.Name : row.Case.Name[..14] + "..";
            ways.Add(Invariant($"  {name}"), row.Case.Name);
            Add(ways, "least felt", row.LeastFelt.Account, most);
            Add(ways, "least cost", row.Account, least);
            double felt = row.Account.PerThousandBalls.SquareMetres - row.LeastFelt.SquareMetres;
            double strikes = row.Account.StrikesPerThousandBalls - row.LeastFelt.Account.StrikesPerThousandBalls;
            ways.Add(
                Invariant(
                    $"    difference {felt,9:+0.00;-0.00;0.00}{strikes,9:+0.00;-0.00;0.00}"
                        + $"{string.Empty,10}{more.Felt,8:+0.00;-0.00;0.00}{more.Strikes,9:+0.00;-0.00;0.00}"
                        + $"{more.Die,7:+0.00;-0.00;0.00}{more.Total,8:+0.00;-0.00;0.00}"),
                "difference", CompareReport.Signed(felt), CompareReport.Signed(strikes), string.Empty,
                CompareReport.Signed((double)more.Felt), CompareReport.Signed((double)more.Strikes),
                CompareReport.Signed((double)more.Die), CompareReport.Signed((double)more.Total));
        }

        table.Heading($"Least felt and least cost, thousand good balls, {priced.Currency}");
        table.Table(ways);

        table.Note(
            "Ranked and costed is the least cost: of all layouts within 2 % of the least felt the one with the least total. A strike: "
                + "panels of one layer. Strikes and die with their overhead; the total also holds what does not depend on the layout.");
    }

    private static void Add(FindingTable ways, string words, FeltAccount felt, CostParts parts) => ways.Add(
        Invariant(
            $"    {words,-11}{felt.PerThousandBalls.SquareMetres,9:0.00}{felt.StrikesPerThousandBalls,9:0.00}{felt.Cavities,10:0.##}"
                + $"{parts.Felt,8:0.00}{parts.Strikes,9:0.00}{parts.Die,7:0.00}{parts.Total,8:0.00}"),
        words, Invariant($"{felt.PerThousandBalls.SquareMetres:0.00}"), Invariant($"{felt.StrikesPerThousandBalls:0.00}"),
        Invariant($"{felt.Cavities:0.##}"), Invariant($"{parts.Felt:0.00}"), Invariant($"{parts.Strikes:0.00}"),
        Invariant($"{parts.Die:0.00}"), Invariant($"{parts.Total:0.00}"));
}
