using FeltNest.Files.Fields;
using FeltNest.Panel.Lot;

namespace FeltNest.Files.Felts;

/// <summary>A die against a new lot of felt: every field of <c>feltnest/lot/1</c>.</summary>
internal static class LotDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Lot, Title = "Die against a new lot of felt", Fields = Fields };

    public static readonly TextField Ball = Fields.Add(new TextField("ball", "name of the ball"));
    public static readonly TextField Outline = Fields.Add(new TextField("outline", "name of what the die cuts"));
    public static readonly TextField Before = Fields.Add(new TextField("before", "the felt before: its lot, or its name"));
    public static readonly TextField After = Fields.Add(new TextField("after", "the new lot"));
    public static readonly NumberField GlueFromMm = Fields.Add(new NumberField("glueFromMm", "least gap of the glue's range"));
    public static readonly NumberField GlueToMm = Fields.Add(new NumberField("glueToMm", "greatest gap of it"));
    public static readonly EnumField<LotVerdict> Verdict = Fields.Add(
        new EnumField<LotVerdict>("verdict", "by the share of the seam outside the glue's range after the cure"));
    public static readonly TextsField Words = Fields.Add(new TextsField("words", "the verdict, one sentence each"));
    public static readonly NumberField MeanChangeMm = Fields.Add(
        new NumberField("meanChangeMm", "change of the mean gap after the cure"));
    public static readonly NumberField MeanIntervalMm = Fields.Add(
        new NumberField("meanIntervalMm", "half of the 95 % interval of the new mean gap that the lot's own spread leaves"));
    public static readonly ObjectsField Changes = Fields.Add(
        new ObjectsField("changes", ChangeFields.Set, "figures that the new lot brings"));
    public static readonly ObjectField AtFitting = Fields.Add(
        new ObjectField("atFitting", StateFields.Set, "as cut, with nothing pulling the edge"));
    public static readonly ObjectField AfterCure = Fields.Add(
        new ObjectField("afterCure", StateFields.Set, "after the felt has shrunk, with nothing pulling the edge"));
    public static readonly RowsField Gaps = Fields.Add(
        new RowsField(
            "gaps", ["round", "share", "before", "after", "before, cured", "after, cured"],
            "places that face the other edge in every state: mm round the seam from the waist, share of the seam, the four gaps in mm"));

    /// <summary>Fields of <c>changes[]</c>.</summary>
    internal static class ChangeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Field = Set.Add(new TextField("field", "path in a ball file"));
        public static readonly NumberField Before = Set.Add(new NumberField("before", "of the felt before"));
        public static readonly NumberField After = Set.Add(new NumberField("after", "of the new lot"));
        public static readonly NumberField MeanGapMm = Set.Add(
            new NumberField(
                "meanGapMm", "what the new figure's interval moves the mean gap after the cure by; null where it moves none or has none")
            {
                OrNull = true,
            });
    }

    /// <summary>Fields of <c>atFitting</c> and <c>afterCure</c>.</summary>
    internal static class StateFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly ObjectField Before = Set.Add(new ObjectField("before", GapFields.Set, "with the felt before"));
        public static readonly ObjectField After = Set.Add(new ObjectField("after", GapFields.Set, "with the new lot"));
    }

    /// <summary>Figures of a gap.</summary>
    internal static class GapFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField MeanMm = Set.Add(new NumberField("meanMm", "over the seam; below 0 an overlap"));
        public static readonly NumberField WaistMm = Set.Add(
            new NumberField("waistMm", "mean of the two waists; null where none faces an edge") { OrNull = true });
        public static readonly NumberField TipMm =
            Set.Add(new NumberField("tipMm", "mean of the two tips; null likewise") { OrNull = true });
        public static readonly NumberField LeastMm = Set.Add(new NumberField("leastMm", "least gap"));
        public static readonly NumberField GreatestMm = Set.Add(new NumberField("greatestMm", "greatest gap"));
        public static readonly NumberField OutsidePercent = Set.Add(
            new NumberField("outsidePercent", 0, 100, "of the seam outside the glue's range, places that face no edge counted"));
    }
}
