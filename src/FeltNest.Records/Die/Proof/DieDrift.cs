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

    /// <summary>Strikes at which the line reaches half the tolerance; null where it does not grow.</summary>
    public required double? LimitStrikes { get; init; }
}
