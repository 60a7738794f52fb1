using FeltNest.Ball;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Studies;

/// <summary>Seams designed for least felt: every field of <c>feltnest/seam-design/1</c>.</summary>
internal static class SeamDesignDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new()
    {
        Schema = SchemaName.SeamDesign,
        Title = "Seams designed for least felt",
        Fields = Fields,
    };

    public static readonly TextField Ball = Fields.Add(new TextField("ball", "name of the ball"));
    public static readonly EnumField<EdgeRule> Edge = Fields.Add(new EnumField<EdgeRule>("edge"));
    public static readonly ObjectField Limits = Fields.Add(new ObjectField("limits", LimitsFields.Set, "what every seam keeps"));
    public static readonly ObjectField Roll =
        Fields.Add(new ObjectField("roll", StudyFields.RollFields.Set, "the roll and the rules of laying"));
    public static readonly WholeField Waves = Fields.Add(new WholeField("waves", "waves of a shaped seam beside its waist"));
    public static readonly FlagField Unmirrored = Fields.Add(
        new FlagField("unmirrored", "whether the seam may leave its mirrors and keep the half-turns alone"));
    public static readonly FlagField TurnsWarp = Fields.Add(
        new FlagField("turnsWarp", "whether the angle to the warp was a number of the design"));
    public static readonly WholeField Solves = Fields.Add(new WholeField("solves", "panels solved on the way: the counted work"));
    public static readonly FlagField CutShort = Fields.Add(
        new FlagField("cutShort", "whether marks are missing because the design was stopped"));
    public static readonly TextField Caution = Fields.Add(new TextField("caution", "what must be looked at first"));
    public static readonly ObjectField Given = Fields.Add(new ObjectField("given", ChoiceFields.Set, "the ball as it was given"));
    public static readonly ObjectsField Marks = Fields.Add(
        new ObjectsField("marks", MarkFields.Set, "one for each family and limit of stretch, the least limit first"));
    public static readonly ObjectsField Unanswered = Fields.Add(
        new ObjectsField("unanswered", UnansweredFields.Set, "limits that no seam of a family was found to keep"));

    /// <summary>Fields of <c>limits</c>.</summary>
    internal static class LimitsFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField MaxEdgeCompressionPercent = Set.Add(
            new NumberField("maxEdgeCompressionPercent", "along the edge, of the ball file"));
        public static readonly NumberField MaxCompressionPercent = Set.Add(
            new NumberField("maxCompressionPercent", "anywhere; null where it does not bind") { OrNull = true });
        public static readonly NumberField LeastRadiusMm = Set.Add(
            new NumberField("leastRadiusMm", "of the seam on the fitted sphere; null where it does not bind") { OrNull = true });
        public static readonly NumberField LeastRunMm = Set.Add(
            new NumberField("leastRunMm", "between neighbouring runs of the seam; null where it does not bind") { OrNull = true });
        public static readonly NumberField MostGapMm = Set.Add(
            new NumberField("mostGapMm", "that the fitter feels; null where it does not bind") { OrNull = true });
    }

    /// <summary>Fields of <c>marks[]</c>.</summary>
    internal static class MarkFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField StretchLimitPercent =
            Set.Add(new NumberField("stretchLimitPercent", "greatest stretch allowed"));
        public static readonly EnumField<SeamFamily> Curve = Set.Add(new EnumField<SeamFamily>("curve", "family of the seam"));
        public static readonly ObjectField Plane = Set.Add(
            new ObjectField("plane", ChoiceFields.Set, "seam with the least felt in the endless plane"));
        public static readonly ObjectField Roll =
            Set.Add(new ObjectField("roll", ChoiceFields.Set, "seam with the least felt on the roll"));
    }

    /// <summary>Fields of a seam as measured.</summary>
    internal static class ChoiceFields
    {
        internal static readonly FieldSet Set = new(StudyFields.YieldFields.Set);

        public static readonly NumberField SeamWaistMm = Set.Add(new NumberField("seamWaistMm", "of the seam on the fitted sphere"));
        public static readonly RowsField Offsets = Set.Add(
            new RowsField("offsets", ["order", "mm"], "waves of a shaped seam, as in a ball file; empty for the other families"));
        public static readonly NumberField WarpAngleDeg = Set.Add(
            new NumberField("warpAngleDeg", "from the warp to +u, as in the ball file; null where any serves") { OrNull = true });
        public static readonly NumberField SeamLengthMm = Set.Add(new NumberField("seamLengthMm", "on the fitted sphere"));
        public static readonly NumberField LeastRadiusMm = Set.Add(new NumberField("leastRadiusMm", "least geodesic radius of the seam"));
        public static readonly NumberField LeastRunMm = Set.Add(
            new NumberField("leastRunMm", "least distance between neighbouring runs of the seam"));
        public static readonly NumberField MaxStretchPercent = Set.Add(new NumberField("maxStretchPercent"));
        public static readonly NumberField MaxCompressionPercent = Set.Add(new NumberField("maxCompressionPercent", "anywhere"));
        public static readonly NumberField EdgeMaxCompressionPercent = Set.Add(
            new NumberField("edgeMaxCompressionPercent", "along the edge"));
        public static readonly NumberField EdgeHeldPercent = Set.Add(
            new NumberField("edgeHeldPercent", "share of the seam along which the edge is held at its limit"));
        public static readonly NumberField LargestGapMm = Set.Add(
            new NumberField("largestGapMm", "gap the fitter feels with the edge free; null where the edges do not face each other")
            {
                OrNull = true,
            });
        public static readonly NumberField PanelAreaMm2 = Set.Add(new NumberField("panelAreaMm2", "of the cut panel"));
        public static readonly NumberField PlaneSquareMetres = Set.Add(
            new NumberField("planeSquareMetres", "felt for a thousand balls in the best lattice of the endless plane") { Unit = "m2" });
        public static readonly RowsField Outline = Set.Add(new RowsField("outline", ["u", "v"], "corners [u, v] of the cut panel, mm"));
    }

    /// <summary>Fields of <c>unanswered[]</c>.</summary>
    internal static class UnansweredFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField StretchLimitPercent = Set.Add(new NumberField("stretchLimitPercent"));
        public static readonly EnumField<SeamFamily> Curve = Set.Add(new EnumField<SeamFamily>("curve", "family of the seam"));
        public static readonly TextField Reason = Set.Add(new TextField("reason"));
    }
}
