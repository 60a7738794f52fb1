using FeltNest.Geometry;

namespace FeltNest.Die.Proof;

/// <summary>A measured point laid on the outline wanted.</summary>
internal readonly record struct MeasuredPoint
{
    /// <summary>Place in the outline's frame, mm.</summary>
    public required Point2 Place { get; init; }

    /// <summary>Distance off the outline, mm, positive outside.</summary>
    public required double OffMm { get; init; }

    /// <summary>Length along the outline to its foot, mm.</summary>
    public required double AlongMm { get; init; }

    /// <summary>Its distance where the points are laid by least squares, mm.</summary>
    public required double SquaresOffMm { get; init; }
}
