using FeltNest.Cost.Compare.Findings;
using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Compare.Outlook;

/// <summary>All figures of a comparison that may be off, in the order of the costs file, prices of offers last.</summary>
internal static class UnsureFigures
{
    /// <summary>The figures; those that no row of the comparison rests on are among them.</summary>
    public static IReadOnlyList<UnsureFigure> Of(CostInputs costs, IEnumerable<CompareCase> cases) =>
    [
        .. from figure in CostFigures.Of(costs)
           from range in costs.Ranges.Where(r => r.Field == figure.Field)
           select new UnsureFigure
           {
               Name = figure.Field,
               Words = figure.Words,
               Low = (double)range.Low,
               Likely = figure.Get(costs)!.Value,
               High = (double)range.High,
               Shape = range.Shape,
               With = figure.With,
           },
        .. cases.Where(c => c.Offer?.PriceRange is not null).Select(c => new UnsureFigure
        {
            Name = PriceOf(c.Name),
            Words = PriceOf(c.Name),
            Low = (double)c.Offer!.PriceRange!.Value.Low,
            Likely = (double)c.Offer.Price.Amount,
            High = (double)c.Offer.PriceRange.Value.High,
            Shape = c.Offer.PriceShape,
            Row = c.Name,
        }),
    ];

    private static string PriceOf(string name) => $"price of {name}";
}
