using FeltNest.Ball;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Panels;

/// <summary>Ball fitted to a measured outline: every field of <c>feltnest/proven/1</c>.</summary>
internal static class ProvenDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new()
    {
        Schema = SchemaName.Proven,
        Title = "Ball fitted to a measured outline",
        Fields = Fields,
    };

    public static readonly TextField Ball = Fields.Add(new TextField("ball", "name of the ball"));
    public static readonly TextField Outline = Fields.Add(new TextField("outline", "name of the outline"));
    public static readonly ObjectsField Values = Fields.Add(
        new ObjectsField("values", ValueFields.Set, "values found; the edge limit only where the outline shows one"));
    public static readonly ObjectsField Held = Fields.Add(
        new ObjectsField("held", HeldFields.Set, "values that were known and held"));
    public static readonly EnumField<SeamFamily> Curve = Fields.Add(
        new EnumField<SeamFamily>("curve", "seam family of the fit: the ball's own unless another comes clearly nearer"));
    public static readonly ObjectsField Families = Fields.Add(
        new ObjectsField("families", FamilyFields.Set, "seam families tried, the nearest first"));
    public static readonly FlagField ShowsEdgeLimit = Fields.Add(
        new FlagField("showsEdgeLimit", "whether the outline shows an edge limit that acts"));
    public static readonly NumberField EdgeTakesUpPercent = Fields.Add(
        new NumberField("edgeTakesUpPercent", "greatest edge compression of the fitted panel: the outline shows no limit below it"));
    public static readonly ObjectField Residuals = Fields.Add(new ObjectField("residuals", ResidualsFields.Set));
    public static readonly NumberField TellableMm = Fields.Add(
        new NumberField("tellableMm", "rms distance at which two outlines are taken to be told apart"));
    public static readonly TextField Weakest = Fields.Add(new TextField("weakest", "what the outline determines worst, in words"));
    public static readonly NumberField StretchInsteadPercent = Fields.Add(
        new NumberField(
            "stretchInsteadPercent",
            "stretch on application beyond the ball file's with which this outline has its neutral layer at 0.5, below 0 shrinkage in the "
                + "cure; null where the neutral layer was held")
        {
            OrNull = true,
        });
    public static readonly ObjectsField Combinations = Fields.Add(
        new ObjectsField("combinations", CombinationFields.Set, "independent directions, the one seen least first"));
    public static readonly NumberField TurnedDeg = Fields.Add(
        new NumberField("turnedDeg", "how far the outline was turned to lie on the panel"));
    public static readonly ObjectField BallFields = Fields.Add(
        new ObjectField("ballFields", BallFieldsFields.Set, "fields of the ball file, nested as there, that carry the panel over"));
    public static readonly RowsField Deviations = Fields.Add(
        new RowsField(
            "deviations", ["u", "v", "distance"],
            "[u, v, distance]: place of the fitted edge and distance of the outline outwards from it, mm"));

    /// <summary>Fields of <c>values[]</c>.</summary>
    internal static class ValueFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WordField Name = Set.Add(new WordField("name", ["neutral layer", "waist", "edge limit"]));
        public static readonly WordField Field = Set.Add(
            new WordField("field", ["felt.neutralLayer", "seam.waistMm", "felt.maxEdgeCompressionPercent"], "field of the ball file"));
        public static readonly NumberField Value = Set.Add(new NumberField("value", "in the field's unit"));
        public static readonly TextField Unit = Set.Add(new TextField("unit") { OrBlank = true });
        public static readonly NumberField Spread = Set.Add(
            new NumberField("spread", "how far the value can go, the others following, before the outline changes by tellableMm"));
        public static readonly TextField AtBound = Set.Add(
            new TextField("atBound", "the end of its range where it stands there") { OrNull = true });
    }

    /// <summary>Fields of <c>held[]</c>.</summary>
    internal static class HeldFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WordField Field = Set.Add(
            new WordField("field", ["felt.neutralLayer", "seam.waistMm", "felt.maxEdgeCompressionPercent"], "field of the ball file"));
        public static readonly NumberField Value = Set.Add(new NumberField("value", "in the field's unit"));
    }

    /// <summary>Fields of <c>families[]</c>.</summary>
    internal static class FamilyFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly EnumField<SeamFamily> Curve = Set.Add(new EnumField<SeamFamily>("curve"));
        public static readonly NumberField RmsMm = Set.Add(
            new NumberField("rmsMm", "root mean square distance of the outline from the family's nearest panel"));
        public static readonly NumberField NeutralLayer = Set.Add(new NumberField("neutralLayer", "of that panel"));
        public static readonly NumberField WaistMm = Set.Add(new NumberField("waistMm", "of that panel"));
    }

    /// <summary>Fields of <c>residuals</c>.</summary>
    internal static class ResidualsFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField RmsMm = Set.Add(
            new NumberField("rmsMm", "root mean square distance of the outline from the panel"));
        public static readonly NumberField GreatestMm = Set.Add(
            new NumberField("greatestMm", "greatest in size; above 0 the outline is larger"));
        public static readonly NumberField GreatestU = Set.Add(new NumberField("greatestU", "where, mm along the panel"));
        public static readonly NumberField GreatestV = Set.Add(new NumberField("greatestV", "where, mm across"));
    }

    /// <summary>Fields of <c>combinations[]</c>.</summary>
    internal static class CombinationFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField SingularValue = Set.Add(
            new NumberField(
                "singularValue",
                "rms change of the outline, mm, for one step along this direction; steps of 0.1 neutral layer, 1 mm waist, 1 % limit"));
        public static readonly ObjectField Changes = Set.Add(
            new ObjectField("changes", ChangesFields.Set, "changes that together move the outline by tellableMm"));
    }

    /// <summary>Fields of <c>combinations[].changes</c>.</summary>
    internal static class ChangesFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField FeltNeutralLayer = Set.Add(new NumberField("felt.neutralLayer", "change") { Optional = true });
        public static readonly NumberField SeamWaistMm = Set.Add(new NumberField("seam.waistMm", "change") { Optional = true });
        public static readonly NumberField FeltMaxEdgeCompressionPercent = Set.Add(
            new NumberField("felt.maxEdgeCompressionPercent", "change") { Optional = true });
    }

    /// <summary>Fields of <c>ballFields</c>.</summary>
    internal static class BallFieldsFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly ObjectField Felt = Set.Add(new ObjectField("felt", FeltFields.Set));
        public static readonly ObjectField Seam = Set.Add(new ObjectField("seam", SeamFields.Set));
    }

    /// <summary>Fields of <c>ballFields.felt</c>.</summary>
    internal static class FeltFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField NeutralLayer = Set.Add(new NumberField("neutralLayer"));
        public static readonly NumberField MaxEdgeCompressionPercent = Set.Add(
            new NumberField("maxEdgeCompressionPercent", "left out for a ball whose edge is not mated") { Optional = true });
    }

    /// <summary>Fields of <c>ballFields.seam</c>.</summary>
    internal static class SeamFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly EnumField<SeamFamily> Curve = Set.Add(new EnumField<SeamFamily>("curve"));
        public static readonly NumberField WaistMm = Set.Add(new NumberField("waistMm"));
    }
}
