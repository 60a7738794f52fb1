using FeltNest.Files.Fields;

namespace FeltNest.Files.Dies;

/// <summary>Measured panel judged: every field of <c>feltnest/first-article/1</c>.</summary>
internal static class FirstArticleDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.FirstArticle, Title = "Measured panel judged", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name"));
    public static readonly FlagField Passed = Fields.Add(new FlagField("passed", "every point within half the tolerance"));
    public static readonly NumberField PanelProfileMm = Fields.Add(new NumberField("panelProfileMm", "width of the zone"));
    public static readonly NumberField WorstMm = Fields.Add(new NumberField("worstMm", "greatest distance, positive outside"));
    public static readonly ObjectField WorstPlace = Fields.Add(
        new ObjectField("worstPlace", WorstPlaceFields.Set, "in the outline's frame"));
    public static readonly NumberField MeanMm = Fields.Add(new NumberField("meanMm", "mean distance: above 0 larger all round"));
    public static readonly NumberField RmsMm = Fields.Add(new NumberField("rmsMm"));
    public static readonly WholeField Failing = Fields.Add(new WholeField("failing", "points outside the zone"));
    public static readonly NumberField TurnDeg = Fields.Add(new NumberField("turnDeg", "turn of the best fit"));
    public static readonly NumberField WidestGapMm = Fields.Add(
        new NumberField("widestGapMm", "longest stretch of the outline without a point"));
    public static readonly FlagField Mirrored = Fields.Add(new FlagField("mirrored", "the points lie much better mirrored"));
    public static readonly RowsField Points = Fields.Add(
        new RowsField("points", ["x", "y", "distance"], "[x, y, distance], mm, in the outline's frame"));

    /// <summary>Fields of <c>worstPlace</c>.</summary>
    internal static class WorstPlaceFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField X = Set.Add(new NumberField("x") { Unit = "mm" });
        public static readonly NumberField Y = Set.Add(new NumberField("y") { Unit = "mm" });
    }
}
