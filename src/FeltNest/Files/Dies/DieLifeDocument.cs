using FeltNest.Die.Proof;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Dies;

/// <summary>Life of a die: every field of <c>feltnest/die-life/1</c>.</summary>
internal static class DieLifeDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.DieLife, Title = "Life of a die", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name"));
    public static readonly TextField Revision = Fields.Add(new TextField("revision") { OrNull = true });
    public static readonly TextField SupersededBy = Fields.Add(
        new TextField("supersededBy", "newer die, where one was given that differs") { OrNull = true });
    public static readonly NumberField PanelProfileMm = Fields.Add(new NumberField("panelProfileMm"));
    public static readonly WholeField Strikes = Fields.Add(new WholeField("strikes", "by the last reading"));
    public static readonly FlagField Failed = Fields.Add(new FlagField("failed", "a last reading is outside the tolerance"));
    public static readonly NumberField ReRuleAt = Fields.Add(
        new NumberField("reRuleAt", ShopRanges.LifeStrikes, "strikes: drift's limit or stated life, whichever comes first")
        {
            OrNull = true,
        });
    public static readonly NumberField DriftLimit = Fields.Add(new NumberField("driftLimit", "strikes") { OrNull = true });
    public static readonly NumberField StatedLife = Fields.Add(new NumberField("statedLife", "strikes") { OrNull = true });
    public static readonly ObjectField Die = Fields.Add(
        new ObjectField("die", DieFields.Set, "fields of a cost file's `die`, its life as it turned out; null where the die has no price")
        {
            OrNull = true,
        });
    public static readonly ObjectsField Drifts = Fields.Add(
        new ObjectsField("drifts", DriftFields.Set, "a straight line through the worst places of each cavity and ply"));
    public static readonly ObjectsField Readings = Fields.Add(new ObjectsField("readings", ReadingFields.Set, "as read, by strikes"));

    /// <summary>Fields of <c>die</c>.</summary>
    internal static class DieFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Price = Set.Add(new NumberField("price"));
        public static readonly WholeField LifeStrikes = Set.Add(new WholeField("lifeStrikes"));
        public static readonly WholeField ReRules = Set.Add(new WholeField("reRules"));
        public static readonly NumberField ReRulePrice = Set.Add(new NumberField("reRulePrice"));
    }

    /// <summary>Fields of <c>drifts[]</c>.</summary>
    internal static class DriftFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Cavity = Set.Add(new WholeField("cavity"));
        public static readonly TextField Ply = Set.Add(new TextField("ply"));
        public static readonly NumberField StartMm = Set.Add(new NumberField("startMm", "at no strikes"));
        public static readonly NumberField PerThousandMm = Set.Add(new NumberField("perThousandMm", "mm in a thousand strikes"));
        public static readonly NumberField ScatterMm = Set.Add(
            new NumberField("scatterMm", "of the readings about the line; null with fewer than three") { OrNull = true });
        public static readonly NumberField LimitFrom = Set.Add(
            new NumberField("limitFrom", "early end of limitStrikes, 95 per cent; null where it cannot be told") { OrNull = true });
        public static readonly NumberField LimitTo = Set.Add(
            new NumberField("limitTo", "late end; null where there may be none") { OrNull = true });
        public static readonly EnumField<DriftFit> Fit = Set.Add(new EnumField<DriftFit>("fit", "how well a straight line fits"));
        public static readonly NumberField LimitStrikes = Set.Add(
            new NumberField("limitStrikes", "where the line reaches half the tolerance") { OrNull = true });
    }

    /// <summary>Fields of <c>readings[]</c>.</summary>
    internal static class ReadingFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Date = Set.Add(new TextField("date"));
        public static readonly WholeField Strikes = Set.Add(new WholeField("strikes"));
        public static readonly WholeField Cavity = Set.Add(new WholeField("cavity"));
        public static readonly TextField Ply = Set.Add(new TextField("ply"));
        public static readonly NumberField OffMm = Set.Add(new NumberField("offMm"));
        public static readonly NumberField WorstMm = Set.Add(new NumberField("worstMm"));
    }
}
