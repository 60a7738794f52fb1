namespace FeltNest.Die.Check;

/// <summary>A piece of rule as a die file states it; positions along the flat piece, mm.</summary>
internal sealed record StatedStrip
{
    /// <summary>The part.</summary>
    public required int Part { get; init; }

    /// <summary>Such pieces in a die.</summary>
    public required int Count { get; init; }

    /// <summary>Middle line of the body when bent.</summary>
    public required double MiddleMm { get; init; }

    /// <summary>Flat length.</summary>
    public required double BlankMm { get; init; }

    /// <summary>Cut of the start off square, degrees, or null.</summary>
    public required double? StartMitreDeg { get; init; }

    /// <summary>Cut of the end off square, degrees, or null.</summary>
    public required double? EndMitreDeg { get; init; }

    /// <summary>Bends: from, to, signed angle in degrees, inside radius, share at which the length is kept.</summary>
    public required IReadOnlyList<(double From, double To, double TurnDeg, double InsideMm, double Share)> Bends { get; init; }

    /// <summary>Notches, from and to.</summary>
    public required IReadOnlyList<(double From, double To)> Notches { get; init; }
}
