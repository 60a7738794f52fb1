namespace FeltNest.Files.Check;

/// <summary>The life of a die: drifts from the readings, limits from the drifts.</summary>
internal static class LifeFigures
{
    /// <summary>Checks the file.</summary>
    public static void Check(StatedFields top)
    {
        double half = top.Number("panelProfileMm") / 2;
        IReadOnlyList<StatedFields> readings = top.Items("readings");
        top.Keep(readings.Count > 0, "readings", "is empty");
        top.Same("strikes", readings.Select(r => r.Number("strikes")).DefaultIfEmpty(0).Max(), 0);
        ILookup<(double, string?), StatedFields> read = readings.ToLookup(r => (r.Number("cavity"), r.Text("ply")));
        top.Same("failed", read.Any(g => g.MaxBy(r => r.Number("strikes"))!.Number("worstMm") > half));
        foreach (StatedFields reading in readings)
        {
            double worst = reading.Number("worstMm");
            reading.Keep(Math.Abs(reading.Number("offMm")) <= worst + Shares.Room(worst), "offMm", "is above the worst distance");
        }

        IReadOnlyList<StatedFields> drifts = top.Items("drifts");
        foreach (StatedFields drift in drifts)
        {
            Drift(drift, [.. read[(drift.Number("cavity"), drift.Text("ply"))]], half);
        }

        int wanted = read.Count(g => g.Select(r => r.Number("strikes")).Distinct().Count() > 1);
        top.Keep(drifts.Count == wanted, "drifts", $"holds {drifts.Count} where the readings give {wanted}");
        double? limit = drifts.Select(d => d.Optional("limitStrikes")).Where(l => l is not null).DefaultIfEmpty(null).Min();
        top.Same("driftLimit", limit, Shares.Room(limit ?? 0));
        double? life = top.Optional("statedLife");
        double? end = limit is null || life is null ? limit ?? life : Math.Min(limit.Value, life.Value);
        top.Same("reRuleAt", end, Shares.Room(end ?? 0));
        if (end is not null)
        {
            top.Inner("die")?.Same("lifeStrikes", Math.Max(1, Math.Floor(end.Value)), 0);
        }
    }

    // The straight line of least squares, by sums about 0.
    private static void Drift(StatedFields drift, StatedFields[] readings, double half)
    {
        double n = readings.Length;
        double x = readings.Sum(r => r.Number("strikes"));
        double y = readings.Sum(r => r.Number("worstMm"));
        double xx = readings.Sum(r => r.Number("strikes") * r.Number("strikes"));
        double xy = readings.Sum(r => r.Number("strikes") * r.Number("worstMm"));
        double below = (n * xx) - (x * x);
        drift.Keep(below > 0, "cavity", "has no readings at two counts of strikes");
        if (below <= 0)
        {
            return;
        }

        double slope = ((n * xy) - (x * y)) / below;
        double start = (y - (slope * x)) / n;
        drift.Same("startMm", start, Shares.Room(start));
        drift.Same("perThousandMm", 1000 * slope, Shares.Room(1000 * slope));
        double? limit = slope > 0 ? Math.Max(0, (half - start) / slope) : null;
        drift.Same("limitStrikes", limit, Shares.Room(limit ?? 0));
    }
}
