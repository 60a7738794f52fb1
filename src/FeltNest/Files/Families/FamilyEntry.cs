namespace FeltNest.Files.Families;

/// <summary>One line of a list of the balls of a family.</summary>
internal sealed record FamilyEntry
{
    /// <summary>Name of the ball.</summary>
    public required string Name { get; init; }

    /// <summary>Its ball specification or outline.</summary>
    public required string File { get; init; }

    /// <summary>Good balls made in a year.</summary>
    public required double BallsPerYear { get; init; }

    /// <summary>Its own gap, mm, or null.</summary>
    public double? GapMm { get; init; }

    /// <summary>Its own edge trim each side, mm, or null.</summary>
    public double? EdgeMm { get; init; }
}
