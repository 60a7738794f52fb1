namespace FeltNest.Layout.Limits;

/// <summary>The runs across the roll that panels may use: the usable width less the forbidden stripes.</summary>
internal static class FreeCloth
{
    /// <summary>Lower and upper side of every run, lowest first, mm from the lower selvedge. A stripe narrower than the gap is widened to
    /// the gap on both sides alike, so that panels above it and below it are apart whatever their places along the roll; stripes within the
    /// trims take nothing.</summary>
    public static IReadOnlyList<(double Low, double High)> Of(LayoutRequest request)
    {
        List<(double Low, double High)> runs = [];
        (double low, double high) = request.Usable;
        foreach (ForbiddenStrip strip in request.Rules.Forbidden
            .Where(s => s.YToMm > low && s.YFromMm < high)
            .OrderBy(s => s.YFromMm)
            .ToArray())
        {
            double more = Math.Max(0, (request.GapMm - (strip.YToMm - strip.YFromMm)) / 2);
            double below = Math.Min(high, strip.YFromMm - more);
            if (below > low)
            {
                runs.Add((low, below));
            }

            low = Math.Max(low, strip.YToMm + more);
        }

        if (low < high)
        {
            runs.Add((low, high));
        }

        return runs;
    }

    /// <summary>The request for one run alone, as if the rest were edge trim.</summary>
    public static LayoutRequest Run(LayoutRequest request, double low, double high) => request with
    {
        Trims = new EdgeTrims { LowerMm = low, UpperMm = request.RollWidthMm - high },
        Rules = request.Rules with { Forbidden = [] },
    };
}
