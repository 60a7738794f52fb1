namespace FeltNest.Ball.Passport;

/// <summary>The readings of one lot of felt.</summary>
internal sealed record FeltReadings
{
    /// <summary>Name of the felt.</summary>
    public required string Felt { get; init; }

    /// <summary>Name of the lot.</summary>
    public required string Lot { get; init; }

    /// <summary>Day of the last reading.</summary>
    public required string Date { get; init; }

    /// <summary>Places of the curves of strips.</summary>
    public required IReadOnlyList<StripReading> Strips { get; init; }

    /// <summary>Strips wrapped round cores.</summary>
    public required IReadOnlyList<WrapReading> Wraps { get; init; }

    /// <summary>Discs on cores.</summary>
    public required IReadOnlyList<DiscReading> Discs { get; init; }

    /// <summary>Squares before and after the cure.</summary>
    public required IReadOnlyList<SquareReading> Squares { get; init; }

    /// <summary>Thickness, mm.</summary>
    public required IReadOnlyList<SpecimenReading> Thicknesses { get; init; }

    /// <summary>Mass per area, g/m2.</summary>
    public required IReadOnlyList<SpecimenReading> Masses { get; init; }
}
