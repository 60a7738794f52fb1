namespace FeltNest.Die.Proof;

/// <summary>How a die wears: its readings, the drift of each cavity and ply, and when to rule it again.</summary>
internal sealed record DieLife
{
    /// <summary>Die.</summary>
    public required string Name { get; init; }

    /// <summary>Revision, or null.</summary>
    public required string? Revision { get; init; }

    /// <summary>Profile tolerance of a panel, mm.</summary>
    public required double ToleranceMm { get; init; }

    /// <summary>Readings by strikes.</summary>
    public required IReadOnlyList<DieReading> Readings { get; init; }

    /// <summary>Drift of each cavity and ply read at two counts of strikes or more.</summary>
    public required IReadOnlyList<DieDrift> Drifts { get; init; }

    /// <summary>Strikes to re-ruling that the die states, or null.</summary>
    public required int? StatedLife { get; init; }

    /// <summary>Revision of the die that takes its place, or null.</summary>
    public required string? SupersededBy { get; init; }

    /// <summary>Strikes so far, by the last reading.</summary>
    public int Strikes => Readings[^1].Strikes;

    /// <summary>Strikes at which the first drift leaves the tolerance; null where none does.</summary>
    public double? DriftLimit => Drifts.Select(d => d.LimitStrikes).Where(l => l is not null).DefaultIfEmpty(null).Min();

    /// <summary>The drift that leaves the tolerance first, or null.</summary>
    public DieDrift? First => Drifts.Where(d => d.LimitStrikes is not null).MinBy(d => d.LimitStrikes);

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
