namespace FeltNest.Layout.Polish;

/// <summary>Two places of two parts that are near each other.</summary>
internal readonly record struct Contact
{
    /// <summary>Signed distance, mm; negative when the corner lies inside the other part.</summary>
    public required double Distance { get; init; }

    /// <summary>Unit vector from the second part towards the first.</summary>
    public required double NormalX { get; init; }

    /// <summary>Its y.</summary>
    public required double NormalY { get; init; }

    /// <summary>Place on the first part from its own origin, mm.</summary>
    public required double FirstX { get; init; }

    /// <summary>Its y.</summary>
    public required double FirstY { get; init; }

    /// <summary>Place on the second part from its own origin, mm.</summary>
    public required double SecondX { get; init; }

    /// <summary>Its y.</summary>
    public required double SecondY { get; init; }
}
