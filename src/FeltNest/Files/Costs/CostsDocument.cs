using FeltNest.Cost.Offers;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Costs;

/// <summary>Costs of a shop: every field of <c>feltnest/costs/1</c>.</summary>
internal static class CostsDocument
{
    // Most dies, or counts of layers, weighed against each other.
    private const int MostChoices = 12;

    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new() { Schema = SchemaName.Costs, Title = "Costs of a shop", Fields = Fields };

    public static readonly TextField Name = Fields.Add(new TextField("name", "shown on results"));
    public static readonly CurrencyField Currency = Fields.Add(
        new CurrencyField("currency", "the one currency of the cost sheet, such as EUR"));
    public static readonly ObjectsField Rates = Fields.Add(
        new ObjectsField("rates", RateFields.Set, "rates of other currencies") { Optional = true });
    public static readonly ObjectField Roll = Fields.Add(new ObjectField("roll", RollFields.Set));
    public static readonly ObjectField Felt = Fields.Add(
        new ObjectField("felt", FeltFields.Set, "felt where no offer states a price") { Optional = true });
    public static readonly ObjectField Recovery = Fields.Add(new ObjectField("recovery", RecoveryFields.Set) { Optional = true });
    public static readonly ObjectField Strike = Fields.Add(
        new ObjectField("strike", StrikeFields.Set, "required with die") { Optional = true });
    public static readonly ObjectField Die = Fields.Add(new ObjectField("die", DieFields.Set) { Optional = true });
    public static readonly ObjectField SetUp = Fields.Add(new ObjectField("setUp", SetUpFields.Set) { Optional = true });
    public static readonly NumberField HandlingPerThousandBalls = Fields.Add(
        new NumberField("handlingPerThousandBalls", ShopRanges.Money, "handling, racking and inspection, for a thousand balls")
        {
            Optional = true,
            OrSpread = true,
        });
    public static readonly NumberField OverheadPercent = Fields.Add(
        new NumberField("overheadPercent", 0, 1000, "overhead, % of set-up, labour and machine, die, board and handling together")
        {
            Optional = true,
            OrSpread = true,
        });
    public static readonly NumberField AnnualBalls = Fields.Add(
        new NumberField("annualBalls", 1, 1e11, "balls made in a year: felt is bought for so many, and savings are reckoned for a year")
        {
            Optional = true,
            Unit = "balls",
        });
    public static readonly NumberField InterestPercent = Fields.Add(
        new NumberField("interestPercent", 0, 100, "interest a year, %: of days of credit, and of money laid out for a die")
        {
            Optional = true,
            OrSpread = true,
        });
    public static readonly NumberField SurplusWorthPercent = Fields.Add(
        new NumberField("surplusWorthPercent", 0, 100, "worth of felt that is left over, % of what it cost; left out it counts as lost")
        {
            Optional = true,
            OrSpread = true,
        });
    public static readonly ObjectField Coating = Fields.Add(
        new ObjectField("coating", CoatingFields.Set, "coating and cement put on bare felt before it is cut") { Optional = true });
    public static readonly NumberField HorizonYears = Fields.Add(
        new NumberField("horizonYears", 0.5, 30, "years over which savings are counted") { Default = 5, Unit = "years" });
    public static readonly NumberField WidthYearCost = Fields.Add(
        new NumberField(
            "widthYearCost", ShopRanges.Money,
            "money a year to keep one width in stock, whatever is used of it: room, rolls begun, buying, checking; `family` wants it")
        {
            Optional = true,
            Unit = "in `currency`",
        });
    public static readonly ObjectsField Correlations = Fields.Add(
        new ObjectsField("correlations", CorrelationFields.Set, "figures with a range that go together; the others are independent")
        {
            Optional = true,
        });
    public static readonly ObjectField Gang = Fields.Add(
        new ObjectField("gang", GangFields.Set, "dies and plies to be weighed on the best row; `die` and `strike.price` are wanted")
        {
            Optional = true,
        });

    /// <summary>Fields of <c>rates[]</c>.</summary>
    internal static class RateFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly CurrencyField Currency = Set.Add(new CurrencyField("currency", "name of a currency, such as EUR"));
        public static readonly NumberField Rate = Set.Add(
            new NumberField("rate", 0.000001, 1_000_000, "units of the sheet's currency for one unit of this one") { OrSpread = true });
    }

    /// <summary>Fields of <c>roll</c>.</summary>
    internal static class RollFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField LengthM = Set.Add(
            new NumberField(ShopRanges.RollLength, "length of a roll; an offer's own length goes before it") { OrSpread = true });
        public static readonly NumberField EndLossMm = Set.Add(
            new NumberField(ShopRanges.EndLoss, "length lost at each end of a roll") { OrSpread = true });
        public static readonly NumberField FaultPercent = Set.Add(
            new NumberField(
                "faultPercent", ShopRanges.LossShare,
                "panels lost to faults of the felt, % of all panels cut; an offer's own share goes before it")
            {
                OrSpread = true,
            });
        public static readonly NumberField RejectPercent = Set.Add(
            new NumberField("rejectPercent", ShopRanges.LossShare, "panels rejected after cutting, % of the rest") { OrSpread = true });
        public static readonly NumberField UnpairedPercent = Set.Add(
            new NumberField(
                "unpairedPercent", ShopRanges.LossShare, "good panels that find no partner of their kind and roll, % of the good ones")
            {
                Default = 0,
                OrSpread = true,
            });
    }

    /// <summary>Fields of <c>felt</c>.</summary>
    internal static class FeltFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Price = Set.Add(
            new NumberField(ShopRanges.FeltPrice, "price of the felt where no offer states one") { OrSpread = true });
        public static readonly WordField PriceUnit = Set.Add(
            new WordField("priceUnit", PriceUnits.Words, "what the price is for, full roll width"));
        public static readonly CurrencyField Currency = Set.Add(
            new CurrencyField("currency", "where it is not the sheet's") { Optional = true });
        public static readonly NumberField MassPerAreaGsm = Set.Add(
            new NumberField(
                ShopRanges.MassPerArea,
                "mass per area of the felt bought; an offer's own goes before it; the ball's is taken where it is left out, but for a "
                    + "price per kg, which wants it")
            {
                Optional = true,
                OrSpread = true,
            });
    }

    /// <summary>Fields of <c>recovery</c>.</summary>
    internal static class RecoveryFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField PricePerKg = Set.Add(
            new NumberField("pricePerKg", ShopRanges.Money, "what a kilogram of waste brings") { OrSpread = true });
    }

    /// <summary>Fields of <c>strike</c>.</summary>
    internal static class StrikeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Price = Set.Add(
            new NumberField(ShopRanges.Money, "labour and machine for one strike") { Optional = true, OrSpread = true });
        public static readonly NumberField BoardPrice = Set.Add(
            new NumberField("boardPrice", ShopRanges.Money, "wear of the cutting board for one strike")
            {
                Optional = true,
                OrSpread = true,
            });
        public static readonly WholeField MostPanels = Set.Add(
            new WholeField(
                "mostPanels", 1, 10_000,
                "most panels of one ply that a strike cuts: whole repeats as many as that allows, or a repeat in several strikes; a "
                    + "layout that says how its die cuts goes before it"));
    }

    /// <summary>Fields of <c>die</c>.</summary>
    internal static class DieFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Price = Set.Add(
            new NumberField(ShopRanges.Money, "price of the die") { OrSpread = true });
        public static readonly WholeField LifeStrikes = Set.Add(
            new WholeField(ShopRanges.LifeStrikes, "strikes until its rule is dull; what readings of the die show goes before it")
            {
                OrSpread = true,
            });
        public static readonly WholeField ReRules = Set.Add(
            new WholeField(ShopRanges.ReRules, "how often it gets a new rule and lives again as long") { Default = 0 });
        public static readonly NumberField ReRulePrice = Set.Add(
            new NumberField("reRulePrice", ShopRanges.Money, "price of a new rule; required with reRules")
            {
                Optional = true,
                OrSpread = true,
            });
    }

    /// <summary>Fields of <c>setUp</c>.</summary>
    internal static class SetUpFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Hours = Set.Add(new NumberField("hours", 0, 1000, "hours of one set-up") { OrSpread = true });
        public static readonly NumberField RatePerHour = Set.Add(
            new NumberField("ratePerHour", ShopRanges.Money, "money for an hour") { OrSpread = true });
        public static readonly NumberField BatchThousandBalls = Set.Add(
            new NumberField("batchThousandBalls", 0.001, 1_000_000, "thousand balls cut in one set-up") { OrSpread = true });
    }

    /// <summary>Fields of <c>coating</c>.</summary>
    internal static class CoatingFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField PricePerM2 = Set.Add(
            new NumberField("pricePerM2", ShopRanges.Money, "money for a square metre of felt bought, its cement and its work")
            {
                OrSpread = true,
            });
    }

    /// <summary>Fields of <c>correlations[]</c>.</summary>
    internal static class CorrelationFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField First = Set.Add(
            new TextField("first", "place of a figure with a range (`strike.price`), or `price of` and the name of an offer"));
        public static readonly TextField Second = Set.Add(new TextField("second", "the other one"));
        public static readonly NumberField Correlation = Set.Add(
            new NumberField("correlation", -1, 1, "of the normal variables behind them") { Unit = string.Empty });
    }

    /// <summary>Fields of <c>gang</c>.</summary>
    internal static class GangFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly CountsField Cavities = Set.Add(
            new CountsField("cavities", 10_000, "most panels of one ply that each die cuts") { Least = 1, Most = MostChoices });
        public static readonly CountsField Plies = Set.Add(
            new CountsField("plies", (int)ShopRanges.Plies.High, "plies under one strike")
            {
                Otherwise = "`[1]`",
                Least = 1,
                Most = MostChoices,
            });
        public static readonly NumberField DiePricePerCavity = Set.Add(
            new NumberField(
                "diePricePerCavity", ShopRanges.Money,
                "price of a die for each of its cavities, on top of `die.price`, wherever a die is priced")
            {
                OrSpread = true,
            });
        public static readonly NumberField StrikePricePerExtraPly = Set.Add(
            new NumberField("strikePricePerExtraPly", ShopRanges.Money, "labour of a strike for each layer above the first")
            {
                Default = 0,
                OrSpread = true,
            });
    }
}
