using FeltNest.Die.Proof;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Dies;

/// <summary>A die as it was made, judged: every field of <c>feltnest/made-die/1</c>.</summary>
internal static class MadeDieDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.MadeDie, Title = "Die as made, judged", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name"));
    public static readonly FlagField Passed = Fields.Add(new FlagField("passed", "the die conforms"));
    public static readonly EnumField<Conformity> Verdict = Fields.Add(
        new EnumField<Conformity>("verdict", "what is proved of all edges and places, by ISO 14253-1"));
    public static readonly NumberField EdgeProfileMm = Fields.Add(new NumberField("edgeProfileMm", "width of the zone of an edge"));
    public static readonly NumberField PositionMm = Fields.Add(
        new NumberField("positionMm", "diameter of the circle round its place that the middle of a cavity lies in"));
    public static readonly NumberField UncertaintyMm = Fields.Add(
        new NumberField("uncertaintyMm", "expanded uncertainty of a distance, coverage factor 2; null where it is unknown")
        {
            OrNull = true,
        });

    public static readonly NumberField GuardMm = Fields.Add(
        new NumberField("guardMm", "room that an accepted distance keeps from its limit"));
    public static readonly FlagField InFrame = Fields.Add(
        new FlagField("inFrame", "the points stand in the die's frame: neither turned nor moved"));
    public static readonly NumberField TurnDeg = Fields.Add(new NumberField("turnDeg", "turn of the whole measurement"));
    public static readonly FlagField Mirrored = Fields.Add(new FlagField("mirrored", "the die was seen from its other side"));
    public static readonly RowsField NotMeasured = Fields.Add(
        new RowsField("notMeasured", ["number"], "numbers of cavities without points"));
    public static readonly NumberField FarthestMm =
        Fields.Add(new NumberField("farthestMm", "greatest distance of a middle off its place"));
    public static readonly NumberField WidestZoneMm = Fields.Add(new NumberField("widestZoneMm", "widest zone of an edge"));
    public static readonly NumberField MeanOffMm = Fields.Add(
        new NumberField("meanOffMm", "mean distance off the edge of all cavities: set the next edge back by it"));
    public static readonly ObjectsField Cavities = Fields.Add(new ObjectsField("cavities", CavityFields.Set));
    public static readonly ObjectsField Bends = Fields.Add(
        new ObjectsField("bends", BendFields.Set, "how far the bends of each edge sprang open, the mean of its cavities"));

    /// <summary>Fields of <c>cavities[]</c>.</summary>
    internal static class CavityFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Number = Set.Add(new WholeField("number"));
        public static readonly WholeField Points = Set.Add(new WholeField("points", "how many were measured"));
        public static readonly EnumField<Conformity> Edge = Set.Add(new EnumField<Conformity>("edge", "what is proved of its edge"));
        public static readonly NumberField ZoneMm = Set.Add(new NumberField("zoneMm", "narrowest zone of its edge"));
        public static readonly NumberField HiddenMm = Set.Add(new NumberField("hiddenMm", "what may hide between its points"));
        public static readonly NumberField RejectGuardMm = Set.Add(
            new NumberField("rejectGuardMm", "how far beyond the limit a rejected point lies at the least"));
        public static readonly NumberField MeanOffMm = Set.Add(new NumberField("meanOffMm", "mean distance off its edge"));
        public static readonly EnumField<Conformity> Position = Set.Add(
            new EnumField<Conformity>("position", "what is proved of its place and turn"));
        public static readonly NumberField XMm = Set.Add(new NumberField("xMm", "where its middle is wanted, in the die's frame"));
        public static readonly NumberField YMm = Set.Add(new NumberField("yMm"));
        public static readonly NumberField OffXMm = Set.Add(new NumberField("offXMm", "how far its middle is off along the feed"));
        public static readonly NumberField OffYMm = Set.Add(new NumberField("offYMm", "the same across"));
        public static readonly NumberField InPlaceMm = Set.Add(
            new NumberField(
                "inPlaceMm", "farthest point off the edge where that belongs; half of edgeProfileMm and positionMm together is allowed"));
    }

    /// <summary>Fields of <c>bends[]</c>.</summary>
    internal static class BendFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Part = Set.Add(new WholeField("part", "place of the part in the layout's list, from 0"));
        public static readonly WholeField Number = Set.Add(new WholeField("number", "from 1, along the edge"));
        public static readonly NumberField X = Set.Add(new NumberField("x", "middle of the bend, in the part's frame") { Unit = "mm" });
        public static readonly NumberField Y = Set.Add(new NumberField("y") { Unit = "mm" });
        public static readonly NumberField WantedDeg = Set.Add(new NumberField("wantedDeg", "angle wanted; below 0 inwards"));
        public static readonly NumberField OpenedPercent = Set.Add(new NumberField("openedPercent", "above 0: sprang open"));
        public static readonly NumberField ErrorPercent = Set.Add(new NumberField("errorPercent", "standard error of that"));
        public static readonly NumberField GotDeg = Set.Add(new NumberField("gotDeg", "angle that came out"));
        public static readonly NumberField SetDeg = Set.Add(
            new NumberField("setDeg", "angle to set next; the one wanted where no more than the error is seen"));
    }
}
