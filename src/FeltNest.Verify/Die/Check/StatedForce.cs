namespace FeltNest.Die.Check;

/// <summary>What a die file says its force is worked out from.</summary>
internal sealed record StatedForce
{
    /// <summary>Length of cutting edge, mm.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Length added for rules close to each other, mm.</summary>
    public required double CloseAddedMm { get; init; }

    /// <summary>Layers under one strike.</summary>
    public required int Plies { get; init; }

    /// <summary>Force per mm of edge and layer, N.</summary>
    public required double NPerMmPerPly { get; init; }

    /// <summary>Added for ejection, per cent.</summary>
    public required double EjectionPercent { get; init; }

    /// <summary>Reserve for a dull edge, per cent.</summary>
    public required double ReservePercent { get; init; }

    /// <summary>The force that these figures give, kN.</summary>
    public double Kn => (LengthMm + CloseAddedMm) * Plies * NPerMmPerPly / 1000
        * (1 + (EjectionPercent / 100)) * (1 + (ReservePercent / 100));
}
