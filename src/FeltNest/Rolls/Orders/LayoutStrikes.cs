using FeltNest.Layout;
using FeltNest.Rolls.Plan;

namespace FeltNest.Rolls.Orders;

/// <summary>What the strikes of a layout take and give.</summary>
internal static class LayoutStrikes
{
    extension(StrikeShape)
    {
        /// <summary>The shape of a layout's strikes.</summary>
        /// <exception cref="InputException">The layout has bands with repeats of their own, or panels of several parts.</exception>
        public static StrikeShape Of(RollLayout layout, int repeats)
        {
            StrikePattern pattern = StrikePattern.Of(layout, repeats);
            if (layout.Parts.Count != 1)
            {
                throw new InputException(
                    null, "panels", $"{layout.Parts.Count} parts share the layout: a die is planned for orders of one ball");
            }

            double low = pattern.Panels.Min(p => p.MinY);
            double high = pattern.Panels.Max(p => p.MaxY);
            return new StrikeShape
            {
                FeedMm = pattern.FeedMm,
                LengthMm = pattern.LengthMm,
                AcrossMm = high - low,
                GapMm = layout.GapMm,
                LeastWidthMm = high + layout.Trims.UpperMm,
                OneWay = layout.Rules.OneWay,
                ClassPanels = [.. PanelClasses.Of(pattern, layout.Rules.OneWay).Select(one => one.Count)],
            };
        }
    }
}
