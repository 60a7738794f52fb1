using System.Text.Json;
using FeltNest.Ball.Ranges;
using FeltNest.Files.Json;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using FeltNest.Layout;
using FeltNest.Layout.Limits;

namespace FeltNest.Files.Layouts;

/// <summary>Reads a layout (schema feltnest/layout/1). <c>yield</c> and <c>search</c> may be left out; everything the geometry needs may
/// not.</summary>
public static class LayoutReader
{
    private static readonly FieldRange Width = new("roll.widthMm", 0.1, 100_000, "mm", "sound lengths run from 0.1 mm to 100 m");
    private static readonly FieldRange Edge = new("roll.edgeMm", 0, 100_000, "mm", "sound lengths run to 100 m");
    private static readonly FieldRange UpperEdge = new("roll.upperEdgeMm", 0, 100_000, "mm", "sound lengths run to 100 m");
    private static readonly FieldRange Gap = new("gapMm", 0, 100_000, "mm", "sound lengths run to 100 m");

    // A panel may be written anywhere along the roll; further than ten kilometres on there is no roll, and its digits no longer tell where
    // it lies.
    internal const double FarthestAlongMm = 10_000_000;

    /// <summary>The layout of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static LayoutInput Read(string path) => Read(path, JsonInput.ReadObject(path));

    /// <summary>The layout of a JSON object already read from a file.</summary>
    internal static LayoutInput Read(string path, JsonElement root)
    {
        JsonInput.SchemaOf(root, path, SchemaName.Layout);
        JsonFields top =
            JsonFields.Top(path, root, "schema", "panels", "roll", "gapMm", "rules", "repeat", "bands", "yield", "search", "laid");
        JsonFields roll = top.Object("roll", "widthMm", "edgeMm", "upperEdgeMm", "usableWidthMm");
        List<StatedFigure> stated = [new("roll.usableWidthMm", roll.Number("usableWidthMm"))];
        LayoutPart[] parts = [.. top.Objects(
            "panels", "name", "ball", "areaMm2", "perimeterMm", "massPerAreaGsm", "warpAngleDeg", "outline", "arcs")
            .Select(item => Part(path, item, stated))];
        if (parts.Length == 0)
        {
            throw top.Fault("panels", "is empty: at least one panel is wanted");
        }

        try
        {
            double width = Width.Checked(roll.Number("widthMm"));
            double edge = Edge.Checked(roll.Number("edgeMm"));
            EdgeTrims trims = new(edge, UpperEdge.Checked(roll.OptionalNumber("upperEdgeMm") ?? edge));
            LayoutBand[] bands = Bands(top, parts.Length, trims, width);
            LayoutRules kept = RulesFields.Read(top, bands.Length);
            StatedYield.Collect(top, stated);
            return new LayoutInput(
                new RollLayout(parts, width, trims, Gap.Checked(top.Number("gapMm")), kept, bands, SearchFields.Read(top)), stated);
        }
        catch (InputException error)
        {
            throw error.File is null ? error.InFile(path) : error;
        }
    }

    private static LayoutPart Part(string path, JsonFields item, List<StatedFigure> stated)
    {
        string name = item.Text("name");
        string field = item.PathOf("outline");
        List<Point2> points = JsonShapes.Points(item, "outline", path);
        Outline outline = OutlineReader.Shaped(path, field, () => Outline.From(points));
        ArcOutline? curve = null;
        if (item.Has("arcs") && item.Array("arcs").GetArrayLength() > 0)
        {
            List<ArcVertex> arcs = JsonShapes.Arcs(item, "arcs", path);
            // Straight pieces all round only repeat the polygon.
            if (arcs.Exists(v => v.Turn != 0))
            {
                curve = OutlineReader.Shaped(path, item.PathOf("arcs"), () => ArcOutline.From(arcs));
            }
        }

        stated.Add(new(item.PathOf("areaMm2"), item.Number("areaMm2")));
        stated.Add(new(item.PathOf("perimeterMm"), item.Number("perimeterMm")));
        return new LayoutPart(
            name, item.Has("ball") ? item.Text("ball") : null, outline, curve, item.OptionalNumber("massPerAreaGsm"),
            item.NumberOr("warpAngleDeg", "any"));
    }

    private static LayoutBand[] Bands(JsonFields top, int parts, EdgeTrims trims, double width)
    {
        if (top.Has("repeat") == top.Has("bands"))
        {
            throw top.Fault("repeat", "give either 'repeat' or 'bands', one of them");
        }

        if (top.Has("repeat"))
        {
            return [new LayoutBand(trims.LowerMm, width - trims.UpperMm, Repeat(top, parts))];
        }

        LayoutBand[] bands = [.. top.Objects("bands", "yFromMm", "yToMm", "repeat")
            .Select(band => new LayoutBand(band.Number("yFromMm"), band.Number("yToMm"), Repeat(band, parts)))];
        return bands.Length > 0 ? bands : throw top.Fault("bands", "is empty: at least one band is wanted");
    }

    private static LayoutRepeat Repeat(JsonFields holder, int parts)
    {
        JsonFields repeat = holder.Object("repeat", "lengthMm", "panels", "strike");
        double length = new FieldRange(repeat.PathOf("lengthMm"), 0.1, 100_000, "mm", "sound lengths run from 0.1 mm to 100 m")
            .Checked(repeat.Number("lengthMm"));
        PlacedPanel[] placed = [.. repeat.Objects("panels", "panel", "xMm", "yMm", "angleDeg").Select(item =>
        {
            int part = item.Whole("panel");
            return part >= 0 && part < parts
                ? new PlacedPanel(
                    part, item.Within("xMm", -FarthestAlongMm, FarthestAlongMm),
                    item.Within("yMm", -JsonShapes.FarthestMm, JsonShapes.FarthestMm), item.Within("angleDeg", -360, 360))
                : throw item.Fault("panel", $"{part} is outside 0 to {parts - 1}: the places in the list of panels");
        })];
        return placed.Length > 0
            ? new LayoutRepeat(length, placed) { Strike = Strike(repeat) }
            : throw repeat.Fault("panels", "is empty: a repeat holds at least one panel");
    }

    private static StrikeBlock? Strike(JsonFields repeat)
    {
        if (!repeat.Has("strike"))
        {
            return null;
        }

        JsonFields strike = repeat.Object("strike", "panels", "places", "lengthMm", "widthMm");
        int panels = strike.Whole("panels");
        Point2[] places = [.. strike.Objects("places", "xMm", "yMm").Select(at => new Point2(at.Number("xMm"), at.Number("yMm")))];
        return panels >= 1 && places.Length >= 1
            ? new StrikeBlock(panels, places, strike.Number("lengthMm"), strike.Number("widthMm"))
            : throw strike.Fault("panels", "a die has at least one panel and is struck at least once");
    }
}
