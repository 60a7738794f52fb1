using FeltNest.Geometry;

namespace FeltNest.Layout.Limits;

/// <summary>The die of a repeat: the first panels of the repeat's list are its cavities, and the repeat is the die struck once at every
/// place.</summary>
public sealed record StrikeBlock
{
    /// <summary>Cavities of the die.</summary>
    public required int Panels { get; init; }

    /// <summary>Moves of the die from its first place, mm, along the roll (up to whole repeats) and across; the first is (0,
    /// 0).</summary>
    public required IReadOnlyList<Point2> Places { get; init; }

    /// <summary>Extent of the die's cut edges along the roll, mm.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Extent across, mm.</summary>
    public required double WidthMm { get; init; }
}
