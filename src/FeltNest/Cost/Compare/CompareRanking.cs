using FeltNest.Cost.Compare.Findings;

namespace FeltNest.Cost.Compare;

/// <summary>Puts rows in order, and tells at what price each would cost what another does.</summary>
internal static class CompareRanking
{
    /// <summary>The rows with their ranks, in the order given: by total where all have one, else by felt.</summary>
    public static CompareRow[] Of(List<CompareRow> rows)
    {
        bool priced = rows.TrueForAll(r => r.Sheet is not null);
        List<CompareRow> order = [.. rows.OrderBy(r => priced ? r.Total : (decimal)r.Account.PerThousandBalls.SquareMetres)];
        return [.. rows.Select(r => r with { Rank = order.IndexOf(r) + 1 })];
    }

    /// <summary>For every offer, the price at which it costs what another row does. The least of several straight lines meets a total where
    /// the last of them does, so the way that is taken there may be another one.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="ways">All ways to cut the felt of a case.</param>
    public static List<BreakEven> BreakEvens(CompareRow[] rows, Func<CompareCase, List<LayChoice>> ways) =>
        [.. from row in rows
            from other in rows
            where row != other && row.Case.Offer is not null && row.Sheet is not null && other.Sheet is not null
            select new BreakEven
            {
                Offer = row.Case.Name,
                Against = other.Case.Name,
                Price = row.Sheet!.Price with
                {
                    Amount = ways(row.Case).Max(way => way.Sheet!.PriceForTotal(other.Sheet!.Total)),
                },
            }];
}
