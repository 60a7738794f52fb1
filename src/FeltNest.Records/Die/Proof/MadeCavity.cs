using FeltNest.Geometry;

namespace FeltNest.Die.Proof;

/// <summary>One cavity of a die as it was made.</summary>
internal sealed record MadeCavity
{
    /// <summary>Number of the cavity in the die.</summary>
    public required int Number { get; init; }

    /// <summary>Its edge by its own best zone.</summary>
    public required MeasuredPanel Edge { get; init; }

    /// <summary>Where the middle of its edge is wanted, in the die's frame.</summary>
    public required Point2 Wanted { get; init; }

    /// <summary>How far its middle is off its place, mm.</summary>
    public required Point2 OffMm { get; init; }

    /// <summary>Greatest distance of its points off the edge where that belongs, mm, positive outside: shape, place and turn
    /// together.</summary>
    public required double InPlaceMm { get; init; }

    /// <summary>What is proved of its place.</summary>
    public required Conformity Position { get; init; }
}
