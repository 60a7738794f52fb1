using FeltNest.Geometry;

namespace FeltNest.Layout.Limits;

/// <summary>The die of a repeat: the first panels of the repeat's list are its cavities, and the repeat is the die struck once at every
/// place.</summary>
/// <param name="Panels">Cavities of the die.</param>
/// <param name="Places">Moves of the die from its first place, mm, along the roll (up to whole repeats) and across; the first is (0,
/// 0).</param>
/// <param name="LengthMm">Extent of the die's cut edges along the roll, mm.</param>
/// <param name="WidthMm">Extent across, mm.</param>
public sealed record StrikeBlock(int Panels, IReadOnlyList<Point2> Places, double LengthMm, double WidthMm);
