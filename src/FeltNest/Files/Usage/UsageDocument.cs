using FeltNest.Cost.Offers;
using FeltNest.Cost.Usage;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Usage;

/// <summary>Felt used against standard: every field of <c>feltnest/usage/1</c>.</summary>
internal static class UsageDocument
{
    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Usage, Title = "Felt used against standard", Fields = Fields };

    public static readonly NumberField Balls = Fields.Add(new NumberField("balls", "good balls: pairs of good panels"));
    public static readonly WordField Unit = Fields.Add(
        new WordField("unit", PriceUnits.Words, "what quantities count: the unit of the standard price, m2 without one"));
    public static readonly CurrencyField Currency = Fields.Add(
        new CurrencyField("currency", "currency of all money, null without a standard price") { OrNull = true });
    public static readonly ObjectField Standard = Fields.Add(new ObjectField("standard", StandardFields.Set));
    public static readonly ObjectField Actual = Fields.Add(new ObjectField("actual", StandardFields.Set));
    public static readonly ObjectField Difference = Fields.Add(new ObjectField("difference", DifferenceFields.Set));
    public static readonly ObjectsField Parts = Fields.Add(
        new ObjectsField("parts", PartFields.Set, "one a cause; quantities and money add to the difference"));
    public static readonly TextsField NotRecorded = Fields.Add(new TextsField("notRecorded", "causes taken at their standard"));
    public static readonly ObjectsField Rolls = Fields.Add(new ObjectsField("rolls", RollFields.Set));

    /// <summary>Fields of <c>standard</c>.</summary>
    internal static class StandardFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Metres = Set.Add(new NumberField("metres"));
        public static readonly NumberField SquareMetres = Set.Add(new NumberField("squareMetres", "of full width"));
        public static readonly NumberField Kilograms = Set.Add(
            new NumberField("kilograms", "null where the mass is not known") { OrNull = true });
        public static readonly NumberField Cost = Set.Add(
            new NumberField("cost", "in the currency; null without a standard price") { OrNull = true });
    }

    /// <summary>Fields of <c>difference</c>.</summary>
    internal static class DifferenceFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Quantity = Set.Add(new NumberField("quantity", "above 0 is more than standard"));
        public static readonly NumberField Percent = Set.Add(new NumberField("percent", "of the standard quantity, %"));
        public static readonly NumberField Money = Set.Add(new NumberField("money", "null without a standard price") { OrNull = true });
    }

    /// <summary>Fields of <c>parts[]</c>.</summary>
    internal static class PartFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly EnumField<UsageCause> Cause = Set.Add(
            new EnumField<UsageCause>("cause", "`lay` is feed, skipped strikes and whatever was not recorded"));
        public static readonly NumberField Quantity = Set.Add(new NumberField("quantity", "in the unit; 0 for the price"));
        public static readonly NumberField PercentOfStandard = Set.Add(new NumberField("percentOfStandard", "of the standard quantity, %"));
        public static readonly NumberField Money = Set.Add(
            new NumberField("money", "at the standard price; for the price the difference on the felt really used") { OrNull = true });
        public static readonly NumberField StandardLossPercent = Set.Add(
            new NumberField("standardLossPercent", "lost by standard: of the metres, of the panels cut, or of what the cause before leaves")
            {
                OrNull = true,
            });
        public static readonly NumberField ActualLossPercent = Set.Add(
            new NumberField("actualLossPercent", "really lost") { OrNull = true });
    }

    /// <summary>Fields of <c>rolls[]</c>.</summary>
    internal static class RollFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Roll = Set.Add(new TextField("roll"));
        public static readonly NumberField Metres = Set.Add(new NumberField("metres"));
        public static readonly NumberField GoodPanels = Set.Add(new NumberField("goodPanels"));
        public static readonly NumberField Balls = Set.Add(new NumberField("balls"));
        public static readonly NumberField WidthMm = Set.Add(
            new NumberField("widthMm", "as measured; null where not recorded") { OrNull = true });
        public static readonly NumberField RowsPercent = Set.Add(
            new NumberField("rowsPercent", "panels per metre its width takes, % of the layout's"));
        public static readonly NumberField EndsM = Set.Add(new NumberField("endsM") { OrNull = true });
        public static readonly NumberField FaultPanels = Set.Add(new NumberField("faultPanels") { OrNull = true });
        public static readonly NumberField RejectedPanels = Set.Add(new NumberField("rejectedPanels") { OrNull = true });
        public static readonly NumberField UnpairedPanels = Set.Add(new NumberField("unpairedPanels") { OrNull = true });
        public static readonly NumberField MetresPerThousandBalls = Set.Add(
            new NumberField("metresPerThousandBalls", "null where it gave no ball") { OrNull = true });
        public static readonly NumberField MorePercent = Set.Add(
            new NumberField("morePercent", "above standard for its balls; null where it gave no ball") { OrNull = true });
        public static readonly TextsField Signed = Set.Add(new TextsField("signed", "date, operator, supervisor as far as given"));
    }
}
