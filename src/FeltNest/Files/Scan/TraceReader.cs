using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;

namespace FeltNest.Files.Scan;

/// <summary>Reads what was traced from a picture (schema feltnest/trace/1) back as an outline.</summary>
internal static class TraceReader
{
    /// <summary>The outline with its warp angle.</summary>
    public static ImportedOutline Read(string path, JsonElement root)
    {
        JsonFields top = JsonFields.Top(path, root, TraceDocument.Document);
        string name = top.Text(TraceDocument.Name);
        List<ArcVertex> arcs = JsonShapes.Arcs(top, TraceDocument.Arcs, path);
        return OutlineReader.Shaped(path, TraceDocument.Arcs.Name, () => ImportedOutline.OfArcs(name, arcs)) with
        {
            WarpAngleDeg = top.OptionalNumber(TraceDocument.WarpAngleDeg),
        };
    }
}
