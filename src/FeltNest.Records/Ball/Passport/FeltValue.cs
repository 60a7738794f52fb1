namespace FeltNest.Ball.Passport;

/// <summary>A figure of a lot with its spread.</summary>
internal sealed record FeltValue
{
    /// <summary>The figure: the mean of the specimens, or what follows from such means.</summary>
    public required double Value { get; init; }

    /// <summary>Standard deviation from specimen to specimen; null where the figure follows from others, or is a bracket.</summary>
    public required double? SpecimenSpread { get; init; }

    /// <summary>Standard uncertainty of the figure; null likewise for a bracket.</summary>
    public required double? Spread { get; init; }

    /// <summary>Half of the interval that holds the true figure of 95 of 100 lots; null likewise.</summary>
    public required double? Interval { get; init; }

    /// <summary>Freedoms of the spread; null likewise. Not whole where several spreads are joined.</summary>
    public required double? Freedom { get; init; }

    /// <summary>Specimens it was taken from.</summary>
    public required int Specimens { get; init; }
}
