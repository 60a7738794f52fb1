using FeltNest.Geometry;

namespace FeltNest.Panel;

/// <summary>Tells a size that is off by a factor between units from one that is simply another size.</summary>
internal static class UnitSlip
{
    // Sizes within this factor of a unit's factor are that slip of units.
    private const double Slack = 1.12;

    private static readonly (double Factor, string Words)[] Units =
        [
            (25.4, "25.4 x too small: these are inches, write mm"), (1 / 25.4, "25.4 x too large: inches were taken for mm once too often"),
            (10, "10 x too small: these are centimetres, write mm"), (0.1, "10 x too large: tenths of mm, write mm"),
            (1000, "1000 x too small: these are metres, write mm"),
        ];

    /// <summary>What the slip is, in words; null where there is none.</summary>
    /// <param name="ratio">Size wanted over size found.</param>
    public static string? Of(double ratio)
    {
        foreach ((double factor, string words) in Units)
        {
            if (ratio > factor / Slack && ratio < factor * Slack)
            {
                return words;
            }
        }

        return null;
    }

    /// <summary>The outline, unless it is off the size of a ball's panel by a factor between units: two panels cover the fitted
    /// sphere.</summary>
    /// <exception cref="InputException">It is.</exception>
    public static ArcOutline Sound(ArcOutline outline, double radiusMm)
    {
        double wanted = 2 * Math.PI * radiusMm * radiusMm;
        return Of(Math.Sqrt(wanted / outline.Area)) is { } words
            ? throw new InputException(FormattableString.Invariant(
                $"the outline has an area of {outline.Area:0.###} mm2 where a panel of this ball has about {wanted:0}; it is {words}"))
            : outline;
    }
}
