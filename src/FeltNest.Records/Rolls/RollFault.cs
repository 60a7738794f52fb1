namespace FeltNest.Rolls;

/// <summary>A fault in the cloth: an upright box or, where it has a radius, a disc that fills its box. Closed: what touches it is
/// lost.</summary>
public readonly record struct RollFault
{
    /// <summary>Where it begins along the roll, mm.</summary>
    public required double XMm { get; init; }

    /// <summary>Its lower side from the lower selvedge, mm.</summary>
    public required double YMm { get; init; }

    /// <summary>Extent along the roll, mm.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Extent across, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Radius of the disc, mm, or null for a box.</summary>
    public required double? RadiusMm { get; init; }

    /// <summary>A disc by its centre.</summary>
    public static RollFault Disc(double x, double y, double radius) => new()
    {
        XMm = x - radius,
        YMm = y - radius,
        LengthMm = 2 * radius,
        WidthMm = 2 * radius,
        RadiusMm = radius,
    };

    /// <summary>A box by its corner nearest to the roll's start and the lower selvedge.</summary>
    public static RollFault Box(double x, double y, double length, double width) =>
        new() { XMm = x, YMm = y, LengthMm = length, WidthMm = width, RadiusMm = null };

    /// <summary>Middle along the roll, mm.</summary>
    public double MiddleX => XMm + (LengthMm / 2);

    /// <summary>Middle across, mm.</summary>
    public double MiddleY => YMm + (WidthMm / 2);
}
