using FeltNest.Cost.Charts;
using FeltNest.Cost.Tickets;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Usage;

/// <summary>Tickets of a period against standard: every field of <c>feltnest/period-usage/1</c>.</summary>
internal static class PeriodDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new()
    {
        Schema = SchemaName.PeriodUsage,
        Title = "Felt of a period's tickets against standard",
        Fields = Fields,
    };

    public static readonly TextField Book = Fields.Add(new TextField("book", "name of the book"));
    public static readonly DayField Since = Fields.Add(new DayField("since", "first day"));
    public static readonly TextField Until = Fields.Add(new TextField("until", "last day, or null") { OrNull = true });
    public static readonly EnumField<TicketGrouping> By = Fields.Add(
        new EnumField<TicketGrouping>("by", "what the groups have in common; `cause` is one group, and charts day by day"));
    public static readonly CurrencyField Currency = Fields.Add(new CurrencyField("currency", "currency of all money"));
    public static readonly ObjectField Whole = Fields.Add(new ObjectField("whole", GroupFields.Set, "all tickets"));
    public static readonly ObjectsField Groups = Fields.Add(new ObjectsField("groups", GroupFields.Set, "the first ticket's group first"));
    public static readonly ObjectsField Tickets = Fields.Add(
        new ObjectsField("tickets", TicketFields.Set, "one for each time that a ticket came back"));
    public static readonly ObjectsField Standards = Fields.Add(
        new ObjectsField("standards", PromisedFields.Set, "versions that tickets are held against"));
    public static readonly ObjectsField Charts = Fields.Add(new ObjectsField("charts", ChartFields.Set));
    public static readonly TextsField LeftOut = Fields.Add(
        new TextsField("leftOut", "numbers of tickets that tell neither strikes nor felt, or gave no ball"));

    /// <summary>Fields of a group.</summary>
    internal static class GroupFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Name = Set.Add(new TextField("name"));
        public static readonly WholeField Tickets = Set.Add(new WholeField("tickets", "how many"));
        public static readonly NumberField Balls = Set.Add(new NumberField("balls", "good balls"));
        public static readonly NumberField StandardSquareMetres = Set.Add(
            new NumberField("standardSquareMetres", "allowed for these balls"));
        public static readonly NumberField ActualSquareMetres = Set.Add(new NumberField("actualSquareMetres", "as invoiced"));
        public static readonly NumberField MorePercent = Set.Add(new NumberField("morePercent", "above standard"));
        public static readonly NumberField StandardCost = Set.Add(new NumberField("standardCost", "in the currency"));
        public static readonly NumberField ActualCost = Set.Add(new NumberField("actualCost", "in the currency"));
        public static readonly ObjectsField Parts =
            Set.Add(new ObjectsField("parts", CauseFields.Set, "one a cause, sums of the tickets'"));
        public static readonly ObjectsField Rejects = Set.Add(
            new ObjectsField("rejects", ReasonFields.Set, "felt of rejected panels by reason, the most first"));
    }

    /// <summary>Fields of <c>parts[]</c>.</summary>
    internal static class CauseFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly EnumField<TicketCause> Cause = Set.Add(new EnumField<TicketCause>(
            "cause", "`invoiced` is felt paid for that was not there, `rest` what the counts leave unexplained"));
        public static readonly NumberField SquareMetres = Set.Add(new NumberField("squareMetres", "above 0 is more than standard"));
        public static readonly NumberField Money = Set.Add(
            new NumberField("money", "at the standard price; for the price what it makes on the felt paid for"));
    }

    /// <summary>Fields of <c>rejects[]</c>.</summary>
    internal static class ReasonFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Reason = Set.Add(new TextField("reason"));
        public static readonly NumberField SquareMetres = Set.Add(new NumberField("squareMetres"));
    }

    /// <summary>Fields of <c>tickets[]</c>.</summary>
    internal static class TicketFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Ticket = Set.Add(new WholeField("ticket", "its number"));
        public static readonly WholeField Entry = Set.Add(new WholeField("entry", "entry of the book by which it came back"));
        public static readonly TextField Day = Set.Add(new TextField("day"));
        public static readonly TextField Roll = Set.Add(new TextField("roll"));
        public static readonly TextField Lot = Set.Add(new TextField("lot"));
        public static readonly TextField Supplier = Set.Add(new TextField("supplier", "null where not told") { OrNull = true });
        public static readonly TextField Press = Set.Add(new TextField("press"));
        public static readonly TextField Operator = Set.Add(new TextField("operator", "null where not told") { OrNull = true });
        public static readonly TextField Shift = Set.Add(new TextField("shift", "null where not told") { OrNull = true });
        public static readonly WholeField StandardVersion = Set.Add(
            new WholeField("standardVersion", "0 for the figures it was printed with"));
        public static readonly WholeField RowsCut = Set.Add(
            new WholeField("rowsCut", "rows really cut; null where not counted") { OrNull = true });
        public static readonly NumberField DrawnM = Set.Add(new NumberField("drawnM", "drawn from the roll"));
        public static readonly NumberField Balls = Set.Add(new NumberField("balls"));
        public static readonly NumberField StandardSquareMetres = Set.Add(new NumberField("standardSquareMetres"));
        public static readonly NumberField ActualSquareMetres = Set.Add(new NumberField("actualSquareMetres"));
        public static readonly NumberField StandardCost = Set.Add(new NumberField("standardCost"));
        public static readonly NumberField ActualCost = Set.Add(new NumberField("actualCost"));
        public static readonly ObjectsField Parts = Set.Add(
            new ObjectsField("parts", CauseFields.Set, "one a cause: they add to the difference"));
        public static readonly TextsField NotCounted = Set.Add(new TextsField("notCounted", "what stood blank: taken at its standard"));
    }

    /// <summary>Fields of <c>standards[]</c>.</summary>
    internal static class PromisedFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Ball = Set.Add(new TextField("ball"));
        public static readonly WholeField Version = Set.Add(new WholeField("version"));
        public static readonly DayField From = Set.Add(new DayField("from", "first day it holds"));
        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm"));
        public static readonly NumberField SquareMetres = Set.Add(new NumberField("squareMetres", "for a thousand good balls"));
        public static readonly ObjectsField Causes = Set.Add(new ObjectsField("causes", PromisedCauseFields.Set, "the same by cause"));
    }

    /// <summary>Fields of <c>standards[].causes[]</c>.</summary>
    internal static class PromisedCauseFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WordField Cause = Set.Add(
            new WordField("cause", ["balls", .. EnumWord.All<TicketCause>()], "`balls`: felt of the panels that cover them"));
        public static readonly NumberField SquareMetres = Set.Add(new NumberField("squareMetres", "for a thousand good balls"));
    }

    /// <summary>Fields of <c>charts[]</c>.</summary>
    internal static class ChartFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Name = Set.Add(new TextField("name"));
        public static readonly EnumField<ChartKind> Kind = Set.Add(
            new EnumField<ChartKind>("kind", "share: p; rate: u; individuals and moving range"));
        public static readonly TextField Unit = Set.Add(new TextField("unit", "of its values"));
        public static readonly NumberField Centre = Set.Add(new NumberField("centre", "the mean"));
        public static readonly NumberField SigmaZ = Set.Add(
            new NumberField("sigmaZ", "spread against pure counting noise; null where nothing is counted") { OrNull = true });
        public static readonly FlagField Widened = Set.Add(new FlagField("widened", "whether limits are widened by it"));
        public static readonly NumberField ExpectedByNoise = Set.Add(
            new NumberField("expectedByNoise", "points that pure noise alone puts outside"));
        public static readonly ObjectsField Points = Set.Add(new ObjectsField("points", PointFields.Set));
        public static readonly ObjectsField Change = Set.Add(
            new ObjectsField("change", ChangeFields.Set, "what a lasting change takes to be seen; empty where not asked"));
    }

    /// <summary>Fields of <c>charts[].points[]</c>.</summary>
    internal static class PointFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Name = Set.Add(new TextField("name", "day, ticket or group"));
        public static readonly NumberField Count = Set.Add(new NumberField("count", "what was counted; else the value"));
        public static readonly NumberField Size = Set.Add(new NumberField("size", "of how many, or of which length; else 1"));
        public static readonly NumberField Value = Set.Add(new NumberField("value"));
        public static readonly NumberField Low = Set.Add(new NumberField("low", "lower limit"));
        public static readonly NumberField High = Set.Add(new NumberField("high", "upper limit"));
        public static readonly NumberField NoiseShare = Set.Add(
            new NumberField("noiseShare", "how often pure noise lies outside, 0 to 1: of small counts not 0.0027"));
        public static readonly FlagField Cause = Set.Add(new FlagField("cause", "a cause; else noise"));
    }

    /// <summary>Fields of <c>charts[].change[]</c>.</summary>
    internal static class ChangeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Percent = Set.Add(new NumberField("percent", "the change"));
        public static readonly NumberField Sigmas = Set.Add(new NumberField("sigmas", "in standard deviations of one ticket"));
        public static readonly NumberField Tickets = Set.Add(new NumberField("tickets", "on average, until one lies outside"));
        public static readonly NumberField CountingPercent = Set.Add(
            new NumberField("countingPercent", "standard deviation of one ticket by counting alone"));
    }
}
