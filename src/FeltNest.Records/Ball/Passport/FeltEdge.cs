namespace FeltNest.Ball.Passport;

/// <summary>The edge limit as a bracket: compression of the greatest disc that lay flat and of the least that puckered.</summary>
internal sealed record FeltEdge
{
    /// <summary>The greatest disc that lay flat, of those smaller than all that puckered.</summary>
    public required DiscReading Flat { get; init; }

    /// <summary>The least disc that puckered beyond every flat one; null where none did.</summary>
    public required DiscReading? Puckered { get; init; }

    /// <summary>Compression of the edge that lay flat, per cent.</summary>
    public required double FlatPercent { get; init; }

    /// <summary>Compression at which it puckered, per cent; null where none did.</summary>
    public required double? PuckeredPercent { get; init; }

    /// <summary>Discs of that strain or more that lay flat, none of them puckered below.</summary>
    public required int FlatDiscs { get; init; }

    /// <summary>Whether a disc lay flat at more compression than another puckered at.</summary>
    public required bool Contradict { get; init; }

    /// <summary>Share of discs that may still pucker at the flat disc's size, per cent, with 95 in 100 certainty: 1 - 0.05^(1/n) for n flat
    /// ones out of n.</summary>
    public double PuckerShareAtMostPercent => 100 * (1 - Math.Pow(0.05, 1.0 / FlatDiscs));
}
