using System.Globalization;
using FeltNest.Files.Json;
using FeltNest.Geometry;

namespace FeltNest.Files.Outlines;

/// <summary>Makes an outline of the loop that was found in a drawing, and says its size so that a slip of units is seen.</summary>
internal static class DrawnOutline
{
    /// <summary>The outline: arcs kept where the loop has any, else its corners exactly.</summary>
    /// <exception cref="InputException">The loop is no sound outline, or far larger than any part.</exception>
    public static ImportedOutline Of(string path, IReadOnlyList<ArcVertex> loop, List<string> notes)
    {
        if (loop.Any(v => !(Math.Abs(v.X) <= JsonShapes.FarthestMm) || !(Math.Abs(v.Y) <= JsonShapes.FarthestMm)))
        {
            throw new InputException(
                path, null, FormattableString.Invariant($"reaches further than {JsonShapes.FarthestMm} mm: are the units right?"));
        }

        string name = Path.GetFileNameWithoutExtension(path);
        ImportedOutline outline = OutlineReader.Shaped(
            path, null,
            () => loop.Any(v => v.Turn != 0)
                ? ImportedOutline.OfArcs(name, loop)
                : ImportedOutline.OfPoints(name, loop.Select(v => v.Point)));
        Outline raw = outline.Raw;
        notes.Add(
            string.Create(CultureInfo.InvariantCulture, $"the outline is {raw.MaxX - raw.MinX:0.##} x {raw.MaxY - raw.MinY:0.##} mm"));
        return outline with { Notes = notes };
    }
}
