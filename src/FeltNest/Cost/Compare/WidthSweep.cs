using FeltNest.Cost.Priced;
using FeltNest.Layout;
using FeltNest.Layout.Scan;
using FeltNest.Yield;

namespace FeltNest.Cost.Compare;

/// <summary>Waste of parallel rows over the width: the saw-tooth on which widths and offers lie, and where the number of rows
/// changes.</summary>
internal static class WidthSweep
{
    // Places between the narrowest and the widest case, and how far beyond them the curve runs, as a share.
    private const int Places = 80;
    private const double Beyond = 0.04;

    /// <summary>The curve; for a scan the rows themselves, with the widths at which their number changes.</summary>
    public static (IReadOnlyList<SweepPoint> Sweep, IReadOnlyList<Crossover> Crossovers) Of(
        CompareRequest question, WidthLays lays, IReadOnlyList<CompareRow> rows, CancellationToken stop)
    {
        if (question.Scan)
        {
            SweepPoint[] points =
            [
                .. rows.Select(r =>
                    new SweepPoint(r.Case.WidthMm, RowsOf(r.LeastFelt.Layout), YieldAccount.Of(r.LeastFelt.Layout).WastePercent))
                    .OrderBy(p => p.WidthMm),
            ];
            return (points, stop.IsCancellationRequested ? [] : lays.Crossovers([.. points.Select(p => (p.WidthMm, p.Rows))]));
        }

        if (WidthLays.NotKept(question.Lay) is not null || stop.IsCancellationRequested)
        {
            return ([], []);
        }

        double low = (1 - Beyond) * question.Cases.Min(c => c.WidthMm);
        double high = (1 + Beyond) * question.Cases.Max(c => c.Offer?.WidthMm ?? c.WidthMm);
        WidthScan scan = new(question.Lay with { RollWidthMm = high });
        List<SweepPoint> sweep = [];
        for (int i = 0; i <= Places && !stop.IsCancellationRequested; i++)
        {
            double width = low + ((high - low) * i / Places);
            if (scan.At(width) is { } layout)
            {
                sweep.Add(
                    new SweepPoint(
                        width, RowsOf(layout),
                        YieldAccount.Of(layout).WastePercent));
            }
        }

        return (sweep, []);
    }

    private static int RowsOf(RollLayout layout) =>
        layout.Bands[0].Repeat.Panels.Select(p => Math.Round(p.YMm, 6)).Distinct().Count();
}
