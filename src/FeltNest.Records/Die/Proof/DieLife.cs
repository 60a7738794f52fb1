namespace FeltNest.Die.Proof;

/// <summary>How a die wears: its readings, the drift of each cavity and ply, and when to rule it again.</summary>
/// <param name="Name">Die.</param>
/// <param name="Revision">Revision, or null.</param>
/// <param name="ToleranceMm">Profile tolerance of a panel, mm.</param>
/// <param name="Readings">Readings by strikes.</param>
/// <param name="Drifts">Drift of each cavity and ply read at two counts of strikes or more.</param>
/// <param name="StatedLife">Strikes to re-ruling that the die states, or null.</param>
/// <param name="SupersededBy">Revision of the die that takes its place, or null.</param>
public sealed record DieLife(
    string Name, string? Revision, double ToleranceMm, IReadOnlyList<DieReading> Readings, IReadOnlyList<DieDrift> Drifts, int? StatedLife,
    string? SupersededBy)
{
    /// <summary>Strikes so far, by the last reading.</summary>
    public int Strikes => Readings[^1].Strikes;

    /// <summary>Strikes at which the first drift leaves the tolerance; null where none does.</summary>
    public double? DriftLimit => Drifts.Select(d => d.LimitStrikes).Where(l => l is not null).DefaultIfEmpty(null).Min();

    /// <summary>Strikes at which to rule again: the drift's limit or the stated life, whichever comes first; null where neither is
    /// known.</summary>
    public double? ReRuleAt => (DriftLimit, StatedLife) switch
    {
        ({ } limit, { } life) => Math.Min(limit, life),
        ({ } limit, null) => limit,
        (null, { } life) => life,
        _ => null,
    };

    /// <summary>Whether a reading is already outside the tolerance.</summary>
    public bool Failed => Readings.GroupBy(r => (r.Cavity, r.Ply)).Any(g => g.MaxBy(r => r.Strikes)!.WorstMm > ToleranceMm / 2);
}
