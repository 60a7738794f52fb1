namespace FeltNest.Die.Proof;

/// <summary>One reading of a blank cut by a die.</summary>
internal sealed record DieReading
{
    /// <summary>Date as written.</summary>
    public required string Date { get; init; }

    /// <summary>Strikes of the die until then.</summary>
    public required int Strikes { get; init; }

    /// <summary>Cavity, from 1.</summary>
    public required int Cavity { get; init; }

    /// <summary>top, bottom, or single.</summary>
    public required string Ply { get; init; }

    /// <summary>Mean distance of the blank off the outline, mm, positive outside.</summary>
    public required double OffMm { get; init; }

    /// <summary>Greatest distance off the outline, mm, without sign.</summary>
    public required double WorstMm { get; init; }
}
