using FeltNest.Ball;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Studies;

/// <summary>Study of waists: every field of <c>feltnest/waist/1</c>.</summary>
internal static class WaistDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Waist, Title = "Study of waists", Fields = Fields };

    public static readonly TextField Ball = Fields.Add(new TextField("ball", "name of the ball"));
    public static readonly EnumField<FlatteningMethod> Flattening = Fields.Add(new EnumField<FlatteningMethod>("flattening"));
    public static readonly EnumField<EdgeRule> Edge = Fields.Add(new EnumField<EdgeRule>("edge"));
    public static readonly ObjectField Limits = Fields.Add(new ObjectField("limits", StudyFields.LimitsFields.Set, "limits of the felt"));
    public static readonly ObjectField Roll =
        Fields.Add(new ObjectField("roll", StudyFields.RollFields.Set, "the roll and the rules of laying"));
    public static readonly FlagField CutShort = Fields.Add(
        new FlagField("cutShort", "whether waists are missing because the study was stopped"));
    public static readonly NumberField BestWaistMm = Fields.Add(
        new NumberField("bestWaistMm", "waist with the least felt within the limits; null where none keeps them") { OrNull = true });
    public static readonly NumberField FlatFromMm = Fields.Add(
        new NumberField("flatFromMm", "least waist round it that takes practically the same felt, within 0.2 %") { OrNull = true });
    public static readonly NumberField FlatToMm = Fields.Add(
        new NumberField("flatToMm", "greatest such waist") { OrNull = true });
    public static readonly TextField Rule = Fields.Add(new TextField("rule", "the rule that marks"));
    public static readonly TextField Finding = Fields.Add(new TextField("finding", "what it found"));
    public static readonly ObjectsField Waists = Fields.Add(new ObjectsField("waists", WaistFields.Set, "one a waist, narrowest first"));
    public static readonly ObjectsField Unanswered = Fields.Add(
        new ObjectsField("unanswered", UnansweredFields.Set, "waists without a panel or a layout"));

    /// <summary>Fields of <c>waists[]</c>.</summary>
    internal static class WaistFields
    {
        internal static readonly FieldSet Set = new(StudyFields.YieldFields.Set);

        public static readonly NumberField WaistMm = Set.Add(new NumberField("waistMm", "on the fitted sphere"));
        public static readonly NumberField MaxStretchPercent = Set.Add(new NumberField("maxStretchPercent"));
        public static readonly NumberField MaxCompressionPercent = Set.Add(new NumberField("maxCompressionPercent"));
        public static readonly NumberField EdgeMaxCompressionPercent = Set.Add(new NumberField("edgeMaxCompressionPercent"));
        public static readonly FlagField StretchAllowed = Set.Add(new FlagField("stretchAllowed", "whether the felt takes it"));
        public static readonly FlagField EdgeAllowed = Set.Add(new FlagField("edgeAllowed", "whether the edge takes it"));
        public static readonly NumberField PanelAreaMm2 = Set.Add(new NumberField("panelAreaMm2", "of the cut panel"));
        public static readonly NumberField SeamLengthMm = Set.Add(new NumberField("seamLengthMm", "on the fitted sphere"));
    }

    /// <summary>Fields of <c>unanswered[]</c>.</summary>
    internal static class UnansweredFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField WaistMm = Set.Add(new NumberField("waistMm"));
        public static readonly TextField Reason = Set.Add(new TextField("reason"));
    }
}
