using FeltNest.Layout;
using FeltNest.Layout.Check;
using FeltNest.Layout.Scan;
using FeltNest.Yield;

namespace FeltNest.Runs;

/// <summary>Parallel rows of one part and rule over many widths, each checked and kept.</summary>
internal sealed class ScanRun(LayoutRequest widest)
{
    // Widths kept: more than a chart and a long drag ask for.
    private const int Most = 600;

    private readonly Lock work = new();
    private readonly WidthScan scan = new(widest);
    private readonly Dictionary<double, RollLayout?> kept = [];

    /// <summary>The lay of a width; null where the part does not fit or no lay passed the check.</summary>
    public RollLayout? At(double widthMm)
    {
        lock (work)
        {
            if (!kept.TryGetValue(widthMm, out RollLayout? layout))
            {
                if (kept.Count >= Most)
                {
                    kept.Clear();
                }

                layout = scan.At(widthMm) is { } found && LayoutCheck.Verify(found).Passed ? found : null;
                kept[widthMm] = layout;
            }

            return layout;
        }
    }

    /// <summary>Waste of a width, per cent of the full width; null where there is no lay.</summary>
    public double? WasteAt(double widthMm) => At(widthMm) is { } layout ? YieldAccount.Of(layout).WastePercent : null;
}
