using FeltNest.Files.Fields;
using FeltNest.Layout;
using FeltNest.Layout.Limits;

namespace FeltNest.Files.Layouts;

/// <summary>Roll layout: every field of <c>feltnest/layout/1</c>.</summary>
internal static class LayoutDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Layout, Title = "Roll layout", Fields = Fields };

    public static readonly ObjectsField Panels = Fields.Add(new ObjectsField("panels", PanelFields.Set) { Least = 1 });
    public static readonly ObjectField Roll = Fields.Add(new ObjectField("roll", RollFields.Set));
    public static readonly NumberField GapMm =
        Fields.Add(new NumberField("gapMm", ShopRanges.LengthOrNone, "least distance between any two cut edges"));
    public static readonly ObjectField Rules = Fields.Add(new ObjectField("rules", RulesFields.Set));
    public static readonly ObjectField Repeat = Fields.Add(new ObjectField("repeat", RepeatFields.Set) { Optional = true });
    public static readonly ObjectsField Bands = Fields.Add(new ObjectsField("bands", BandFields.Set) { Optional = true, Least = 1 });
    public static readonly ObjectField Yield = Fields.Add(new ObjectField("yield", YieldFields.Set) { Optional = true });
    public static readonly ObjectField Search =
        Fields.Add(new ObjectField("search", LayoutSearchFields.SearchFields.Set) { Optional = true });
    public static readonly ObjectsField Laid = Fields.Add(
        new ObjectsField(
            "laid", LaidFields.Set,
            "strains of the panel at each angle to the warp at which it is laid off its design; absent where there is none")
        {
            Optional = true,
        });

    static LayoutDocument() => Fields.OneOf(Repeat, Bands);

    /// <summary>Fields of <c>panels[]</c>.</summary>
    internal static class PanelFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Name = Set.Add(new TextField("name"));
        public static readonly TextField Ball = Set.Add(new TextField("ball") { Optional = true, OrNull = true });
        public static readonly NumberField AreaMm2 = Set.Add(new NumberField("areaMm2", "from the true curve"));
        public static readonly NumberField PerimeterMm = Set.Add(new NumberField("perimeterMm", "from the true curve"));
        public static readonly NumberField MassPerAreaGsm = Set.Add(
            new NumberField("massPerAreaGsm", "felt") { Optional = true, OrNull = true });
        public static readonly NumberField WarpAngleDeg = Set.Add(
            new NumberField("warpAngleDeg", "design angle from the warp to +u") { OrWord = "any" });
        public static readonly RowsField Outline = Set.Add(
            new RowsField("outline", ["u", "v"], "corners [u, v], mm, one closed outline; the last joins the first")
            {
                Most = Geometry.Outline.MostPoints,
            });
        public static readonly ObjectsField Arcs = Set.Add(
            new ObjectsField("arcs", ArcFields.Set, "vertices of a closed outline of arcs and straight pieces")
            {
                Optional = true,
                Most = Geometry.Outline.MostPoints,
            });
    }

    /// <summary>Fields of <c>roll</c>.</summary>
    internal static class RollFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm", ShopRanges.Length));
        public static readonly NumberField EdgeMm =
            Set.Add(new NumberField("edgeMm", ShopRanges.LengthOrNone, "trim at the lower selvedge"));
        public static readonly NumberField UsableWidthMm = Set.Add(new NumberField("usableWidthMm"));
        public static readonly NumberField UpperEdgeMm = Set.Add(
            new NumberField("upperEdgeMm", ShopRanges.LengthOrNone, "trim at the upper selvedge; the same as edgeMm where left out")
            {
                Optional = true,
            });
    }

    /// <summary>Fields of <c>rules</c>.</summary>
    internal static class RulesFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField WarpAngle =
            Set.Add(new NumberField("warpAngle", "angle of the panels to the warp") { Unit = "degrees", OrWord = "free" });
        public static readonly NumberField WarpToleranceDeg = Set.Add(new NumberField(ShopRanges.WarpTolerance));
        public static readonly EnumField<RowRule> Rows = Set.Add(new EnumField<RowRule>("rows"));
        public static readonly FlagField OneWay = Set.Add(new FlagField("oneWay"));
        public static readonly WholeField Bands = Set.Add(
            new WholeField("bands", 1, LayoutLimits.MostBands, "most bands that may have a repeat of their own") { Optional = true });
        public static readonly ObjectsField Forbidden = Set.Add(
            new ObjectsField("forbidden", ForbiddenFields.Set, "stripes along the roll that no panel may touch") { Optional = true });
        public static readonly ObjectField Die = Set.Add(
            new ObjectField("die", DieFields.Set, "what one die can hold") { Optional = true });
        public static readonly NumberField LeastRepeatMm = Set.Add(
            new NumberField("leastRepeatMm", ShopRanges.LengthOrNone, "least length of a repeat") { Optional = true });
        public static readonly ObjectField Plies = Set.Add(new ObjectField("plies", PlyFields.Set, "plies of felt") { Optional = true });
    }

    /// <summary>Fields of <c>rules.forbidden[]</c>.</summary>
    internal static class ForbiddenFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField YFromMm = Set.Add(
            new NumberField("yFromMm", 0, NumberField.NoMost, "lower side from the lower selvedge"));
        public static readonly NumberField YToMm = Set.Add(new NumberField("yToMm", 0, NumberField.NoMost, "upper side"));
    }

    /// <summary>Fields of <c>rules.die</c>.</summary>
    internal static class DieFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField MostPanels = Set.Add(
            new WholeField("mostPanels", 1, LayoutLimits.MostDiePanels, "most panels one die cuts in a strike, or null")
            {
                Optional = true,
                OrNull = true,
            });
        public static readonly NumberField BedLengthMm = Set.Add(
            new NumberField("bedLengthMm", 0, NumberField.NoMost, "room along the roll, or null") { Optional = true, OrNull = true });
        public static readonly NumberField BedWidthMm = Set.Add(
            new NumberField("bedWidthMm", 0, NumberField.NoMost, "room across the roll, or null") { Optional = true, OrNull = true });
    }

    /// <summary>Fields of <c>rules.plies</c>.</summary>
    internal static class PlyFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Count =
            Set.Add(new WholeField("count", 1, LayoutLimits.MostPlies, "plies of felt one strike cuts"));
        public static readonly FlagField FaceToFace = Set.Add(new FlagField("faceToFace", "every second layer nap side down"));
    }

    /// <summary>Fields of <c>repeat</c>.</summary>
    internal static class RepeatFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField LengthMm = Set.Add(new NumberField(ShopRanges.Length, "along the roll"));
        public static readonly ObjectsField Panels = Set.Add(new ObjectsField("panels", PlacedFields.Set) { Least = 1 });
        public static readonly ObjectField Strike = Set.Add(
            new ObjectField("strike", StrikeFields.Set, "the die, where a limit on dies was asked for") { Optional = true });
    }

    /// <summary>Fields of <c>repeat.strike</c>.</summary>
    internal static class StrikeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Panels = Set.Add(
            new WholeField("panels", 1, NumberField.NoMost, "cavities of the die: the first panels of the list"));
        public static readonly ObjectsField Places = Set.Add(
            new ObjectsField("places", StruckFields.Set, "moves of the die from its first place"));
        public static readonly NumberField LengthMm = Set.Add(
            new NumberField("lengthMm", 0, NumberField.NoMost, "extent of the die along the roll"));
        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm", 0, NumberField.NoMost, "extent across"));
    }

    /// <summary>Fields of <c>bands[]</c>.</summary>
    internal static class BandFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField YFromMm = Set.Add(new NumberField("yFromMm"));
        public static readonly NumberField YToMm = Set.Add(new NumberField("yToMm"));
        public static readonly ObjectField Repeat = Set.Add(new ObjectField("repeat", RepeatFields.Set));
    }

    /// <summary>Fields of <c>yield</c>.</summary>
    internal static class YieldFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField PanelsPerMetre = Set.Add(new NumberField("panelsPerMetre", "panels per running metre"));
        public static readonly NumberField BallsPerMetre = Set.Add(
            new NumberField("ballsPerMetre", "pairs of one pairing group per running metre"));
        public static readonly NumberField UtilisationPercent = Set.Add(new NumberField("utilisationPercent", "of the full roll width"));
        public static readonly NumberField WastePercent = Set.Add(new NumberField("wastePercent", "of the full roll width"));
        public static readonly ObjectField PerThousandBalls = Set.Add(new ObjectField("perThousandBalls", PerThousandBallsFields.Set));
        public static readonly ObjectField Account = Set.Add(new ObjectField("account", AccountFields.Set));
    }

    /// <summary>Fields of <c>yield.perThousandBalls</c>.</summary>
    internal static class PerThousandBallsFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Metres = Set.Add(
            new NumberField("metres", "null where no panel finds a partner") { Optional = true, OrNull = true });
        public static readonly NumberField SquareMetres = Set.Add(new NumberField("squareMetres") { Optional = true, OrNull = true });
        public static readonly NumberField Kilograms = Set.Add(
            new NumberField("kilograms", "null where the mass per area is not known") { Optional = true, OrNull = true });
    }

    /// <summary>Fields of <c>yield.account</c>.</summary>
    internal static class AccountFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField GoodPanelsPercent = Set.Add(new NumberField("goodPanelsPercent"));
        public static readonly NumberField BetweenPanelsPercent = Set.Add(new NumberField("betweenPanelsPercent"));
        public static readonly NumberField UnusedEdgePercent = Set.Add(new NumberField("unusedEdgePercent"));
        public static readonly NumberField EdgeTrimPercent = Set.Add(new NumberField("edgeTrimPercent"));
    }

    /// <summary>Fields of <c>laid[]</c>.</summary>
    internal static class LaidFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField DesignAngleDeg = Set.Add(new NumberField("designAngleDeg"));
        public static readonly NumberField LaidAngleDeg = Set.Add(new NumberField("laidAngleDeg", "0 to 180"));
        public static readonly ObjectField EdgeHeld = Set.Add(
            new ObjectField("edgeHeld", EdgeHeldFields.Set, "edge held on the seam place by place as designed; null where it cannot be")
            {
                OrNull = true,
            });
        public static readonly TextField WhyNotHeld = Set.Add(new TextField("whyNotHeld", "why the edge cannot be held") { OrNull = true });
        public static readonly ObjectField EdgeFree = Set.Add(new ObjectField("edgeFree", EdgeFreeFields.Set));
    }

    /// <summary>Fields of <c>laid[].edgeHeld</c>.</summary>
    internal static class EdgeHeldFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField EnergyNmm = Set.Add(new NumberField("energyNmm"));
        public static readonly NumberField MaxStretchPercent = Set.Add(new NumberField("maxStretchPercent"));
        public static readonly NumberField MaxCompressionPercent = Set.Add(new NumberField("maxCompressionPercent"));
        public static readonly NumberField EdgePullNPerMm = Set.Add(
            new NumberField("edgePullNPerMm", "greatest pull on the edge that holding it needs, N for a mm of flat edge"));
    }

    /// <summary>Fields of <c>laid[].edgeFree</c>.</summary>
    internal static class EdgeFreeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField EnergyNmm = Set.Add(new NumberField("energyNmm"));
        public static readonly NumberField LargestGapMm = Set.Add(
            new NumberField("largestGapMm", "gap two copies leave; null where they do not face each other") { OrNull = true });
        public static readonly NumberField LargestOverlapMm = Set.Add(
            new NumberField("largestOverlapMm", "overlap; null likewise") { OrNull = true });
    }
}
