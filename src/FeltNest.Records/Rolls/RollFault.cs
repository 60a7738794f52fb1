namespace FeltNest.Rolls;

/// <summary>A fault in the cloth: an upright box or, where it has a radius, a disc that fills its box. Closed: what touches it is
/// lost.</summary>
/// <param name="XMm">Where it begins along the roll, mm.</param>
/// <param name="YMm">Its lower side from the lower selvedge, mm.</param>
/// <param name="LengthMm">Extent along the roll, mm.</param>
/// <param name="WidthMm">Extent across, mm.</param>
/// <param name="RadiusMm">Radius of the disc, mm, or null for a box.</param>
public readonly record struct RollFault(double XMm, double YMm, double LengthMm, double WidthMm, double? RadiusMm)
{
    /// <summary>A disc by its centre.</summary>
    public static RollFault Disc(double x, double y, double radius) => new(x - radius, y - radius, 2 * radius, 2 * radius, radius);

    /// <summary>A box by its corner nearest to the roll's start and the lower selvedge.</summary>
    public static RollFault Box(double x, double y, double length, double width) => new(x, y, length, width, null);

    /// <summary>Middle along the roll, mm.</summary>
    public double MiddleX => XMm + (LengthMm / 2);

    /// <summary>Middle across, mm.</summary>
    public double MiddleY => YMm + (WidthMm / 2);
}
