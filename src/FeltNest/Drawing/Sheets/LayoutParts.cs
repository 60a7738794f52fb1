using FeltNest.Drawing.Parts;
using FeltNest.Geometry;
using FeltNest.Layout;
using static FeltNest.InvariantText;

namespace FeltNest.Drawing.Sheets;

/// <summary>Which colours of a layout's sheet are which ball, and where across the roll it lies.</summary>
internal static class LayoutParts
{
    // Line to line, mm.
    private const double Step = 5;

    /// <summary>Room the lines take, mm.</summary>
    public static double Height(RollLayout layout) => (Step * layout.Parts.Count) + 7;

    /// <summary>A line a part, the first at a place: its colours, its ball, its bands.</summary>
    public static IEnumerable<Mark> Draw(RollLayout layout, ClothView view, Point2 at)
    {
        for (int part = 0; part < layout.Parts.Count; part++)
        {
            PlacedPanel[] panels = [.. layout.Bands.SelectMany(b => b.Repeat.Panels).Where(p => p.Part == part)];
            int[] colours = [.. panels.Select(p => view.ClassIndex(p) % Ink.Classes.Length).Distinct().Order()];
            Point2 line = at - new Point2(0, part * Step);
            for (int i = 0; i < colours.Length; i++)
            {
                Box swatch = new() { MinX = line.X + (i * 6), MinY = line.Y, MaxX = line.X + (i * 6) + 5, MaxY = line.Y + 3 };
                yield return new PathMark([Chain.Rectangle(swatch)], Ink.Narrow, Ink.Classes[colours[i]]);
            }

            string bands = string.Join(", ", layout.Bands.Where(b => b.Repeat.Panels.Any(p => p.Part == part))
                .Select(b => Invariant($"{b.YFromMm:0} to {b.YToMm:0}")));
            yield return new TextMark
            {
                Text = $"{layout.Parts[part].Ball ?? layout.Parts[part].Name}: {bands} mm from the lower selvedge",
                At = line + new Point2((colours.Length * 6) + 2, 0.2),
                HeightMm = Ink.Note,
                Colour = Ink.Dark,
            };
        }
    }
}
