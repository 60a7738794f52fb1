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
    /// <summary>The outline with its ball, felt mass and design angle.</summary>
    public static ImportedOutline Read(string path, JsonElement root)
    {
        JsonFields top = JsonFields.Top(path, root, PanelDocument.Document);
        string name = top.Text(PanelDocument.Name);
        List<Point2> points = JsonShapes.Points(top, PanelDocument.Outline, path);
        List<ArcVertex> arcs = JsonShapes.Arcs(top, PanelDocument.Arcs, path);
        return OutlineReader.Shaped(path, PanelDocument.Outline.Name, () => ImportedOutline.OfBoth(name, points, arcs)) with
        {
            Ball = top.OptionalText(PanelDocument.Ball),
            MassPerAreaGsm = top.OptionalNumber(PanelDocument.MassPerAreaGsm),
            EdgeMap = top.Has(PanelDocument.EdgeMap)
                ?
                [
                    .. JsonShapes.SpacePoints(top, PanelDocument.EdgeMap, path)
                        .Select(p => new EdgePoint { U = p.X, V = p.Y, S = p.Z, StretchPercent = 0 }),
                ]
                : null,
            WarpAngleDeg = top.Has(PanelDocument.WarpAngleDeg) ? top.NumberOr(PanelDocument.WarpAngleDeg) : null,
        };
    }
}
