using FeltNest.Drawing.Frames;
using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets;

/// <summary>One repeat of a layout true to size over the whole width of the roll, on pages to be laid together.</summary>
internal static class LayoutTiles
{
    private static readonly Pen Stripe = new(0.25, Ink.Dark, 2, 1);

    /// <summary>The pages.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="paper">Size of the paper: <c>A3</c>, <c>A4</c>.</param>
    public static IReadOnlyList<Sheet> Draw(RollLayout layout, string paper)
    {
        TileLine[] panels = [.. layout.Bands.SelectMany(band => band.Repeat.Panels.Select(p => Panel(layout, band, p)))];
        Point2[] corners = [.. panels.SelectMany(line => line.Chain.Flattened(1)), new(0, 0), new(0, layout.RollWidthMm)];
        Box extent = new()
        {
            MinX = corners.Min(p => p.X) - 1,
            MinY = corners.Min(p => p.Y) - 1,
            MaxX = corners.Max(p => p.X) + 1,
            MaxY = corners.Max(p => p.Y) + 1,
        };
        (double Y, Pen Pen)[] levels =
        [
            (0, Ink.Wide), (layout.RollWidthMm, Ink.Wide), (layout.Trims.LowerMm, Ink.Faint),
            (layout.RollWidthMm - layout.Trims.UpperMm, Ink.Faint),
            .. layout.Rules.Forbidden.SelectMany(f => new[] { (f.YFromMm, Stripe), (f.YToMm, Stripe) }),
        ];
        string title =
            Invariant($"One repeat of {layout.Parts[0].Name} on {layout.RollWidthMm:0.##} mm, seen from the nap side, feed to the right");
        return TilePages.Draw(
            title, paper, extent,
            [
                .. panels,
                .. levels.Select(level => new TileLine(
                    Chain.Open(new Point2(extent.MinX, level.Y), new Point2(extent.MaxX, level.Y)), level.Pen)),
            ]);
    }

    private static TileLine Panel(RollLayout layout, LayoutBand band, PlacedPanel placed) => new(
        ClothView.ChainOf(layout.Parts[placed.Part]).Placed(
            1, double.DegreesToRadians(placed.AngleDeg), new Point2(ClothView.Folded(placed.XMm, band.Repeat.LengthMm), placed.YMm)),
        Ink.Narrow);
}
