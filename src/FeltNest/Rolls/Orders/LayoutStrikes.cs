using FeltNest.Layout;
using FeltNest.Rolls.Plan;

namespace FeltNest.Rolls.Orders;

/// <summary>What the strikes of a layout take and give.</summary>
internal static class LayoutStrikes
{
    extension(StrikeShape)
    {
        /// <summary>The shape of a layout's strikes.</summary>
        /// <param name="layout">The layout.</param>
        /// <param name="repeats">Repeats in one strike.</param>
        /// <param name="ball">Ball whose orders the die is for: of two parts it names the one that counts.</param>
        /// <exception cref="InputException">The layout has bands whose repeats have no common length, or two parts of which none or both
        /// are for the ball.</exception>
        public static StrikeShape Of(RollLayout layout, int repeats, string ball)
        {
            StrikePattern pattern = StrikePattern.Of(layout, repeats);
            double low = pattern.Panels.Min(p => p.MinY);
            double high = pattern.Panels.Max(p => p.MaxY);
            int part = PartFor(layout, ball);
            ILookup<bool, int> groups = PanelClasses.Of(pattern, layout.Rules.OneWay)
                .ToLookup(one => pattern.Panels[one.Min()].Placed.Part == part, one => one.Count);
            return new StrikeShape
            {
                FeedMm = pattern.FeedMm,
                LengthMm = pattern.LengthMm,
                AcrossMm = high - low,
                GapMm = layout.GapMm,
                LeastWidthMm = high + layout.Trims.UpperMm,
                Rows = pattern.Panels.Select(p => Math.Round(p.Placed.YMm, 6)).Distinct().Count(),
                OneWay = layout.Rules.OneWay,
                ClassPanels = [.. groups[true]],
                Part = part,
                AlsoBall = layout.Parts.Where((_, i) => i != part).Select(other => other.Ball ?? other.Name).SingleOrDefault(),
                AlsoClasses = [.. groups[false]],
            };
        }
    }

    private static int PartFor(RollLayout layout, string ball)
    {
        if (layout.Parts.Count == 1)
        {
            return 0;
        }

        int[] own = [.. Enumerable.Range(0, layout.Parts.Count).Where(i => (layout.Parts[i].Ball ?? layout.Parts[i].Name) == ball)];
        return own.Length == 1
            ? own[0]
            : throw new InputException(
                null, "panels",
                $"{layout.Parts.Count} parts share the layout ({string.Join(", ", layout.Parts.Select(p => p.Ball ?? p.Name))}): the ball "
                    + $"of the die, '{ball}', has to be the name of one of them");
    }
}
