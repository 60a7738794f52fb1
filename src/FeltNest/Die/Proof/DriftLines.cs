namespace FeltNest.Die.Proof;

/// <summary>The life of a die from its readings.</summary>
public static class DriftLines
{
    extension(DieLife)
    {
        /// <summary>The life of readings.</summary>
        public static DieLife Of(
            string name, string? revision, double toleranceMm, IEnumerable<DieReading> readings, int? statedLife, string? supersededBy)
        {
            DieReading[] ordered = [.. readings.OrderBy(r => r.Strikes).ThenBy(r => r.Cavity).ThenBy(r => r.Ply, StringComparer.Ordinal)];
            DieDrift[] drifts = [.. ordered.GroupBy(r => (r.Cavity, r.Ply)).Where(g => g.Select(r => r.Strikes).Distinct().Count() > 1)
                .Select(g => Line(g.Key.Cavity, g.Key.Ply, [.. g], toleranceMm))
                .OrderBy(d => d.Cavity)
                .ThenBy(d => d.Ply, StringComparer.Ordinal)];
            return new DieLife(name, revision, toleranceMm, ordered, drifts, statedLife, supersededBy);
        }
    }

    // The drift of readings at two counts of strikes or more.
    private static DieDrift Line(int cavity, string ply, IReadOnlyList<DieReading> readings, double toleranceMm)
    {
        double meanX = readings.Average(r => (double)r.Strikes);
        double meanY = readings.Average(r => r.WorstMm);
        double slope =
            readings.Sum(r => (r.Strikes - meanX) * (r.WorstMm - meanY)) / readings.Sum(r => (r.Strikes - meanX) * (r.Strikes - meanX));
        double start = meanY - (slope * meanX);
        return new DieDrift(cavity, ply, start, 1000 * slope, slope > 0 ? Math.Max(0, ((toleranceMm / 2) - start) / slope) : null);
    }
}
