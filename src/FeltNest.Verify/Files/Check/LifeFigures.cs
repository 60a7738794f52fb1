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
        double rest = readings.Sum(r => Math.Pow(r.Number("worstMm") - start - (slope * r.Number("strikes")), 2));
        double? scatter = n > 2 ? Math.Sqrt(rest / (n - 2)) : null;
        drift.Same("scatterMm", scatter, Shares.Room(scatter ?? 0));
        foreach (string end in (string[])["limitFrom", "limitTo"])
        {
            // The tolerance lies on the border of the band there: as far off the line as 95 per cent of all lines reach.
            if (drift.Optional(end) is > 0 and { } at && scatter is > 0 and { } known)
            {
                double reach = known * Math.Sqrt((1 / n) + (Math.Pow(at - (x / n), 2) / (below / n)));
                double outside = Outside(Math.Abs(half - start - (slope * at)) / reach, n - 2);
                drift.Keep(Math.Abs(outside - 0.05) <= 1e-5, end, $"leaves {Shown(outside)} outside where 0.05 is wanted");
            }
        }

        drift.Keep((drift.Optional("limitFrom") ?? 0) <= (limit ?? double.PositiveInfinity) + 1, "limitFrom", "is after limitStrikes");
    }

    private static string Shown(double share) => share.ToString("0.#####", System.Globalization.CultureInfo.InvariantCulture);

    // Share of Student's distribution outside a factor on both sides: its density added up by Simpson's rule over the angle whose tangent
    // is the factor over the root of the freedoms.
    private static double Outside(double factor, double freedom)
    {
        const int parts = 2000;
        double Upto(double angle)
        {
            double Density(int i) => Math.Pow(Math.Cos(angle * i / parts), freedom - 1);
            double sum = Density(0) + Density(parts) + Enumerable.Range(1, parts - 1).Sum(i => Density(i) * (i % 2 == 1 ? 4 : 2));
            return sum * angle / parts / 3;
        }

        return 1 - (Upto(Math.Atan(factor / Math.Sqrt(freedom))) / Upto(Math.PI / 2));
    }
}
