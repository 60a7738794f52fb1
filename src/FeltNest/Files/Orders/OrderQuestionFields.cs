using FeltNest.Files.Fields;
using FeltNest.Files.Presses;
using FeltNest.Files.Rolls;
using FeltNest.Rolls.Orders;

namespace FeltNest.Files.Orders;

/// <summary>Fields of the question that a plan of orders answers.</summary>
internal static class OrderQuestionFields
{
    // A week for a change of dies.
    private const double MostMinutes = 10_000;

    // Panels of one strike and kinds of them: far above what layouts have.
    private const int MostPanels = 1_000_000;
    private const int MostClasses = 1000;

    /// <summary>Fields of <c>rules</c>.</summary>
    internal static class RulesFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly DayField Start = Set.Add(new DayField("start", "first day of cutting"));
        public static readonly NumberField HoursPerDay = Set.Add(
            new NumberField(ShopRanges.HoursPerDay, "hours a press without a calendar of its own runs on a working day"));
        public static readonly NumberField EndLossMm = Set.Add(new NumberField("endLossMm", "lost at each roll end"));
        public static readonly NumberField RejectPercent = Set.Add(new NumberField("rejectPercent", 0, 100, "rejects"));
        public static readonly NumberField UnpairedPercent =
            Set.Add(new NumberField("unpairedPercent", 0, 100, "panels without a partner"));
        public static readonly NumberField RemnantValuePercent = Set.Add(
            new NumberField(ShopRanges.RemnantValue, "worth of felt kept, % of its price"));
        public static readonly NumberField LeastRemnantM =
            Set.Add(new NumberField("leastRemnantM", ShopRanges.LeastPiece, "shortest remnant kept"));
        public static readonly NumberField LeastCutM = Set.Add(new NumberField("leastCutM", ShopRanges.LeastPiece, "shortest piece cut"));
        public static readonly NumberField PerStrike = Set.Add(new NumberField("perStrike", ShopRanges.PlanAmount, "money for a strike"));
        public static readonly NumberField HourRate =
            Set.Add(new NumberField("hourRate", ShopRanges.PlanAmount, "money for an hour of mounting dies"));
        public static readonly EnumField<NapHandling> Nap = Set.Add(
            new EnumField<NapHandling>(
                "nap", "rolls against the feed under a one-way layout: turned end for end, or no order cut from both directions")
            {
                Default = EnumWord.Of(NapHandling.Turn),
            });
    }

    /// <summary>Fields of <c>orders[]</c>.</summary>
    internal static class OrderFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Order = Set.Add(new TextField("order", "name"));
        public static readonly TextField Ball = Set.Add(new TextField("ball", "ball"));
        public static readonly WholeField Balls = Set.Add(new WholeField("balls", 0, ShopRanges.MostCount, "good balls wanted"));
        public static readonly DayField Due = Set.Add(new DayField("due", "day wanted"));
        public static readonly WordField Lots =
            Set.Add(new WordField("lots", [OrdersListing.OneLot, OrdersListing.AnyLot], "whether all its felt is of one lot"));
        public static readonly TextField Felt = Set.Add(new TextField("felt", "felt wanted, or null for any") { OrNull = true });
        public static readonly WholeField ReserveBalls = Set.Add(
            new WholeField("reserveBalls", 0, ShopRanges.MostCount, "balls for which felt is reserved"));
        public static readonly WholeField Priority = Set.Add(
            new WholeField(ShopRanges.Priority, "weight of a day late"));
        public static readonly ObjectField Pins = Set.Add(
            new ObjectField("pins", OrderPinsFields.Set, "what it is held to and kept from") { Optional = true });
    }

    /// <summary>Fields of <c>stock[]</c>.</summary>
    internal static class StockFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Roll = Set.Add(new TextField("roll", "name"));
        public static readonly TextField Felt = Set.Add(new TextField("felt", "felt"));
        public static readonly TextField Lot = Set.Add(new TextField("lot", "shade lot"));
        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm", "width"));
        public static readonly NumberField LengthM = Set.Add(new NumberField("lengthM", 0, ShopRanges.MostRollM, "length that is left"));
        public static readonly NumberField BeginM = Set.Add(
            new NumberField(
                "beginM", 0, ShopRanges.MostRollM,
                "where the usable roll starts on the roll as measured; places on the roll count from the measured start"));
        public static readonly NumberField PricePerMetre = Set.Add(
            new NumberField("pricePerMetre", ShopRanges.PlanAmount, "price of a running metre, in the plan's currency"));
        public static readonly NumberField FaultPercent = Set.Add(
            new NumberField("faultPercent", 0, 100, "panels lost to faults where the roll was not measured"));
        public static readonly DayField Received =
            Set.Add(new DayField("received", "day it came or will come, yyyy-MM-dd; null for one that is there") { OrNull = true });
        public static readonly WordField NapToward = Set.Add(
            new WordField("napToward", NapWord.Words, "way the nap lies in stock; left out where nobody said") { Optional = true });
        public static readonly FlagField Turned = Set.Add(
            new FlagField("turned", "turned end for end before it is cut: places on it count from what was its end") { Default = false });
        public static readonly ObjectsField Measured = Set.Add(
            new ObjectsField(
                "measured", MeasuredFields.Set, "what strikes planned on the measured roll give; empty where it was not measured")
            {
                Most = DiesReader.MostDies,
            });
    }

    /// <summary>Fields of <c>stock[].measured[]</c>.</summary>
    internal static class MeasuredFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Die = Set.Add(new TextField("die", "die"));
        public static readonly NumberField GoodShare = Set.Add(
            new NumberField("goodShare", 0, 1, "share of the panels struck in line that are good, 0 to 1"));
    }

    /// <summary>Fields of <c>offers[]</c>.</summary>
    internal static class OfferFields
    {
        internal static readonly FieldSet Set = new(StockFields.Set);

        public static readonly NumberField MinimumM = Set.Add(new NumberField("minimumM", "least length sold"));
    }

    /// <summary>Fields of <c>rack[]</c>.</summary>
    internal static class RackFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Die = Set.Add(new TextField("die", "name"));
        public static readonly TextField Ball = Set.Add(new TextField("ball", "ball"));
        public static readonly NumberField FeedMm =
            Set.Add(new NumberField("feedMm", 0, NumberField.NoMost, "advance from strike to strike") { EndsExcluded = true });
        public static readonly NumberField LengthMm = Set.Add(new NumberField("lengthMm", "extent of a strike along the roll"));
        public static readonly NumberField AcrossMm = Set.Add(new NumberField("acrossMm", "extent across"));
        public static readonly NumberField GapMm = Set.Add(new NumberField("gapMm", "gap to other cuts"));
        public static readonly NumberField LeastWidthMm = Set.Add(new NumberField("leastWidthMm", "narrowest roll, trims included"));
        public static readonly NumberField MostWidthMm = Set.Add(new NumberField("mostWidthMm", "widest roll"));
        public static readonly FlagField OneWay = Set.Add(
            new FlagField("oneWay", "all its panels point one way along the nap") { Default = false });
        public static readonly ObjectsField Classes =
            Set.Add(new ObjectsField("classes", ClassFields.Set, "pairing groups") { Most = MostClasses });
        public static readonly TextField AlsoBall = Set.Add(
            new TextField("alsoBall", "ball of the layout's other part, which a strike cuts besides") { Optional = true });
        public static readonly ObjectsField AlsoClasses = Set.Add(
            new ObjectsField("alsoClasses", ClassFields.Set, "pairing groups of the other part") { Most = MostClasses, Optional = true });
        public static readonly WholeField StrikesLeft = Set.Add(new WholeField("strikesLeft", 0, ShopRanges.MostCount, "strikes left"));
        public static readonly NumberField MakePrice = Set.Add(
            new NumberField("makePrice", ShopRanges.PlanAmount, "price to make it; null for a die that is there") { OrNull = true });
        public static readonly WholeField LifeStrikes =
            Set.Add(new WholeField("lifeStrikes", 0, ShopRanges.MostCount, "strikes of a new rule"));
        public static readonly NumberField ReRulePrice =
            Set.Add(new NumberField("reRulePrice", ShopRanges.PlanAmount, "price of a new rule"));
        public static readonly WholeField ReRules = Set.Add(new WholeField(ShopRanges.ReRules, "how often it can be ruled again"));
        public static readonly DayField From = Set.Add(
            new DayField("from", "day from which it is there; null for one that is there") { OrNull = true });
        public static readonly WholeField MakeDays = Set.Add(
            new WholeField("makeDays", 0, ShopRanges.MostWaitDays, "days until it is made, from the first day of cutting"));
    }

    /// <summary>Fields of <c>rack[].classes[]</c>.</summary>
    internal static class ClassFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Panels = Set.Add(new WholeField("panels", 0, MostPanels, "panels in one strike"));
    }

    /// <summary>Fields of <c>presses[]</c>.</summary>
    internal static class PressFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Press = Set.Add(new TextField("press", "name"));
        public static readonly NumberField BoardLengthMm = Set.Add(new NumberField("boardLengthMm", "longest board"));
        public static readonly NumberField BoardWidthMm = Set.Add(new NumberField("boardWidthMm", "widest board"));
        public static readonly NumberField StrokesPerMinute = Set.Add(new NumberField("strokesPerMinute", "strikes a minute"));
        public static readonly NumberField ChangeOverMinutes = Set.Add(
            new NumberField("changeOverMinutes", 0, MostMinutes, "minutes to mount a die"));
        public static readonly NumberField Hours = Set.Add(
            new NumberField("hours", "hours it may run; null for no limit") { OrNull = true });
        public static readonly TextsField Dies = Set.Add(new TextsField("dies", "dies that fit; empty where the bed decides"));
        public static readonly NumberField RollChangeMinutes = Set.Add(
            new NumberField(ShopRanges.RollChange, "minutes to change the roll"));
        public static readonly TextField MountedDie = Set.Add(
            new TextField("mountedDie", "die that stands on it at the start; null for none") { OrNull = true });
        public static readonly ObjectField Calendar = Set.Add(
            new ObjectField("calendar", CalendarFields.Set, "when it runs; null for the usual days of `rules`") { OrNull = true });
    }
}
