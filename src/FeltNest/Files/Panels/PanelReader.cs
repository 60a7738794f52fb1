using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using FeltNest.Panel;

namespace FeltNest.Files.Panels;

/// <summary>Reads a computed panel (schema feltnest/panel/1) back as an outline: only what laying it needs is taken, but every field has to
/// be known.</summary>
internal static class PanelReader
{
    private static readonly string[] Known =
    [
        "schema", "name", "ball", "given", "curve", "flattening", "edge", "warpAngleDeg", "massPerAreaGsm", "areaMm2", "perimeterMm",
        "lengthMm", "widthMm", "waistMm",
        "arcDeviationMm", "sphere", "strain", "fit", "solve", "edgeLimit", "allowances", "ballCheck", "outline", "arcs", "edgeMap",
    ];

    /// <summary>The outline with its ball, felt mass and design angle.</summary>
    public static ImportedOutline Read(string path, JsonElement root)
    {
        JsonFields top = JsonFields.Top(path, root, Known);
        string name = top.Text("name");
        List<Point2> points = JsonShapes.Points(top, "outline", path);
        List<ArcVertex> arcs = JsonShapes.Arcs(top, "arcs", path);
        return OutlineReader.Shaped(path, "outline", () => ImportedOutline.OfBoth(name, points, arcs)) with
        {
            Ball = top.Has("ball") ? top.Text("ball") : null,
            MassPerAreaGsm = top.OptionalNumber("massPerAreaGsm"),
            EdgeMap = top.Has("edgeMap")
                ? [.. JsonShapes.SpacePoints(top, "edgeMap", path).Select(p => new EdgePoint(p.X, p.Y, p.Z, 0))]
                : null,
            WarpAngleDeg = top.Has("warpAngleDeg") ? top.NumberOr("warpAngleDeg", "any") : null,
        };
    }
}
