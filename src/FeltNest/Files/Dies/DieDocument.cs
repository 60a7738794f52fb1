using FeltNest.Die.Order;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Files.Layouts;
using FeltNest.Files.Rolls;
using FeltNest.Layout.Limits;
using static FeltNest.Files.Dies.DieRuleFields;

namespace FeltNest.Files.Dies;

/// <summary>Gang die: every field of <c>feltnest/die/1</c>.</summary>
internal static class DieDocument
{
    /// <summary>Panels of one feed, by cavities times places: ten times what a layout of thousands of rows has in a repeat.</summary>
    public const int MostStruck = 20_000;

    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Die, Title = "Gang die", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name"));
    public static readonly TextField Revision = Fields.Add(new TextField("revision") { OrNull = true });
    public static readonly TextField Replaces = Fields.Add(new TextField("replaces") { OrNull = true });
    public static readonly WordField NapToward = Fields.Add(
        new WordField("napToward", NapWord.Words, "which way the nap lies under the die, as the order states it; null where it does not")
        {
            OrNull = true,
        });
    public static readonly ObjectsField Cavities = Fields.Add(
        new ObjectsField(
            "cavities", CavityFields.Set,
            "in the die's frame: origin at the board's lower left corner, x along the feed, y across, seen from the nap side")
        {
            Most = MostStruck,
        });
    public static readonly NumberField FeedMm = Fields.Add(
        new NumberField(
            "feedMm", LayoutLimits.LeastLengthMm, JsonShapes.FarthestAlongMm,
            "advance after the die was struck at every place: whole repeats"));
    public static readonly NumberField RuleLengthMm = Fields.Add(
        new NumberField(
            "ruleLengthMm",
            "of the middle line of the rule's body, to which it is cut and bent; rule that two cavities share counts once; of the "
                + "cutting edge in a file without edgeLengthMm"));
    public static readonly NumberField EdgeLengthMm = Fields.Add(
        new NumberField("edgeLengthMm", "of the cutting edge, on which the force acts; what two cavities share counts once")
        {
            Optional = true,
        });
    public static readonly NumberField ForceKn = Fields.Add(
        new NumberField("forceKn", "of one strike with close rules, ejection and reserve"));
    public static readonly EnumField<ForceBasis> ForceBasis = Fields.Add(new EnumField<ForceBasis>("forceBasis"));
    public static readonly NumberField PressSharePercent = Fields.Add(
        new NumberField("pressSharePercent", "of the press's rating; null without a press or a measured force") { OrNull = true });
    public static readonly ObjectsField CommonCuts = Fields.Add(
        new ObjectsField(
            "commonCuts", CommonCutFields.Set,
            "pairs of cavities that share a cut: its rule is drawn and counted once; empty without common cuts"));
    public static readonly NumberField LeastRadiusMm = Fields.Add(
        new NumberField("leastRadiusMm", "of any edge; null where all are straight") { OrNull = true });
    public static readonly NumberField LeastGapMm = Fields.Add(
        new NumberField("leastGapMm", "between two cavities; null for one cavity") { OrNull = true });
    public static readonly ObjectsField Arcs = Fields.Add(
        new ObjectsField("arcs", ArcFields.Set, "edge of the first part that is cut, in its own frame"));
    public static readonly ObjectsField Edges = Fields.Add(
        new ObjectsField("edges", EdgeFields.Set, "edge of every part that the die cuts"));
    public static readonly ObjectsField Strips = Fields.Add(
        new ObjectsField("strips", StripFields.Set, "pieces of rule as they are cut to length, notched and bent") { Optional = true });
    public static readonly ObjectField Stock = Fields.Add(
        new ObjectField(
            "stock", StockFields.Set, "how the pieces of all dies ordered are cut from stock; null where its length is not stated")
        {
            Optional = true,
            OrNull = true,
        });
    public static readonly ObjectField Strike = Fields.Add(new ObjectField("strike", StrikeFields.Set, "how the die is struck"));
    public static readonly ObjectField Joint = Fields.Add(new ObjectField("joint", JointFields.Set, "gap between the cuts of two strikes"));
    public static readonly ObjectField Board = Fields.Add(new ObjectField("board", BoardFields.Set));
    public static readonly ObjectField Rule = Fields.Add(new ObjectField("rule", RuleFields.Set));
    public static readonly ObjectField Force = Fields.Add(new ObjectField("force", ForceFields.Set));
    public static readonly ObjectField Press = Fields.Add(
        new ObjectField("press", PressFields.Set, "as given; null without one") { OrNull = true });
    public static readonly ObjectField Wear = Fields.Add(
        new ObjectField("wear", WearFields.Set, "price and life from the order") { OrNull = true });
    public static readonly NumberField MassKg = Fields.Add(
        new NumberField("massKg", "board and rule; ejection and fittings are not in it"));
    public static readonly NumberField PanelProfileMm = Fields.Add(new NumberField("panelProfileMm", "profile tolerance of a cut panel"));
    public static readonly NumberField PositionMm = Fields.Add(
        new NumberField("positionMm", "position tolerance: diameter of the circle that the middle of a cavity lies in") { Default = 0 });
    public static readonly TextsField Notes = Fields.Add(new TextsField("notes", "what to watch"));
    public static readonly DocumentField Layout = Fields.Add(
        new DocumentField("layout", LayoutDocument.Document, "the layout, as in `layout.json`"));

    /// <summary>Fields of <c>cavities[]</c>.</summary>
    internal static class CavityFields
    {
        internal static readonly FieldSet Set = new(PlacedFields.Set);

        public static readonly WholeField Number = Set.Add(new WholeField("number", "from 1"));
    }

    /// <summary>Fields of <c>commonCuts[]</c>.</summary>
    internal static class CommonCutFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField First = Set.Add(new WholeField("first", "number of the earlier cavity, whose edge is drawn"));
        public static readonly WholeField Second = Set.Add(new WholeField("second", "number of the other"));
        public static readonly NumberField LengthMm = Set.Add(new NumberField("lengthMm", "length that they share"));
    }

    /// <summary>Fields of <c>edges[]</c>.</summary>
    internal static class EdgeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Panel = Set.Add(new WholeField("panel", "place in the layout's list of panels"));
        public static readonly TextField Letter = Set.Add(
            new TextField("letter", "letter of the part in names of files and sheets; null where the die cuts a single one")
            {
                OrNull = true,
            });
        public static readonly NumberField DeviationMm = Set.Add(
            new NumberField("deviationMm", "most that the edge can lie off the true outline"));
        public static readonly NumberField OffLayoutMm = Set.Add(new NumberField("offLayoutMm", "measured against the layout's outline"));
        public static readonly WholeField Corners = Set.Add(new WholeField("corners", "corners where the rule is mitred"));
        public static readonly NumberField EdgeLengthMm = Set.Add(
            new NumberField("edgeLengthMm", "cutting edge of one cavity") { Optional = true });
        public static readonly NumberField RuleLengthMm = Set.Add(
            new NumberField("ruleLengthMm", "rule of one cavity by the middle line of its body") { Optional = true });
        public static readonly ObjectsField Arcs = Set.Add(new ObjectsField("arcs", ArcFields.Set, "as above"));
        public static readonly ObjectField RuleJoint = Set.Add(
            new ObjectField("ruleJoint", RuleJointFields.Set, "where the rule closes on itself, in the part's frame"));
        public static readonly ObjectsField Narrow = Set.Add(
            new ObjectsField(
                "narrow", NarrowFields.Set, "where the rule of the cavity stands nearer to itself than bodies and ejection have room")
            {
                Optional = true,
            });
        public static readonly RowsField Bridges = Set.Add(new RowsField("bridges", ["x", "y"], "middles of the bridges [x, y], mm"));
    }

    /// <summary>Fields of <c>edges[].ruleJoint</c>.</summary>
    internal static class RuleJointFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField X = Set.Add(new NumberField("x") { Unit = "mm" });
        public static readonly NumberField Y = Set.Add(new NumberField("y") { Unit = "mm" });
        public static readonly NumberField RadiusMm = Set.Add(
            new NumberField("radiusMm", "radius of the edge there; null where straight") { OrNull = true });
    }

    /// <summary>Fields of <c>strike</c>.</summary>
    internal static class StrikeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Band = Set.Add(new WholeField("band", "band of the layout, from 1"));
        public static readonly WholeField Repeats = Set.Add(new WholeField("repeats", "repeats of the layout to one feed"));
        public static readonly ObjectsField Places = Set.Add(
            new ObjectsField("places", StruckFields.Set, "moves of the die within one feed, the first 0, 0") { Most = MostStruck });
        public static readonly NumberField OriginXMm = Set.Add(
            new NumberField(
                "originXMm", -JsonShapes.FarthestAlongMm, JsonShapes.FarthestAlongMm,
                "the die's origin over the layout at the first strike"));
        public static readonly NumberField OriginYMm =
            Set.Add(new NumberField("originYMm", -JsonShapes.FarthestMm, JsonShapes.FarthestMm, "from the lower selvedge"));
        public static readonly NumberField EdgeLengthMm = Set.Add(
            new NumberField("edgeLengthMm", "extent of the cut edges along the roll"));
        public static readonly NumberField EdgeWidthMm = Set.Add(new NumberField("edgeWidthMm", "across"));
    }

    /// <summary>Fields of <c>joint</c>.</summary>
    internal static class JointFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField NominalMm = Set.Add(
            new NumberField("nominalMm", "strikes exactly in place; null where they stand clear") { OrNull = true });
        public static readonly NumberField WorstMm = Set.Add(
            new NumberField("worstMm", "feed and guide at their worst and both edges and places at the rim of their tolerance")
            {
                OrNull = true,
            });
        public static readonly NumberField AcrossMm = Set.Add(
            new NumberField("acrossMm", "between strikes side by side, exactly in place; null where one strike spans the band")
            {
                OrNull = true,
            });
        public static readonly NumberField AcrossWorstMm = Set.Add(
            new NumberField("acrossWorstMm", "the same with feed, guide and edges at their worst") { OrNull = true });
        public static readonly NumberField BandMm = Set.Add(
            new NumberField("bandMm", "room across to the cuts of the bands beside; null for one band") { OrNull = true });
        public static readonly NumberField BandWorstMm = Set.Add(
            new NumberField("bandWorstMm", "the same with both guides and edges at their worst") { OrNull = true });
        public static readonly NumberField FeedToleranceMm = Set.Add(new NumberField("feedToleranceMm"));
        public static readonly NumberField GuideToleranceMm = Set.Add(
            new NumberField("guideToleranceMm", "two strikes may err by twice that"));
        public static readonly NumberField EdgeProfileMm = Set.Add(new NumberField("edgeProfileMm"));
    }

    /// <summary>Fields of <c>board</c>.</summary>
    internal static class BoardFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField LengthMm = Set.Add(new NumberField("lengthMm", "along the roll"));
        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm", "across"));
        public static readonly NumberField LandMm = Set.Add(new NumberField("landMm", "outside the outermost edge"));
        public static readonly NumberField ThicknessMm = Set.Add(new NumberField("thicknessMm"));
        public static readonly ObjectField Laser = Set.Add(
            new ObjectField("laser", CutBoardFields.Set, "board-cut.dxf; null where the order does not say how it is cut")
            {
                Optional = true,
                OrNull = true,
            });
        public static readonly NumberField LoadXMm = Set.Add(new NumberField("loadXMm", "centre of the length of cutting edge"));
        public static readonly NumberField LoadYMm = Set.Add(new NumberField("loadYMm"));
        public static readonly NumberField OnBedXMm = Set.Add(new NumberField("onBedXMm", "the board's middle from the bed's"));
        public static readonly NumberField OnBedYMm = Set.Add(new NumberField("onBedYMm"));
        public static readonly NumberField LoadOffBedXMm = Set.Add(new NumberField("loadOffBedXMm", "the load from the bed's middle"));
        public static readonly NumberField LoadOffBedYMm = Set.Add(new NumberField("loadOffBedYMm"));
    }

    /// <summary>Fields of <c>rule</c>.</summary>
    internal static class RuleFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField ThicknessMm = Set.Add(new NumberField("thicknessMm"));
        public static readonly NumberField HeightMm = Set.Add(new NumberField("heightMm"));
        public static readonly NumberField EjectionRoomMm = Set.Add(
            new NumberField("ejectionRoomMm", "width that ejection needs between two rules") { Optional = true });
        public static readonly TextField Bevel = Set.Add(new TextField("bevel", "as in the order"));
    }

    /// <summary>Fields of <c>force</c>.</summary>
    internal static class ForceFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField NPerMmPerPly = Set.Add(new NumberField("nPerMmPerPly") { Unit = "N/mm" });
        public static readonly WholeField Plies = Set.Add(new WholeField("plies"));
        public static readonly NumberField CloseAddedMm = Set.Add(new NumberField("closeAddedMm", "length added for close rules"));
        public static readonly NumberField LengthMm = Set.Add(new NumberField("lengthMm", "length of cutting edge it is worked out from"));
        public static readonly NumberField EjectionPercent = Set.Add(new NumberField("ejectionPercent"));
        public static readonly NumberField ReservePercent = Set.Add(new NumberField("reservePercent"));
        public static readonly NumberField CloseMm = Set.Add(
            new NumberField("closeMm", "rules no further apart than this are close") { Optional = true });
        public static readonly NumberField BareKn = Set.Add(new NumberField("bareKn", "edge alone"));
    }

    /// <summary>Fields of <c>press</c>.</summary>
    internal static class PressFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Name = Set.Add(new TextField("name"));
        public static readonly NumberField RatedForceKn = Set.Add(new NumberField("ratedForceKn"));
        public static readonly NumberField AllowedSharePercent = Set.Add(new NumberField("allowedSharePercent"));
        public static readonly NumberField BedLengthMm = Set.Add(new NumberField("bedLengthMm"));
        public static readonly NumberField BedWidthMm = Set.Add(new NumberField("bedWidthMm"));
        public static readonly NumberField MarginMm = Set.Add(new NumberField("marginMm"));
    }
}
