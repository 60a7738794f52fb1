using System.Text.Json;
using FeltNest.Files.Dxf;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Files.Panels;
using FeltNest.Files.Scan;
using FeltNest.Files.Svg;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Files.Outlines;

/// <summary>Reads a flat outline: JSON points or arcs, CSV, SVG, DXF, a picture, what was traced from one, a computed panel,
/// or the first part of a layout.</summary>
internal static class OutlineReader
{
    private static readonly string[] Allowed = [SchemaName.Outline, SchemaName.Panel, SchemaName.Layout, SchemaName.Trace];

    /// <summary>The outline of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static ImportedOutline Read(string path) => Read(InputText.OfFile(path));

    /// <summary>The outline of a text; the ending of its name says what it holds.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static ImportedOutline Read(InputText text)
    {
        switch (text.Ending)
        {
            case ".svg":
                return SvgOutline.Read(text);
            case ".dxf":
                return DxfOutline.Read(text);
            case ".csv":
                List<Point2> points = CsvOutline.ReadPoints(text);
                ImportedOutline outline =
                    Shaped(text.Name, null, () => ImportedOutline.OfPoints(Path.GetFileNameWithoutExtension(text.Name), points));
                return outline with { Notes = [.. CsvOutline.Doubts(outline.Raw)] };
            case ".png" or ".jpg" or ".jpeg":
                return ScanReader.Read(text);
            default:
                return Read(text.Name, JsonInput.ReadObject(text));
        }
    }

    /// <summary>The outline of a JSON object already read from a file.</summary>
    internal static ImportedOutline Read(string path, JsonElement root) => JsonInput.SchemaOf(root, path, Allowed) switch
    {
        SchemaName.Outline => OfOutline(path, root),
        SchemaName.Panel => PanelReader.Read(path, root),
        SchemaName.Trace => TraceReader.Read(path, root),
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
        JsonFields top = JsonFields.Top(path, root, OutlineDocument.Document);
        string name = top.Text(OutlineDocument.Name);
        if (top.Has(OutlineDocument.Points) == top.Has(OutlineDocument.Arcs))
        {
            throw new InputException(path, null, "needs either 'points' or 'arcs', one of them");
        }

        if (top.Has(OutlineDocument.Points))
        {
            List<Point2> points = JsonShapes.Points(top, OutlineDocument.Points, path);
            return Shaped(path, OutlineDocument.Points.Name, () => ImportedOutline.OfPoints(name, points));
        }

        List<ArcVertex> arcs = JsonShapes.Arcs(top, OutlineDocument.Arcs, path);
        return Shaped(path, OutlineDocument.Arcs.Name, () => ImportedOutline.OfArcs(name, arcs));
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
