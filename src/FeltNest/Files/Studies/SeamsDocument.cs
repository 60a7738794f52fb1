using FeltNest.Ball;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Studies;

/// <summary>Seam families side by side: every field of <c>feltnest/seams/1</c>.</summary>
internal static class SeamsDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Seams, Title = "Seam families side by side", Fields = Fields };

    public static readonly TextField Ball = Fields.Add(new TextField("ball", "name of the ball"));
    public static readonly EnumField<FlatteningMethod> Flattening = Fields.Add(new EnumField<FlatteningMethod>("flattening"));
    public static readonly EnumField<EdgeRule> Edge = Fields.Add(new EnumField<EdgeRule>("edge"));
    public static readonly NumberField WaistMm = Fields.Add(new NumberField("waistMm", "waist of all seams on the fitted sphere"));
    public static readonly ObjectField Limits = Fields.Add(new ObjectField("limits", StudyFields.LimitsFields.Set, "limits of the felt"));
    public static readonly ObjectField Roll =
        Fields.Add(new ObjectField("roll", StudyFields.RollFields.Set, "the roll and the rules of laying"));
    public static readonly FlagField CutShort = Fields.Add(
        new FlagField("cutShort", "whether seams are missing because the comparison was stopped"));
    public static readonly ObjectsField Seams = Fields.Add(new ObjectsField("seams", SeamFields.Set, "one a seam"));
    public static readonly ObjectsField Unanswered = Fields.Add(
        new ObjectsField("unanswered", UnansweredFields.Set, "seams without a panel or a layout"));

    /// <summary>Fields of <c>seams[]</c>.</summary>
    internal static class SeamFields
    {
        internal static readonly FieldSet Set = new(StudyFields.YieldFields.Set);

        public static readonly EnumField<SeamFamily> Curve = Set.Add(new EnumField<SeamFamily>("curve", "family of the seam"));
        public static readonly NumberField SeamLengthMm = Set.Add(new NumberField("seamLengthMm", "on the fitted sphere"));
        public static readonly NumberField LeastRadiusMm = Set.Add(new NumberField("leastRadiusMm", "least geodesic radius of the seam"));
        public static readonly NumberField MaxStretchPercent = Set.Add(new NumberField("maxStretchPercent"));
        public static readonly NumberField MaxCompressionPercent = Set.Add(new NumberField("maxCompressionPercent", "anywhere"));
        public static readonly NumberField EdgeMaxCompressionPercent = Set.Add(
            new NumberField("edgeMaxCompressionPercent", "along the edge"));
        public static readonly FlagField StretchAllowed = Set.Add(new FlagField("stretchAllowed", "whether the felt takes it"));
        public static readonly FlagField EdgeAllowed = Set.Add(new FlagField("edgeAllowed", "whether the edge takes it"));
        public static readonly NumberField EnergyNmm = Set.Add(new NumberField("energyNmm", "one panel"));
        public static readonly NumberField PanelAreaMm2 = Set.Add(new NumberField("panelAreaMm2", "of the cut panel"));
        public static readonly NumberField LengthMm = Set.Add(new NumberField("lengthMm", "of the cut panel"));
        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm", "of the cut panel"));
        public static readonly NumberField WaistMm = Set.Add(new NumberField("waistMm", "of the cut panel"));
        public static readonly RowsField Outline = Set.Add(new RowsField("outline", ["u", "v"], "corners [u, v] of the cut panel, mm"));
    }

    /// <summary>Fields of <c>unanswered[]</c>.</summary>
    internal static class UnansweredFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly EnumField<SeamFamily> Curve = Set.Add(new EnumField<SeamFamily>("curve", "family of the seam"));
        public static readonly TextField Reason = Set.Add(new TextField("reason"));
    }
}
