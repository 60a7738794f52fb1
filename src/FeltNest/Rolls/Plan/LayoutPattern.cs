using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Rolls.Plan;

/// <summary>The pattern that strikes cut of a layout.</summary>
internal static class LayoutPattern
{
    extension(StrikePattern)
    {
        /// <summary>The pattern of a layout. Of the copies of each panel those are taken that make the strike shortest.</summary>
        /// <exception cref="InputException">The layout has bands whose repeats have no common length.</exception>
        public static StrikePattern Of(RollLayout layout, int repeats)
        {
            LayoutRepeat repeat = CommonRepeat.Of(layout);
            double length = repeat.LengthMm;
            (PlacedPanel Placed, double Left, double Right)[] all = [.. repeat.Panels.Select(p =>
            {
                Outline turned = layout.Parts[p.Part].Outline.Turned(double.DegreesToRadians(p.AngleDeg));
                return (p, p.XMm + turned.MinX, p.XMm + turned.MaxX);
            })];

            double cut = all.Select(p => p.Left).MinBy(at => all.Max(p => p.Right + Fold(p.Left, at, length)) - at);
            return new StrikePattern(
                [.. from k in Enumerable.Range(0, repeats)
                    from p in all
                    select new StrikePanel(
                        layout.Parts[p.Placed.Part],
                        p.Placed with { XMm = p.Placed.XMm + Fold(p.Left, cut, length) + (k * length) - cut })],
                repeats, length);
        }
    }

    // What brings a left edge into the repeat that begins at the cut; a hair before the cut is the cut.
    private static double Fold(double left, double cut, double length) => -Math.Floor(((left - cut) / length) + 1e-9) * length;
}
