using FeltNest.Cost.Offers;
using FeltNest.Files.Fields;

namespace FeltNest.Files.Compare;

/// <summary>Fields of what a comparison finds beside its rows.</summary>
internal static class CompareFindingFields
{
    /// <summary>Fields of <c>dropWidths[]</c>.</summary>
    internal static class DropWidthFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Rows = Set.Add(new WholeField("rows"));
        public static readonly NumberField LeastWidthMm = Set.Add(new NumberField("leastWidthMm", "least roll width, trims included"));
        public static readonly NumberField PanelsPerMetre = Set.Add(new NumberField("panelsPerMetre"));
    }

    /// <summary>Fields of <c>crossovers[]</c>.</summary>
    internal static class CrossoverFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm"));
        public static readonly WholeField RowsBelow = Set.Add(new WholeField("rowsBelow"));
        public static readonly WholeField RowsAbove = Set.Add(new WholeField("rowsAbove"));
    }

    /// <summary>Fields of <c>breakEvens[]</c>.</summary>
    internal static class BreakEvenFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Offer = Set.Add(new TextField("offer"));
        public static readonly TextField Against = Set.Add(new TextField("against"));
        public static readonly NumberField Price = Set.Add(
            new NumberField("price", "price of `offer` at which both cost the same; 0 or less where not even a gift would do"));
        public static readonly WordField PriceUnit = Set.Add(new WordField("priceUnit", PriceUnits.Words));
        public static readonly CurrencyField Currency = Set.Add(new CurrencyField("currency"));
    }

    /// <summary>Fields of <c>values[]</c>.</summary>
    internal static class ValueFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Change = Set.Add(new TextField("change"));
        public static readonly NumberField SquareMetresPerMillionBalls = Set.Add(
            new NumberField("squareMetresPerMillionBalls", "change of the felt bought"));
        public static readonly NumberField CostPerMillionBalls = Set.Add(new NumberField("costPerMillionBalls") { OrNull = true });
        public static readonly NumberField FeltPerMillionBalls =
            Set.Add(new NumberField("feltPerMillionBalls", "of it for felt") { OrNull = true });
        public static readonly NumberField StrikesPerMillionBalls = Set.Add(
            new NumberField("strikesPerMillionBalls", "of it for strikes, with their overhead; money") { OrNull = true });
        public static readonly NumberField DiePerMillionBalls = Set.Add(
            new NumberField("diePerMillionBalls", "of it for wear of the die, with its overhead") { OrNull = true });
    }

    /// <summary>Fields of <c>flips[]</c>.</summary>
    internal static class FlipFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Assumption = Set.Add(new TextField("assumption"));
        public static readonly NumberField Now = Set.Add(new NumberField("now"));
        public static readonly NumberField At = Set.Add(new NumberField("at", "nearest value looked at where the cheapest row changes"));
        public static readonly TextField Best = Set.Add(new TextField("best", "the row that is the cheapest there"));
        public static readonly FlagField Stated = Set.Add(new FlagField("stated", "within a range the user stated"));
    }

    /// <summary>Fields of <c>swings[]</c>.</summary>
    internal static class SwingFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Assumption = Set.Add(new TextField("assumption"));
        public static readonly NumberField Low = Set.Add(new NumberField("low"));
        public static readonly NumberField Likely = Set.Add(new NumberField("likely"));
        public static readonly NumberField High = Set.Add(new NumberField("high"));
        public static readonly NumberField CostAtLow = Set.Add(new NumberField("costAtLow", "of the best row, a thousand balls"));
        public static readonly NumberField CostAtHigh = Set.Add(new NumberField("costAtHigh"));
        public static readonly TextField BestAtLow = Set.Add(new TextField("bestAtLow", "row that is the cheapest there"));
        public static readonly TextField BestAtHigh = Set.Add(new TextField("bestAtHigh"));
    }

    /// <summary>Fields of <c>gang[]</c>.</summary>
    internal static class GangFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Cavities = Set.Add(new WholeField("cavities", "most panels of one ply, as asked"));
        public static readonly WholeField Plies = Set.Add(new WholeField("plies", "plies under one strike"));
        public static readonly NumberField PanelsPerStrike = Set.Add(new NumberField("panelsPerStrike", "all plies"));
        public static readonly NumberField StrikesPerThousandBalls = Set.Add(new NumberField("strikesPerThousandBalls"));
        public static readonly NumberField DiePrice = Set.Add(new NumberField("diePrice"));
        public static readonly NumberField RunningCostPerThousandBalls = Set.Add(
            new NumberField("runningCostPerThousandBalls", "without the die"));
        public static readonly NumberField CostPerThousandBalls = Set.Add(new NumberField("costPerThousandBalls", "the die by its wear"));
        public static readonly NumberField PaysFromThousandBalls = Set.Add(
            new NumberField("paysFromThousandBalls", "from which it is the cheapest to buy once and run; null where it never is")
            {
                OrNull = true,
            });
    }

    /// <summary>Fields of <c>outlook</c>.</summary>
    internal static class OutlookFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Samples = Set.Add(new WholeField("samples", "sets of figures that were drawn"));
        public static readonly ObjectsField Rows = Set.Add(new ObjectsField("rows", RowOutlookFields.Set, "in the order of the rows"));
        public static readonly ObjectsField Shares = Set.Add(
            new ObjectsField(
                "shares", SpreadShareFields.Set, "what figure the spread of the best row's cost comes from, the greatest share first"));
    }

    /// <summary>Fields of <c>outlook.rows[]</c>; money for a thousand balls.</summary>
    internal static class RowOutlookFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Name = Set.Add(new TextField("name"));
        public static readonly NumberField P5 = Set.Add(new NumberField("p5", "one case of twenty costs less"));
        public static readonly NumberField P50 = Set.Add(new NumberField("p50", "half of the cases cost less"));
        public static readonly NumberField P95 = Set.Add(new NumberField("p95", "one case of twenty costs more"));
        public static readonly NumberField Mean = Set.Add(new NumberField("mean"));
        public static readonly NumberField Deviation = Set.Add(new NumberField("deviation", "standard deviation"));
        public static readonly NumberField Least = Set.Add(new NumberField("least", "every figure at its cheap end"));
        public static readonly NumberField Most = Set.Add(new NumberField("most", "every figure at its dear end: the plain worst case"));
        public static readonly NumberField CheapestPercent = Set.Add(
            new NumberField("cheapestPercent", "in how many cases it is the cheapest"));
    }

    /// <summary>Fields of <c>outlook.shares[]</c>.</summary>
    internal static class SpreadShareFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Figure = Set.Add(new TextField("figure"));
        public static readonly NumberField Percent = Set.Add(new NumberField("percent", "of the variance"));
    }

    /// <summary>Fields of <c>yearTerms</c>.</summary>
    internal static class YearTermFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField AnnualBalls = Set.Add(new NumberField("annualBalls", "balls made in a year") { Unit = "balls" });
        public static readonly NumberField InterestPercent = Set.Add(new NumberField("interestPercent", "a year") { OrNull = true });
        public static readonly NumberField HorizonYears = Set.Add(
            new NumberField("horizonYears", "years over which savings are counted") { Unit = "years" });
    }

    /// <summary>Fields of <c>years[]</c>.</summary>
    internal static class YearFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField What = Set.Add(new TextField("what"));
        public static readonly NumberField Outlay = Set.Add(new NumberField("outlay", "price of the die, laid out at once"));
        public static readonly NumberField SavedPerThousandBalls = Set.Add(
            new NumberField("savedPerThousandBalls", "wear of dies left out; below 0 where it costs more"));
        public static readonly NumberField SavedPerYear = Set.Add(new NumberField("savedPerYear"));
        public static readonly NumberField PaybackMonths = Set.Add(
            new NumberField("paybackMonths", "null where nothing is saved") { OrNull = true, Unit = "months" });
        public static readonly NumberField NetPresentValue = Set.Add(
            new NumberField("netPresentValue", "null where no interest is known") { OrNull = true });
    }

    /// <summary>Fields of <c>sweep[]</c>.</summary>
    internal static class SweepFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm"));
        public static readonly WholeField Rows = Set.Add(new WholeField("rows"));
        public static readonly NumberField WastePercent = Set.Add(new NumberField("wastePercent"));
    }
}
