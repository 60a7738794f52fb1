namespace FeltNest.Die.Proof;

/// <summary>The life of a die from its readings.</summary>
internal static class DriftLines
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
            return new DieLife
            {
                Name = name,
                Revision = revision,
                ToleranceMm = toleranceMm,
                Readings = ordered,
                Drifts = drifts,
                StatedLife = statedLife,
                SupersededBy = supersededBy,
            };
        }
    }

    // The drift of readings at two counts of strikes or more.
    private static DieDrift Line(int cavity, string ply, IReadOnlyList<DieReading> readings, double toleranceMm)
    {
        (double X, double Y)[] points = [.. readings.Select(r => ((double)r.Strikes, r.WorstMm))];
        DriftLine line = DriftLine.Of(points);
        (double? from, double? to) = line.Crossing(toleranceMm / 2);
        return new DieDrift
        {
            Cavity = cavity,
            Ply = ply,
            StartMm = line.Start,
            PerThousandMm = 1000 * line.Slope,
            ScatterMm = line.Scatter,
            Count = points.Length,
            MeanStrikes = line.MeanX,
            SquaredStrikes = line.SquaredX,
            Student = line.Factor,
            LimitStrikes = line.Slope > 0 ? Math.Max(0, ((toleranceMm / 2) - line.Start) / line.Slope) : null,
            LimitFrom = from,
            LimitTo = to,
            Fit = DriftDoubt.Of(points),
        };
    }
}
