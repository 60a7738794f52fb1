using FeltNest.Geometry;

namespace FeltNest.Layout;

/// <summary>How long a strike is along the roll: of the copies of each panel those are cut together that make it shortest.</summary>
internal readonly record struct StrikeSpan
{
    /// <summary>Where the strike of the repeat begins, mm.</summary>
    public required double FromMm { get; init; }

    /// <summary>Its length, mm: more than the feed where rows reach into each other.</summary>
    public required double LengthMm { get; init; }

    /// <summary>The strike of one repeat.</summary>
    /// <param name="panels">Panels of the repeat.</param>
    /// <param name="parts">Parts of the layout.</param>
    /// <param name="repeatMm">Length of the repeat, mm.</param>
    public static StrikeSpan Of(IReadOnlyList<PlacedPanel> panels, IReadOnlyList<LayoutPart> parts, double repeatMm)
    {
        (double Left, double Right)[] all = [.. panels.Select(p =>
        {
            Outline turned = parts[p.Part].Outline.Turned(double.DegreesToRadians(p.AngleDeg));
            return (p.XMm + turned.MinX, p.XMm + turned.MaxX);
        })];
        double Length(double at) => all.Max(p => p.Right + Fold(p.Left, at, repeatMm)) - at;
        double from = all.Select(p => p.Left).MinBy(Length);
        return new StrikeSpan { FromMm = from, LengthMm = Length(from) };
    }

    /// <summary>What brings a left edge into the repeat that begins at a place; a hair before the place is the place.</summary>
    public static double Fold(double left, double at, double repeatMm) => -Math.Floor(((left - at) / repeatMm) + 1e-9) * repeatMm;
}
