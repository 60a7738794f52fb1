using FeltNest.Die.Proof;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Dies;

/// <summary>Measured panel judged: every field of <c>feltnest/first-article/1</c>.</summary>
internal static class FirstArticleDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.FirstArticle, Title = "Measured panel judged", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name"));
    public static readonly FlagField Passed = Fields.Add(new FlagField("passed", "the panel conforms"));
    public static readonly EnumField<Conformity> Verdict = Fields.Add(
        new EnumField<Conformity>("verdict", "what is proved, by ISO 14253-1"));
    public static readonly NumberField PanelProfileMm = Fields.Add(
        new NumberField("panelProfileMm", "width of the zone allowed, mm; a place may lie within half of it"));
    public static readonly NumberField ZoneMm = Fields.Add(new NumberField("zoneMm", "width of the narrowest zone that holds all points"));
    public static readonly NumberField WorstMm = Fields.Add(new NumberField("worstMm", "greatest distance, positive outside"));
    public static readonly ObjectField WorstPlace = Fields.Add(
        new ObjectField("worstPlace", PlaceFields.Set, "in the outline's frame"));
    public static readonly WholeField Failing = Fields.Add(new WholeField("failing", "points outside the zone allowed"));
    public static readonly NumberField UncertaintyMm = Fields.Add(
        new NumberField("uncertaintyMm", "expanded uncertainty of a distance, coverage factor 2; null where it is unknown")
        {
            OrNull = true,
        });
    public static readonly NumberField GuardMm = Fields.Add(
        new NumberField("guardMm", "room that an accepted place keeps from the limit"));
    public static readonly NumberField RejectGuardMm = Fields.Add(
        new NumberField("rejectGuardMm", "how far beyond the limit a rejected place lies at the least"));
    public static readonly NumberField ChanceWithin = Fields.Add(
        new NumberField("chanceWithin", "chance that the worst place lies within the limits; null where the uncertainty is unknown")
        {
            OrNull = true,
        });
    public static readonly NumberField Steepness = Fields.Add(
        new NumberField("steepness", "steepest change of the distance along the edge that may hide between points, mm a mm"));
    public static readonly NumberField HiddenMm = Fields.Add(
        new NumberField("hiddenMm", "greatest distance that may hide between points, without sign"));
    public static readonly NumberField PerimeterMm = Fields.Add(new NumberField("perimeterMm", "length of the outline"));
    public static readonly NumberField WidestGapMm = Fields.Add(
        new NumberField("widestGapMm", "longest stretch of the outline without a point"));
    public static readonly ObjectField WidestGapPlace = Fields.Add(
        new ObjectField("widestGapPlace", PlaceFields.Set, "middle of that stretch"));
    public static readonly NumberField SpacingWantedMm = Fields.Add(
        new NumberField(
            "spacingWantedMm",
            "points no further apart leave nothing hidden beyond the limit; null where no spacing is enough")
        {
            OrNull = true,
        });
    public static readonly WholeField PointsWanted = Fields.Add(
        new WholeField("pointsWanted", "points evenly spread at that spacing; null where no number is enough") { OrNull = true });
    public static readonly FlagField InFrame = Fields.Add(
        new FlagField("inFrame", "the points stand in the frame of the drawing: neither turned nor moved"));
    public static readonly NumberField TurnDeg = Fields.Add(new NumberField("turnDeg", "turn of the best zone"));
    public static readonly FlagField Mirrored = Fields.Add(new FlagField("mirrored", "the points lie much better mirrored"));
    public static readonly ObjectField LeastSquares = Fields.Add(
        new ObjectField("leastSquares", SquaresFields.Set, "the same points laid by least squares, as information"));
    public static readonly RowsField HeldBy = Fields.Add(
        new RowsField(
            "heldBy", ["x", "y", "distance", "normalX", "normalY", "share"],
            "points that hold the zone, with the direction outwards and their shares; empty with inFrame"));
    public static readonly RowsField Points = Fields.Add(
        new RowsField(
            "points", ["x", "y", "distance", "along", "squaresDistance"],
            "places in the outline's frame, distance off it, length along it to the foot, distance by least squares; mm"));

    /// <summary>Fields of <c>worstPlace</c> and of <c>widestGapPlace</c>.</summary>
    internal static class PlaceFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField X = Set.Add(new NumberField("x") { Unit = "mm" });
        public static readonly NumberField Y = Set.Add(new NumberField("y") { Unit = "mm" });
    }

    /// <summary>Fields of <c>leastSquares</c>.</summary>
    internal static class SquaresFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField WorstMm = Set.Add(new NumberField("worstMm", "greatest distance, positive outside"));
        public static readonly NumberField MeanMm = Set.Add(new NumberField("meanMm", "mean distance: above 0 larger all round"));
        public static readonly NumberField RmsMm = Set.Add(new NumberField("rmsMm"));
    }
}
