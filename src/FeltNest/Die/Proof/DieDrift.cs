namespace FeltNest.Die.Proof;

/// <summary>Drift of one cavity and ply: a straight line through its worst distances by least squares.</summary>
/// <param name="Cavity">Cavity.</param>
/// <param name="Ply">Ply.</param>
/// <param name="StartMm">Worst distance at no strikes, mm.</param>
/// <param name="PerThousandMm">Growth in a thousand strikes, mm.</param>
/// <param name="LimitStrikes">Strikes at which the line reaches half the tolerance; null where it does not grow.</param>
public sealed record DieDrift(int Cavity, string Ply, double StartMm, double PerThousandMm, double? LimitStrikes)
{
    /// <summary>The drift of readings at two counts of strikes or more.</summary>
    internal static DieDrift Of(int cavity, string ply, IReadOnlyList<DieReading> readings, double toleranceMm)
    {
        double meanX = readings.Average(r => (double)r.Strikes);
        double meanY = readings.Average(r => r.WorstMm);
        double slope =
            readings.Sum(r => (r.Strikes - meanX) * (r.WorstMm - meanY)) / readings.Sum(r => (r.Strikes - meanX) * (r.Strikes - meanX));
        double start = meanY - (slope * meanX);
        return new DieDrift(cavity, ply, start, 1000 * slope, slope > 0 ? Math.Max(0, ((toleranceMm / 2) - start) / slope) : null);
    }
}
