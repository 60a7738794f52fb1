using FeltNest.Layout.Limits;

namespace FeltNest.Layout;

/// <summary>The panels of one repeat; copies stand at every whole multiple of the length.</summary>
/// <param name="LengthMm">Length along the roll after which the lay is the same again, mm.</param>
/// <param name="Panels">Panels of one repeat.</param>
public sealed record LayoutRepeat(double LengthMm, IReadOnlyList<PlacedPanel> Panels)
{
    /// <summary>The die that cuts the repeat, where a limit on dies asked for one; null where one strike cuts it all.</summary>
    public StrikeBlock? Strike { get; init; }
}
