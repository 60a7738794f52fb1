using FeltNest.Geometry;

namespace FeltNest.Die.Make;

/// <summary>Outlines of the ejection: a strip along the rule in every cavity, and the web between and round the cavities.</summary>
/// <param name="Rings">Closed outlines in the die's frame; a ring inside another is a hole in it.</param>
/// <param name="Empty">Cavities, by number, in which no strip has room.</param>
public sealed record EjectionPieces(IReadOnlyList<IReadOnlyList<Point2>> Rings, IReadOnlyList<int> Empty)
{
    /// <summary>Width of the strips along the rule, mm: half an inch, as a die FAQ reckons ejection; narrower where less room is
    /// left.</summary>
    public const double StripMm = 12.7;

    /// <summary>No outlines yet.</summary>
    public static EjectionPieces None { get; } = new([], []);
}
