using FeltNest.Ball.Ranges;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Rolls;

/// <summary>One real roll: every field of <c>feltnest/roll/1</c>.</summary>
internal static class RollDocument
{
    // Most faults and readings of a roll: one every few millimetres is no roll any more.
    private const int MostItems = 10_000;

    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Roll, Title = "One real roll", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name", "name or number, shown on results"));
    public static readonly TextField Felt = Fields.Add(new TextField("felt") { Optional = true, OrNull = true });
    public static readonly TextField Lot = Fields.Add(new TextField("lot", "shade lot") { Optional = true, OrNull = true });
    public static readonly NumberField LengthM = Fields.Add(new NumberField(ShopRanges.RollLength, "length"));
    public static readonly ObjectsField Widths = Fields.Add(
        new ObjectsField(
            "widths", WidthFields.Set, "readings in order of x: straight between two of them, level beyond the first and the last")
        {
            Least = 1,
            Most = MostItems,
        });
    public static readonly ObjectsField Joints = Fields.Add(
        new ObjectsField("joints", JointFields.Set, "splices across the whole width, in order of x")
        {
            Otherwise = "none",
            Most = MostItems,
        });
    public static readonly NumberField SkewDeg = Fields.Add(
        new NumberField(
            new FieldRange
            {
                Field = "skewDeg",
                Low = -30,
                High = 30,
                Unit = "degrees",
                Reason = "a warp further off the selvedge is another angle of laying",
            },
            "direction of the warp from the selvedge, counter-clockwise")
        {
            Default = 0,
        });
    public static readonly WordField NapToward = Fields.Add(
        new WordField("napToward", NapWord.Words, "way the nap lies: with the feed or against it") { Optional = true });
    public static readonly NumberField MassPerAreaGsm = Fields.Add(
        new NumberField(ShopRanges.MassPerArea) { Optional = true, OrNull = true });
    public static readonly ObjectsField Faults = Fields.Add(
        new ObjectsField("faults", FaultFields.Set, "closed: a panel that touches one is lost") { Otherwise = "none", Most = MostItems });

    /// <summary>Fields of <c>widths[]</c>.</summary>
    internal static class WidthFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField XM = Set.Add(new NumberField("xM", "along the roll") { Allowed = "0 to the length" });
        public static readonly NumberField WidthMm = Set.Add(
            new NumberField(
                new FieldRange
                {
                    Field = "widthMm",
                    Low = 1,
                    High = 10_000,
                    Unit = "mm",
                    Reason = "looms end well before",
                },
                "both selvedges included; the lower selvedge runs along the guide"));
    }

    /// <summary>Fields of <c>joints[]</c>.</summary>
    internal static class JointFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField XM = Set.Add(new NumberField("xM", "inside the roll"));
        public static readonly NumberField ClearMm = Set.Add(
            new NumberField(
                ShopRanges.SpliceClear,
                "length on each side that no strike touches; at 0 a strike may go through the splice, and the panels it runs through are "
                    + "lost")
            {
                Default = 0,
            });
    }

    /// <summary>Fields of <c>faults[]</c>.</summary>
    internal static class FaultFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField XMm = Set.Add(new NumberField("xMm", "a disc's centre, or where a box begins along the roll"));
        public static readonly NumberField YMm = Set.Add(
            new NumberField("yMm", "a disc's centre, or a box's lower side from the lower selvedge; the middle lies on the felt"));
        public static readonly NumberField RadiusMm = Set.Add(
            new NumberField("radiusMm", ShopRanges.LengthOrNone, "radius of a disc; either this or the next two")
            {
                Otherwise = "a disc's alone",
            });
        public static readonly NumberField LengthMm = Set.Add(
            new NumberField("lengthMm", ShopRanges.LengthOrNone, "extent of a box along the roll") { Otherwise = "a box's alone" });
        public static readonly NumberField WidthMm = Set.Add(
            new NumberField("widthMm", ShopRanges.LengthOrNone, "extent of a box across") { Otherwise = "a box's alone" });
    }
}
