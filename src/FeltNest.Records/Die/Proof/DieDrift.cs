namespace FeltNest.Die.Proof;

/// <summary>Drift of one cavity and ply: a straight line through its worst distances by least squares.</summary>
internal sealed record DieDrift
{
    /// <summary>Cavity.</summary>
    public required int Cavity { get; init; }

    /// <summary>Ply.</summary>
    public required string Ply { get; init; }

    /// <summary>Worst distance at no strikes, mm.</summary>
    public required double StartMm { get; init; }

    /// <summary>Growth in a thousand strikes, mm.</summary>
    public required double PerThousandMm { get; init; }

    /// <summary>Standard deviation of the readings about the line, mm; null with fewer than three.</summary>
    public required double? ScatterMm { get; init; }

    /// <summary>Readings.</summary>
    public required int Count { get; init; }

    /// <summary>Their mean count of strikes.</summary>
    public required double MeanStrikes { get; init; }

    /// <summary>Sum of the squared distances from that mean.</summary>
    public required double SquaredStrikes { get; init; }

    /// <summary>Student's factor that leaves 5 per cent outside on both sides together; null with fewer than three readings.</summary>
    public required double? Student { get; init; }

    /// <summary>Early end of the strikes at which the line reaches half the tolerance, 95 per cent; null where it cannot be told.</summary>
    public required double? LimitFrom { get; init; }

    /// <summary>Late end; null where there may be none.</summary>
    public required double? LimitTo { get; init; }

    /// <summary>How well a straight line fits.</summary>
    public required DriftFit Fit { get; init; }

    /// <summary>Half width of the band round the line at a count of strikes, mm; null with fewer than three readings.</summary>
    public double? BandMm(double strikes) => ScatterMm is { } scatter && Student is { } factor
        ? factor * scatter * Math.Sqrt((1.0 / Count) + ((strikes - MeanStrikes) * (strikes - MeanStrikes) / SquaredStrikes))
        : null;

    /// <summary>The line at a count of strikes, mm.</summary>
    public double LineMm(double strikes) => StartMm + (PerThousandMm * strikes / 1000);

    /// <summary>Strikes at which the line reaches half the tolerance; null where it does not grow.</summary>
    public required double? LimitStrikes { get; init; }
}
