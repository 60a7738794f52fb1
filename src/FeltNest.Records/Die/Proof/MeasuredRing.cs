using FeltNest.Geometry;

namespace FeltNest.Die.Proof;

/// <summary>Points measured round one cavity.</summary>
internal sealed record MeasuredRing
{
    /// <summary>Number of the cavity, or null where the measurement does not say it.</summary>
    public required int? Cavity { get; init; }

    /// <summary>Points, mm, all rings in one frame.</summary>
    public required IReadOnlyList<Point2> Points { get; init; }
}
