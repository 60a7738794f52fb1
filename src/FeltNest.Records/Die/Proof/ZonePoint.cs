using FeltNest.Geometry;

namespace FeltNest.Die.Proof;

/// <summary>A point that holds the best zone: none of them lets the zone become narrower.</summary>
internal sealed record ZonePoint
{
    /// <summary>Place in the outline's frame, mm.</summary>
    public required Point2 Place { get; init; }

    /// <summary>Distance off the outline, mm, positive outside.</summary>
    public required double OffMm { get; init; }

    /// <summary>Direction outwards at the foot, of length one.</summary>
    public required Point2 Normal { get; init; }

    /// <summary>Its share in holding the zone; the shares of all add to one.</summary>
    public required double Share { get; init; }
}
