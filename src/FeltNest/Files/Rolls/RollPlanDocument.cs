using FeltNest.Files.Fields;
using FeltNest.Files.Layouts;
using FeltNest.Rolls.Plan;

namespace FeltNest.Files.Rolls;

/// <summary>Strikes planned for one roll: every field of <c>feltnest/roll-plan/1</c>.</summary>
internal static class RollPlanDocument
{
    private const double MostLengthMm = 1000 * ShopRanges.MostRollM;

    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new()
    {
        Schema = SchemaName.RollPlan,
        Title = "Strikes planned for one roll",
        Fields = Fields,
    };

    public static readonly WholeField GoodPanels = Fields.Add(new WholeField("goodPanels", 0, ShopRanges.MostCount, "of all strikes"));
    public static readonly WholeField BackToBackGoodPanels = Fields.Add(
        new WholeField("backToBackGoodPanels", 0, ShopRanges.MostCount, "good panels of strikes one feed apart from `fromMm`, none moved"));
    public static readonly WholeField Balls = Fields.Add(new WholeField("balls", "pairs of one pairing group among the good panels"));
    public static readonly ObjectsField Parts = Fields.Add(
        new ObjectsField("parts", PartFields.Set, "what the strikes give of each kind of panel") { Otherwise = "not stated" });
    public static readonly NumberField ProvedOnGridMm = Fields.Add(
        new NumberField(
            "provedOnGridMm",
            "step along the roll: the feed in whole steps of about 1 mm; no choice of strikes on it has more good panels"));
    public static readonly NumberField ShiftStepMm = Fields.Add(new NumberField("shiftStepMm", "step across; 0 without side shift"));
    public static readonly NumberField GuidePlayMm =
        Fields.Add(new NumberField("guidePlayMm", 0, StrikePlanner.MostPlayMm, "as asked, to either side"));
    public static readonly NumberField FromMm = Fields.Add(new NumberField("fromMm", 0, MostLengthMm, "where the usable roll starts"));
    public static readonly FlagField PastEnd = Fields.Add(
        new FlagField("pastEnd", "true where the last strike may reach past the end of the roll") { Default = false });
    public static readonly NumberField ClearAdvanceMm = Fields.Add(
        new NumberField("clearAdvanceMm", "advance from which a strike is clear of the one before whatever their shifts"));
    public static readonly NumberField LeastOffLineMm = Fields.Add(
        new NumberField(
            "leastOffLineMm", "least advance off the line that was thought of: the feed, or more where three strikes in a row could meet"));
    public static readonly ObjectField Better = Fields.Add(
        new ObjectField(
            "better", BetterFields.Set,
            "what a layout made for the least width to be cut would give, after a short search; null where that is no more, where the roll "
                + "fits its layout, and where the layout has several parts or bands")
        {
            OrNull = true,
            Optional = true,
        });
    public static readonly ObjectField LostPanels = Fields.Add(
        new ObjectField("lostPanels", LostPanelsFields.Set, "panels of the strikes that are lost, each under the first cause that holds"));
    public static readonly ObjectField FourPoint = Fields.Add(
        new ObjectField("fourPoint", FourPointFields.Set, "score of the roll after ASTM D5430; holes are counted as other faults"));
    public static readonly ObjectsField Warp = Fields.Add(new ObjectsField("warp", WarpFields.Set, "one for each kind of panel"));
    public static readonly ObjectsField Strikes =
        Fields.Add(new ObjectsField("strikes", StrikeFields.Set, "in order along the roll") { Most = StrikeGrid.MostStrikes });
    public static readonly ObjectField Pattern = Fields.Add(new ObjectField("pattern", PatternFields.Set, "what one strike cuts"));
    public static readonly DocumentField Roll = Fields.Add(
        new DocumentField("roll", RollDocument.Document, "the roll, as in the roll's file"));
    public static readonly DocumentField Layout = Fields.Add(
        new DocumentField("layout", LayoutDocument.Document, "the layout, as in `layout.json`"));

    /// <summary>Fields of <c>parts[]</c>.</summary>
    internal static class PartFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Panel = Set.Add(new WholeField("panel", "place in the layout's list of panels"));
        public static readonly TextField Name = Set.Add(new TextField("name", "its ball, or its own name"));
        public static readonly WholeField GoodPanels = Set.Add(new WholeField("goodPanels", 0, ShopRanges.MostCount, "good panels"));
        public static readonly WholeField Balls = Set.Add(
            new WholeField("balls", 0, ShopRanges.MostCount, "pairs of one pairing group among them"));
    }

    /// <summary>Fields of <c>better</c>.</summary>
    internal static class BetterFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm", "width that layout is made for"));
        public static readonly WholeField GoodPanels = Set.Add(new WholeField("goodPanels", "good panels of strikes planned with it"));
        public static readonly NumberField GainPercent = Set.Add(
            new NumberField("gainPercent", "how many more that are, of the good panels planned"));
    }

    /// <summary>Fields of <c>lostPanels</c>.</summary>
    internal static class LostPanelsFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField RollEnd = Set.Add(new WholeField("rollEnd", 0, ShopRanges.MostCount, "past the end"));
        public static readonly WholeField Joint = Set.Add(new WholeField("joint", 0, ShopRanges.MostCount, "a splice runs through"));
        public static readonly WholeField Width = Set.Add(
            new WholeField("width", 0, ShopRanges.MostCount, "outside the usable width or on a forbidden stripe"));
        public static readonly WholeField Fault = Set.Add(new WholeField("fault", 0, ShopRanges.MostCount, "touch a fault"));
    }

    /// <summary>Fields of <c>fourPoint</c>.</summary>
    internal static class FourPointFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Points = Set.Add(new WholeField("points"));
        public static readonly NumberField Per100SquareYards = Set.Add(
            new NumberField("per100SquareYards", "points per 100 yd2 of cuttable width"));
        public static readonly NumberField Per100SquareMetres = Set.Add(
            new NumberField("per100SquareMetres", "points per 100 m2 of cuttable width"));
    }

    /// <summary>Fields of <c>warp[]</c>.</summary>
    internal static class WarpFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Panel = Set.Add(new WholeField("panel", "place in the layout's list of panels"));
        public static readonly NumberField LaidAngleDeg = Set.Add(
            new NumberField("laidAngleDeg", "from the roll's length to +u, 0 to 180"));
        public static readonly NumberField WarpAngleDeg = Set.Add(new NumberField("warpAngleDeg", "from the skewed warp to +u, 0 to 180"));
        public static readonly NumberField OffDesignDeg = Set.Add(
            new NumberField("offDesignDeg", "off the design angle; null where any angle serves") { OrNull = true });
    }

    /// <summary>Fields of <c>strikes[]</c>.</summary>
    internal static class StrikeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField XMm =
            Set.Add(new NumberField("xMm", -MostLengthMm, MostLengthMm, "where the first cut edge stands"));
        public static readonly NumberField ShiftYMm =
            Set.Add(new NumberField("shiftYMm", -StrikePlanner.MostPlayMm, StrikePlanner.MostPlayMm, "move across"));
        public static readonly WholeField GoodPanels = Set.Add(new WholeField("goodPanels", 0, ShopRanges.MostCount));
        public static readonly WholeField LostPanels = Set.Add(new WholeField("lostPanels", 0, ShopRanges.MostCount));
    }

    /// <summary>Fields of <c>pattern</c>.</summary>
    internal static class PatternFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Repeats = Set.Add(new WholeField("repeats", "repeats in one strike"));
        public static readonly NumberField FeedMm = Set.Add(new NumberField("feedMm", ShopRanges.Length));
        public static readonly NumberField LengthMm = Set.Add(new NumberField("lengthMm", "extent of the cut edges along the roll"));
        public static readonly ObjectsField Panels =
            Set.Add(new ObjectsField("panels", PlacedFields.Set, "panels in the strike's frame") { Most = 10_000 });
    }
}
