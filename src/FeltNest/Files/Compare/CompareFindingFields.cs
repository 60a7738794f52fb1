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

    /// <summary>Fields of <c>sweep[]</c>.</summary>
    internal static class SweepFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm"));
        public static readonly WholeField Rows = Set.Add(new WholeField("rows"));
        public static readonly NumberField WastePercent = Set.Add(new NumberField("wastePercent"));
    }
}
