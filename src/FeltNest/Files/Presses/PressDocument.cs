using FeltNest.Files.Fields;
using FeltNest.Rolls;

namespace FeltNest.Files.Presses;

/// <summary>Cutting press: every field of <c>feltnest/press/1</c>.</summary>
internal static class PressDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Press, Title = "Cutting press", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name", "name in the shop"));
    public static readonly NumberField RatedForceKn = Fields.Add(
        new NumberField(ShopRanges.PressForce, "force that its maker rates it for"));
    public static readonly NumberField AllowedSharePercent = Fields.Add(
        new NumberField("allowedSharePercent", 1, 100, "most of the rating to be used; 80 is common practice, no source")
        {
            Default = PressSpec.UsualSharePercent,
        });
    public static readonly ObjectField Bed = Fields.Add(new ObjectField("bed", BedFields.Set));
    public static readonly NumberField DaylightMm = Fields.Add(
        new NumberField("daylightMm", 1, 2000, "opening between bed and head") { Optional = true });
    public static readonly NumberField StrokesPerMinute = Fields.Add(
        new NumberField("strokesPerMinute", 0.1, 600, "strikes a minute that it keeps up, feeding included"));
    public static readonly NumberField ChangeOverMinutes = Fields.Add(
        new NumberField("changeOverMinutes", 0, 10_000, "minutes to take one die out and set up the next"));
    public static readonly NumberField RollChangeMinutes = Fields.Add(
        new NumberField(ShopRanges.RollChange, "minutes to take one roll off and put the next on") { Default = 0 });
    public static readonly TextField MountedDie = Fields.Add(
        new TextField("mountedDie", "die that stands on it when cutting begins: its first mounting there costs nothing")
        {
            Optional = true,
        });
    public static readonly ObjectField Calendar = Fields.Add(
        new ObjectField("calendar", CalendarFields.Set, "when it runs, by the clock on the wall, every day of 24 hours")
        {
            Otherwise = "Monday to Friday, the usual hours of the plan from 06:00",
        });
    public static readonly NumberField Hours = Fields.Add(
        new NumberField("hours", 0, 100_000, "hours it may run in the time planned for at most, changes of dies and rolls included")
        {
            Optional = true,
        });
    public static readonly WholeField Plies = Fields.Add(
        new WholeField(ShopRanges.Plies, "most plies of felt under one strike") { Default = 1 });
    public static readonly NumberField FeedToleranceMm = Fields.Add(
        new NumberField(ShopRanges.FeedTolerance, "how far the feed may stop short of or past its length"));
    public static readonly NumberField GuideToleranceMm = Fields.Add(
        new NumberField(ShopRanges.GuideTolerance, "how far the side guide may let the felt wander to either side"));
    public static readonly TextsField Dies = Fields.Add(
        new TextsField("dies", "names of the dies that fit its mounting; left out, every die fits that the bed takes")
        {
            Optional = true,
            Least = 1,
            Most = 1000,
            EachOnce = true,
        });

    /// <summary>Fields of <c>bed</c>.</summary>
    internal static class BedFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField LengthMm = Set.Add(new NumberField("lengthMm", ShopRanges.BedSide, "bed along the roll"));
        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm", ShopRanges.BedSide, "bed across the roll"));
        public static readonly NumberField MarginMm = Set.Add(
            new NumberField(ShopRanges.BedMargin, "kept free of board along every side; below half of the bed"));
    }
}
