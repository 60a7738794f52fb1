using FeltNest.Layout;

namespace FeltNest.Rolls.Plan;

/// <summary>One band of a layout as a layout of its own: what a die for that band cuts of the same roll.</summary>
internal static class BandLayout
{
    /// <summary>The layout of one band, with the parts that lie in it.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="band">Band, counted from 1 at the lower selvedge.</param>
    /// <exception cref="InputException">The layout has no such band.</exception>
    public static RollLayout Of(RollLayout layout, int band)
    {
        if (band < 1 || band > layout.Bands.Count)
        {
            throw new InputException(
                AskedFor.Band,
                $"{band} is not there: the layout has {layout.Bands.Count} band{(layout.Bands.Count == 1 ? string.Empty : "s")}, counted "
                    + $"from 1");
        }

        LayoutBand own = layout.Bands[band - 1];
        int[] parts = [.. own.Repeat.Panels.Select(p => p.Part).Distinct().Order()];
        return layout with
        {
            Parts = [.. parts.Select(part => layout.Parts[part])],
            Bands =
            [
                own with
                {
                    Repeat = own.Repeat with
                    {
                        Panels = [.. own.Repeat.Panels.Select(p => p with { Part = Array.IndexOf(parts, p.Part) })],
                    },
                },
            ],
        };
    }
}
