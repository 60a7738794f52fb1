using FeltNest.Geometry;

namespace FeltNest.Die.Check;

/// <summary>A board for the laser as its drawing holds it.</summary>
internal sealed record StatedBoardCut
{
    /// <summary>Outlines of the slots.</summary>
    public required IReadOnlyList<IReadOnlyList<ArcVertex>> Slots { get; init; }

    /// <summary>Outlines of the board's pieces.</summary>
    public required IReadOnlyList<IReadOnlyList<ArcVertex>> Outlines { get; init; }

    /// <summary>Holes: layer, centre, radius, mm.</summary>
    public required IReadOnlyList<(string Layer, Point2 At, double RadiusMm)> Holes { get; init; }

    /// <summary>Strokes of the engraving.</summary>
    public required IReadOnlyList<IReadOnlyList<ArcVertex>> Strokes { get; init; }

    /// <summary>Corners that the drawing states for its extents, or null.</summary>
    public required (Point2 Low, Point2 High)? Extents { get; init; }
}
