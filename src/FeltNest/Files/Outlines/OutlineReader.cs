using System.Text.Json;
using FeltNest.Files.Dxf;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Files.Panels;
using FeltNest.Files.Svg;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Files.Outlines;

/// <summary>Reads a flat outline: JSON points or arcs, CSV, SVG, DXF, a computed panel, or the first part of a layout.</summary>
public static class OutlineReader
{
    private static readonly string[] Allowed = [SchemaName.Outline, SchemaName.Panel, SchemaName.Layout];

    /// <summary>The outline of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static ImportedOutline Read(string path)
    {
        switch (Path.GetExtension(path).ToLowerInvariant())
        {
            case ".svg":
                return SvgOutline.Read(path);
            case ".dxf":
                return DxfOutline.Read(path);
            case ".csv":
                List<Point2> points = CsvOutline.ReadPoints(path);
                return Shaped(path, null, () => ImportedOutline.OfPoints(Path.GetFileNameWithoutExtension(path), points));
            default:
                return Read(path, JsonInput.ReadObject(path));
        }
    }

    /// <summary>The outline of a JSON object already read from a file.</summary>
    internal static ImportedOutline Read(string path, JsonElement root) => JsonInput.SchemaOf(root, path, Allowed) switch
    {
        SchemaName.Outline => OfOutline(path, root),
        SchemaName.Panel => PanelReader.Read(path, root),
        _ => OfLayout(path, root),
    };

    /// <summary>Runs a step that may find the shape unsound, and names file and field where it does.</summary>
    internal static T Shaped<T>(string path, string? field, Func<T> make)
    {
        try
        {
            return make();
        }
        catch (GeometryException error)
        {
            throw new InputException(path, field, error.Message, error);
        }
    }

    private static ImportedOutline OfOutline(string path, JsonElement root)
    {
        JsonFields top = JsonFields.Top(path, root, "schema", "name", "points", "arcs");
        string name = top.Text("name");
        if (top.Has("points") == top.Has("arcs"))
        {
            throw new InputException(path, null, "needs either 'points' or 'arcs', one of them");
        }

        if (top.Has("points"))
        {
            List<Point2> points = JsonShapes.Points(top, "points", path);
            return Shaped(path, "points", () => ImportedOutline.OfPoints(name, points));
        }

        List<ArcVertex> arcs = JsonShapes.Arcs(top, "arcs", path);
        return Shaped(path, "arcs", () => ImportedOutline.OfArcs(name, arcs));
    }

    private static ImportedOutline OfLayout(string path, JsonElement root)
    {
        LayoutPart part = LayoutReader.Read(path, root).Layout.Parts[0];
        ImportedOutline outline = part.Arcs is null
            ? ImportedOutline.OfPoints(part.Name, part.Outline.Points)
            : ImportedOutline.OfBoth(part.Name, part.Outline.Points, part.Arcs.Vertices);
        return outline with { Ball = part.Ball, MassPerAreaGsm = part.MassPerAreaGsm, WarpAngleDeg = part.WarpAngleDeg };
    }
}
