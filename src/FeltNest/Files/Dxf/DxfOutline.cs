using System.Globalization;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;

namespace FeltNest.Files.Dxf;

/// <summary>Reads the closed loops of an ASCII DXF drawing, in mm.</summary>
internal static class DxfOutline
{
    /// <summary>The outline of a file with what was assumed, healed and left aside.</summary>
    /// <exception cref="InputException">Names the line, the entity, what was found and what is allowed.</exception>
    public static ImportedOutline Read(string path)
    {
        List<string> notes = [];
        return DrawnOutline.Of(path, LoopJoiner.Join(path, Runs(path, notes), notes), notes);
    }

    /// <summary>Every loop of a file.</summary>
    /// <exception cref="InputException">Names the line, the entity, what was found and what is allowed.</exception>
    public static IReadOnlyList<IReadOnlyList<ArcVertex>> ReadAll(string path, List<string> notes) => LoopJoiner.JoinAll(path, Runs(path, notes), notes);

    private static IReadOnlyList<OpenChain> Runs(string path, List<string> notes)
    {
        DxfDrawing drawing = DxfDrawing.Read(path);
        DxfRuns runs = new(Millimetres(path, drawing.Unit, notes));
        IReadOnlyList<OpenChain> found = runs.Of(drawing.Entities);
        if (runs.Ignored.Count > 0)
        {
            notes.Add($"left aside: {string.Join(", ", runs.Ignored.Select(pair => $"{pair.Value} {pair.Key}"))}");
        }

        return found;
    }

    // Codes of $INSUNITS in the published DXF reference.
    private static double Millimetres(string path, int? unit, List<string> notes)
    {
        (double scale, string name) = unit switch
        {
            1 => (25.4, "inches"),
            2 => (304.8, "feet"),
            4 => (1, "millimetres"),
            5 => (10, "centimetres"),
            6 => (1000, "metres"),
            null or 0 => (1, "millimetres, assumed: the drawing states no unit"),
            _ => throw new InputException(path, "$INSUNITS", string.Create(CultureInfo.InvariantCulture, $"{unit} is not allowed: 1 inches, 2 feet, 4 mm, 5 cm, 6 m, or 0 for none")),
        };
        notes.Add($"lengths are in {name}");
        return scale;
    }
}
