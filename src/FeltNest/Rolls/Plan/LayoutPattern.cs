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
            double cut = StrikeSpan.Of(repeat.Panels, layout.Parts, length).FromMm;
            return new StrikePattern(
                [.. from k in Enumerable.Range(0, repeats)
                    from p in repeat.Panels
                    let left = p.XMm + layout.Parts[p.Part].Outline.Turned(double.DegreesToRadians(p.AngleDeg)).MinX
                    select new StrikePanel(
                        layout.Parts[p.Part],
                        p with { XMm = p.XMm + StrikeSpan.Fold(left, cut, length) + (k * length) - cut })],
                repeats, length);
        }
    }
}
