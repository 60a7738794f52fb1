using FeltNest.Cost.Compare.Findings;
using FeltNest.Cost.Priced;
using FeltNest.Cost.Sheet;
using FeltNest.Numerics;

namespace FeltNest.Cost.Compare.Outlook;

/// <summary>Draws all figures that may be off together and prices every row with each draw, its layout as it is taken.</summary>
/// <remarks>The figures of a draw come from a point of <see cref="HaltonPoints"/>; correlated ones through normal variables (Gaussian
/// copula: R. B. Nelsen, <i>An Introduction to Copulas</i>, 2nd ed., 2006, section 2.3 and 2.5, from memory). A figure's share of the
/// variance is that of the means of equal slices of its values, less what slices of noise would show: the correlation ratio (A. Saltelli et
/// al.,
/// <i>Global Sensitivity Analysis: The Primer</i>, 2008, chapter 1, from memory). It holds for correlated figures too.</remarks>
internal sealed class OutlookStudy
{
    /// <summary>Draws.</summary>
    public const int Samples = 8192;

    private const int Seed = 1;
    private const int Slices = 64;

    // Variance added to every figure, so that two may go wholly together.
    private const double Blur = 1e-9;

    private readonly CompareRow[] rows;
    private readonly RowPricing pricing;
    private readonly CostInputs costs;
    private readonly IReadOnlyList<UnsureFigure> figures;
    private readonly LayPlan[] plans;

    private OutlookStudy(CompareRow[] rows, RowPricing pricing, CostInputs costs)
    {
        (this.rows, this.pricing, this.costs) = (rows, pricing, costs);
        figures = UnsureFigures.Of(costs, rows.Select(row => row.Case));
        plans = [.. rows.Select(row => LayPlan.Of(row.Layout))];
    }

    /// <summary>The outlook, or null where no figure has a range.</summary>
    /// <param name="rows">Rows, all with a cost sheet.</param>
    /// <param name="pricing">Prices them.</param>
    /// <param name="costs">Costs.</param>
    /// <exception cref="InputException">Correlations that contradict each other.</exception>
    public static CostOutlook? Of(CompareRow[] rows, RowPricing pricing, CostInputs costs)
    {
        OutlookStudy study = new(rows, pricing, costs);
        return study.figures.Count == 0 ? null : study.Run();
    }

    private CostOutlook Run()
    {
        DenseCholesky mixed = MixingOf(figures, costs.Correlations);
        HaltonPoints points = new(figures.Count, Seed);
        double[][] values = [.. Enumerable.Range(0, Samples).AsParallel().AsOrdered().Select(i => Values(points.At(i), mixed))];
        double[][] totals = [.. values.AsParallel().AsOrdered().Select(draw => rows.Select((_, r) => Total(r, draw)).ToArray())];
        int[] cheapest = new int[rows.Length];
        foreach (double[] draw in totals)
        {
            cheapest[Enumerable.Range(0, rows.Length).MinBy(r => (draw[r], rows[r].Rank))]++;
        }

        int best = Array.FindIndex(rows, row => row.Rank == 1);
        return new CostOutlook
        {
            Samples = Samples,
            Rows = [.. rows.Select((row, r) => RowOf(r, [.. totals.Select(draw => draw[r])], cheapest[r]))],
            Shares = [.. Shares(values, [.. totals.Select(draw => draw[best])])],
        };
    }

    private RowOutlook RowOf(int row, double[] totals, int cheapest)
    {
        double mean = totals.Average();
        Array.Sort(totals);
        return new RowOutlook
        {
            Name = rows[row].Case.Name,
            P5 = Quantile(totals, 0.05),
            P50 = Quantile(totals, 0.5),
            P95 = Quantile(totals, 0.95),
            Mean = mean,
            Deviation = Math.Sqrt(totals.Sum(total => (total - mean) * (total - mean)) / totals.Length),
            Least = Corner(row, -1),
            Most = Corner(row, 1),
            CheapestPercent = 100.0 * cheapest / Samples,
        };
    }

    private static double Quantile(double[] sorted, double share)
    {
        double at = (share * sorted.Length) - 0.5;
        int low = Math.Clamp((int)Math.Floor(at), 0, sorted.Length - 2);
        return sorted[low] + (Math.Clamp(at - low, 0, 1) * (sorted[low + 1] - sorted[low]));
    }

    // Every figure moves a cost one way alone, so the worst of all corners is that of the worst ends.
    private double Corner(int row, int sign)
    {
        double[] likely = [.. figures.Select(figure => figure.Likely)];
        double[] corner = [.. likely];
        for (int f = 0; f < figures.Count; f++)
        {
            double AtEnd(double end)
            {
                double[] moved = [.. likely];
                moved[f] = end;
                return Total(row, moved);
            }

            bool highIsDear = AtEnd(figures[f].High) >= AtEnd(figures[f].Low);
            corner[f] = highIsDear == sign > 0 ? figures[f].High : figures[f].Low;
        }

        return Total(row, corner);
    }

    private double Total(int row, double[] draw)
    {
        CostInputs changed = costs;
        decimal? price = null;
        for (int f = 0; f < draw.Length; f++)
        {
            changed = figures[f].With?.Invoke(changed, draw[f]) ?? changed;
            price = figures[f].Row == rows[row].Case.Name ? (decimal)draw[f] : price;
        }

        PriceChange change = new(changed, rows[row].Case.Name, Price: price);
        return (double)pricing.Priced(rows[row].Case, plans[row], rows[row].MostPanels, change).Sheet!.Total;
    }

    private double[] Values(double[] point, DenseCholesky mixed)
    {
        double[] normal = [.. point.Select(NormalDistribution.Quantile)];
        double[] together = mixed.Mixed(normal);
        return [.. figures.Select((figure, f) => figure.At(Math.Clamp(NormalDistribution.Below(together[f]), 1e-12, 1 - 1e-12)))];
    }

    private static DenseCholesky MixingOf(IReadOnlyList<UnsureFigure> figures, IReadOnlyList<CostCorrelation> correlations)
    {
        int size = figures.Count;
        string[] names = [.. figures.Select(figure => figure.Name)];
        double[] table = new double[size * size];
        for (int f = 0; f < size; f++)
        {
            table[(f * size) + f] = 1;
        }

        foreach (CostCorrelation pair in correlations)
        {
            int first = Array.IndexOf(names, pair.First);
            int second = Array.IndexOf(names, pair.Second);
            if (first >= 0 && second >= 0)
            {
                table[(first * size) + second] = table[(second * size) + first] = pair.R;
            }
        }

        return DenseCholesky.TryFactor(table, size, Blur)
            ?? throw new InputException(null, "correlations", "contradict each other: no figures can go together in all these ways");
    }

    private IEnumerable<SpreadShare> Shares(double[][] values, double[] totals)
    {
        double mean = totals.Average();
        double variance = totals.Sum(total => (total - mean) * (total - mean)) / totals.Length;
        return Enumerable.Range(0, figures.Count)
            .Select(f => new SpreadShare(figures[f].Words, 100 * Share(values, totals, f, mean, variance)))
            .OrderByDescending(share => share.Percent);
    }

    private static double Share(double[][] values, double[] totals, int figure, double mean, double variance)
    {
        if (variance < 1e-18)
        {
            return 0;
        }

        int[] order = [.. Enumerable.Range(0, totals.Length).OrderBy(i => values[i][figure])];
        double between = order.Chunk(totals.Length / Slices).Average(slice =>
        {
            double off = slice.Average(i => totals[i]) - mean;
            return off * off;
        });
        double noise = (double)(Slices - 1) / totals.Length;
        return Math.Clamp(((between / variance) - noise) / (1 - noise), 0, 1);
    }
}
