using System.Text.Json;
using FeltNest.Die.Check;
using FeltNest.Die.Order;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Files.Outlines;
using FeltNest.Geometry;
using FeltNest.Layout;

namespace FeltNest.Files.Dies;

/// <summary>Reads a gang die (schema feltnest/die/1) for checking, planning and first articles.</summary>
public static class DieReader
{
    // Shorter than any panel, mm.
    private const double LeastFeedMm = 0.1;

    // Panels of one feed, by cavities times places: ten times what a layout of thousands of rows has in a repeat.
    private const int MostStruck = 20_000;

    /// <summary>The die of a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    public static DieInput Read(string path) => Read(path, JsonInput.ReadObject(path));

    /// <summary>Whether a file says that it is a die.</summary>
    public static bool IsDie(string path) => Path.GetExtension(path).Equals(".json", StringComparison.OrdinalIgnoreCase)
        && JsonInput.ReadObject(path).TryGetProperty("schema", out JsonElement schema)
        && schema.ValueKind == JsonValueKind.String
        && schema.GetString() == SchemaName.Die;

    /// <summary>The die of a JSON object already read from a file.</summary>
    internal static DieInput Read(string path, JsonElement root)
    {
        JsonInput.SchemaOf(root, path, SchemaName.Die);
        JsonFields top = JsonFields.Top(
            path, root, "schema", "name", "revision", "replaces", "napToward", "cavities", "feedMm", "ruleLengthMm", "edgeLengthMm",
            "forceKn", "forceBasis", "pressSharePercent", "commonCuts", "leastRadiusMm", "leastGapMm", "arcs", "edges",
            "strike", "joint", "board", "rule", "force", "press", "wear", "massKg", "panelProfileMm", "notes", "layout");
        JsonElement inner = top.Required("layout");
        LayoutInput layout = inner.ValueKind == JsonValueKind.Object
            ? LayoutReader.Read(
                $"{path}: layout",
                inner) : throw top.Fault("layout", $"is {JsonFields.KindName(inner)} where an object {{ ... }} is wanted");
        int parts = layout.Layout.Parts.Count;
        int bands = layout.Layout.Bands.Count;
        PlacedPanel[] cavities = [.. top
            .ObjectsUpTo(MostStruck, "cavities", "number", "panel", "xMm", "yMm", "angleDeg")
            .Select(item => new PlacedPanel(
            Part(item, "panel", parts), Along(item, "xMm"), Across(item, "yMm"), item.Within("angleDeg", -360, 360)))];
        Dictionary<int, ArcOutline> edges = [];
        foreach (JsonFields item in top.Objects(
            "edges", "panel", "letter", "deviationMm", "offLayoutMm", "corners", "edgeLengthMm", "ruleLengthMm", "arcs", "ruleJoint",
            "bridges"))
        {
            List<ArcVertex> arcs = JsonShapes.Arcs(item, "arcs", path);
            edges[Part(item, "panel", parts)] = OutlineReader.Shaped(path, item.PathOf("arcs"), () => ArcOutline.From(arcs));
        }

        if (cavities.Length == 0 || cavities.Any(c => !edges.ContainsKey(c.Part)))
        {
            throw top.Fault(
                cavities.Length == 0 ? "cavities" : "edges",
                cavities.Length == 0 ? "is empty: a die has at least one cavity" : "lacks the edge of a part that a cavity cuts");
        }

        Dictionary<(int, int), double> common = [];
        foreach (JsonFields item in top.Objects("commonCuts", "first", "second", "lengthMm"))
        {
            common[(Cavity(item, "first", cavities.Length), Cavity(item, "second", cavities.Length))] = item.Number("lengthMm");
        }

        JsonFields strike = top.Object("strike", "band", "repeats", "places", "originXMm", "originYMm", "edgeLengthMm", "edgeWidthMm");
        JsonFields joint = top.Object(
            "joint", "nominalMm", "worstMm", "acrossMm", "acrossWorstMm", "bandMm", "bandWorstMm", "feedToleranceMm", "guideToleranceMm",
            "edgeProfileMm");
        JsonFields board = top.Object(
            "board", "lengthMm", "widthMm", "landMm", "thicknessMm", "loadXMm", "loadYMm", "onBedXMm", "onBedYMm", "loadOffBedXMm",
            "loadOffBedYMm");
        JsonFields force =
            top.Object("force", "nPerMmPerPly", "plies", "closeAddedMm", "lengthMm", "ejectionPercent", "reservePercent", "bareKn");
        Point2[] places =
        [
            .. strike.ObjectsUpTo(MostStruck, "places", "xMm", "yMm").Select(p => new Point2(Along(p, "xMm"), Across(p, "yMm"))),
        ];
        int band = strike.Whole("band");
        int repeats = strike.Whole("repeats");
        double feed = top.Within("feedMm", LeastFeedMm, LayoutReader.FarthestAlongMm);
        if (band < 1 || band > bands || places.Length == 0 || repeats < 1)
        {
            throw strike.Fault(
                "band", $"band {band} of {bands}, {repeats} repeats, {places.Length} places: each must be there and above 0");
        }

        if ((long)cavities.Length * places.Length > MostStruck)
        {
            throw strike.Fault(
                "places",
                $"{places.Length} places of {cavities.Length} cavities cut more than {MostStruck} panels to a feed: that many are allowed");
        }

        double Gap(JsonFields fields, string name) => fields.OptionalNumber(name) ?? double.PositiveInfinity;
        double forceKn = (force.Number("lengthMm") + force.Number("closeAddedMm")) * force.Whole("plies") * force.Number(
            "nPerMmPerPly") / 1000
            * (1 + (force.Number("ejectionPercent") / 100)) * (1 + (force.Number("reservePercent") / 100));
        StatedDie die = new(
            top.Text("name"), top.Has("revision") ? top.Text("revision") : null, band - 1, cavities, places,
            new Point2(Along(strike, "originXMm"), Across(strike, "originYMm")), feed, edges,
            board.Number("lengthMm"), board.Number("widthMm"), board.Number("landMm"), top.Number("ruleLengthMm"),
            Gap(top, "leastRadiusMm"), Gap(top, "leastGapMm"), Gap(joint, "nominalMm"),
            Gap(joint, "worstMm"), joint.Number("feedToleranceMm"), joint.Number("guideToleranceMm"), joint.Number("edgeProfileMm"),
            top.Number("forceKn"), forceKn, force.Number("lengthMm"), common)
        {
            EdgeLengthMm = top.OptionalNumber("edgeLengthMm"),
            MiddleInWasteMm = MiddleInWaste(top.Object("rule", "thicknessMm", "heightMm", "bevel")),
            AcrossMm = Gap(joint, "acrossMm"),
            AcrossWorstMm = Gap(joint, "acrossWorstMm"),
            BandMm = Gap(joint, "bandMm"),
            BandWorstMm = Gap(joint, "bandWorstMm"),
        };
        return new DieInput(
            layout, die, repeats, Wear(top), top.Has("replaces") ? top.Text("replaces") : null, top.Number("panelProfileMm"));
    }

    // Of a bevel that the file does not know the body stands evenly on both sides.
    private static double MiddleInWaste(JsonFields rule) => rule.Number("thicknessMm") / 2
        * (rule.Text("bevel") == EnumWord.Of(RuleBevel.SideWaste) ? 1 : rule.Text("bevel") == EnumWord.Of(RuleBevel.SidePanel) ? -1 : 0);

    private static double Along(JsonFields item, string name) =>
        item.Within(name, -LayoutReader.FarthestAlongMm, LayoutReader.FarthestAlongMm);

    private static double Across(JsonFields item, string name) => item.Within(name, -JsonShapes.FarthestMm, JsonShapes.FarthestMm);

    private static DieWear? Wear(JsonFields top)
    {
        if (!top.Has("wear"))
        {
            return null;
        }

        JsonFields wear = top.Object("wear", "price", "currency", "lifeStrikes", "reRules", "reRulePrice");
        return new DieWear(
            wear.Amount("price"), wear.Text("currency"), wear.WholeWithin("lifeStrikes", 1, JsonFields.MostCount),
            wear.WholeWithin("reRules", 0, 1000), wear.Amount("reRulePrice"));
    }

    private static int Cavity(JsonFields item, string name, int cavities) =>
        item.Whole(name) is var number && number >= 1 && number <= cavities
        ? number - 1 : throw item.Fault(name, $"{number} is outside 1 to {cavities}: the numbers of the cavities");

    private static int Part(JsonFields item, string name, int parts) => item.Whole(name) is var part && part >= 0 && part < parts
        ? part : throw item.Fault(name, $"{part} is outside 0 to {parts - 1}: the places in the list of panels");
}
