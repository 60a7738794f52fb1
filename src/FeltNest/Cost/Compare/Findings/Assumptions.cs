using FeltNest.Cost.Priced;
using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Compare.Findings;

/// <summary>The figures a comparison rests on: those of the costs file, faults of the best row alone, and prices of offers that may be
/// off.</summary>
internal static class Assumptions
{
    // Looked through where no range is given: faults up to so many per cent.
    private const double MostPercent = 20;

    /// <summary>All that are to be looked at, in the order of the costs file, offers last.</summary>
    public static IReadOnlyList<Assumption> Of(CostInputs costs, IReadOnlyList<CompareRow> rows)
    {
        CompareRow best = rows.First(r => r.Rank == 1);
        return
        [
            .. OfFigures(costs, rows),
            FaultsOf(best, costs),
            .. rows.Where(r => r.Case.Offer?.PriceRange is not null).Select(row => PriceOf(row, costs)),
        ];
    }

    private static List<Assumption> OfFigures(CostInputs costs, IReadOnlyList<CompareRow> rows)
    {
        List<Assumption> all = [];
        foreach (CostFigure figure in CostFigures.Of(costs))
        {
            CostRange? range = costs.Ranges.Where(r => r.Field == figure.Field).Select(r => (CostRange?)r).FirstOrDefault();
            bool idle = figure.Field.StartsWith("rates", StringComparison.Ordinal)
                && !rows.Any(row => figure.Words.EndsWith(" " + row.Sheet!.Price.Currency, StringComparison.Ordinal));
            if (idle
                || figure.Get(costs) is not { } now
                || (range is null && (figure.UsualMost is null || (now == 0 && figure.UsualMost(now) == 0))))
            {
                continue;
            }

            double low = range is { } stated ? (double)stated.Low : 0;
            double high = range is { } other ? (double)other.High : Math.Max(now, figure.UsualMost!(now));
            all.Add(new Assumption
            {
                Words = figure.Words,
                Now = now,
                Low = low,
                High = high,
                IsStated = range is not null,
                At = v => new PriceChange(figure.With(costs, v)),
            });
        }

        return all;
    }

    private static Assumption FaultsOf(CompareRow best, CostInputs costs)
    {
        double faults = best.Case.Offer?.FaultPercent ?? costs.Losses.FaultPercent;
        return new Assumption
        {
            Words = $"faults of {best.Case.Name} alone, %",
            Now = faults,
            Low = 0,
            High = Math.Max(MostPercent, faults),
            IsStated = false,
            At = v => new PriceChange(costs, best.Case.Name, FaultPercent: v),
        };
    }

    private static Assumption PriceOf(CompareRow row, CostInputs costs)
    {
        (decimal low, decimal high) = row.Case.Offer!.PriceRange!.Value;
        return new Assumption
        {
            Words = $"price of {row.Case.Name}",
            Now = (double)row.Sheet!.Price.Amount,
            Low = (double)low,
            High = (double)high,
            IsStated = true,
            At = v => new PriceChange(costs, row.Case.Name, Price: (decimal)v),
        };
    }
}
