namespace FeltNest.Ball;

/// <summary>The lot that a felt's figures were measured on, and how its moduli were read off the curves.</summary>
public sealed record FeltLot
{
    /// <summary>Name or number of the lot.</summary>
    public required string Name { get; init; }

    /// <summary>Day of the last reading, as 2026-03-31.</summary>
    public required string Date { get; init; }

    /// <summary>Strain from which on the moduli were fitted, per cent.</summary>
    public required double FromPercent { get; init; }

    /// <summary>Strain up to which they were fitted, per cent.</summary>
    public required double ToPercent { get; init; }

    /// <summary>Whether a curve of force against extension bends in that range by more than the noise of its readings.</summary>
    public required bool CurveBends { get; init; }
}
