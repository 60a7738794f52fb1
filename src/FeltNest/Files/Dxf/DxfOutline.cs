using System.Globalization;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;

namespace FeltNest.Files.Dxf;

/// <summary>Reads the closed loops of an ASCII DXF drawing, in mm.</summary>
internal static class DxfOutline
{
    // Layer on which dies of this program have their cutting edges, and nothing else.
    private const string EdgeLayer = "EDGE";

    /// <summary>The outline of a file with what was assumed, healed and left aside.</summary>
    /// <exception cref="InputException">Names the line, the entity, what was found and what is allowed.</exception>
    public static ImportedOutline Read(InputText text)
    {
        List<string> notes = [];
        return DrawnOutline.Of(text.Name, LoopJoiner.Join(text.Name, Runs(text, notes), notes), notes);
    }

    /// <summary>Every loop of a file.</summary>
    /// <exception cref="InputException">Names the line, the entity, what was found and what is allowed.</exception>
    public static IReadOnlyList<IReadOnlyList<ArcVertex>> ReadAll(InputText text, List<string> notes) =>
        LoopJoiner.JoinAll(text.Name, Runs(text, notes), notes);

    private static IReadOnlyList<OpenChain> Runs(InputText text, List<string> notes)
    {
        string path = text.Name;
        DxfDrawing drawing = DxfDrawing.Read(text);
        DxfRuns runs = new(Millimetres(path, drawing.Unit, notes));
        IReadOnlyList<OpenChain> found = runs.Of(Edges(drawing.Entities, notes));
        if (runs.Ignored.Count > 0)
        {
            notes.Add($"left aside: {string.Join(", ", runs.Ignored.Select(pair => $"{pair.Value} {pair.Key}"))}");
        }

        return found;
    }

    // A drawing with a layer for edges is read from it alone: boards and other outlines stand on other layers. Vertices go with their
    // polyline.
    private static IReadOnlyList<DxfEntity> Edges(IReadOnlyList<DxfEntity> all, List<string> notes)
    {
        static bool OnEdge(DxfEntity e) => e.Groups.Any(g => g is { Code: 8, Text: EdgeLayer });
        if (!all.Any(OnEdge))
        {
            return all;
        }

        List<DxfEntity> kept = [];
        bool taken = false;
        foreach (DxfEntity entity in all)
        {
            taken = entity.Kind is "VERTEX" or "SEQEND" ? taken : OnEdge(entity);
            if (taken)
            {
                kept.Add(entity);
            }
        }

        notes.Add($"only layer {EdgeLayer} is read");
        return kept;
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
            _ => throw new InputException(
                path, "$INSUNITS",
                string.Create(CultureInfo.InvariantCulture, $"{unit} is not allowed: 1 inches, 2 feet, 4 mm, 5 cm, 6 m, or 0 for none")),
        };
        notes.Add($"lengths are in {name}");
        return scale;
    }
}
