using FeltNest.Files.Fields;
using FeltNest.Files.Offers;

namespace FeltNest.Files.Orders;

/// <summary>Orders planned against stock: every field of <c>feltnest/order-plan/1</c>.</summary>
internal static class OrderPlanDocument
{
    // Most entries of one list: far above what the planner takes and gives.
    private const int MostItems = 10_000;

    // Hours of work from the start: eleven years without a break.
    private const double MostHours = 100_000;

    // A week for a change of dies.
    private const double MostMinutes = 10_000;

    // Panels of one strike and kinds of them: far above what layouts have.
    private const int MostPanels = 1_000_000;
    private const int MostClasses = 1000;

    // More presses than any one room has.
    private const int MostPresses = 100;

    private static readonly FieldSet Fields = new();

    /// <summary>The document.</summary>
    public static readonly Document Document = new()
    {
        Schema = SchemaName.OrderPlan,
        Title = "Orders planned against stock",
        Fields = Fields,
    };

    public static readonly NumberField Cost = Fields.Add(new NumberField("cost", ShopRanges.PlanAmount, "cost of the plan"));
    public static readonly CurrencyField Currency = Fields.Add(new CurrencyField("currency", "its currency"));
    public static readonly NumberField Bound = Fields.Add(
        new NumberField(
            "bound", ShopRanges.PlanAmount,
            "what no plan with as few balls short and as few orders late can cost less than; null where nothing worth saying is known: "
                + "no bound, one below half the cost, or one above it")
        {
            OrNull = true,
        });
    public static readonly NumberField GapPercent = Fields.Add(
        new NumberField("gapPercent", "100 (cost - bound)/cost; up to 0.01 counts as proved; null where there is no bound")
        {
            OrNull = true,
        });
    public static readonly ObjectField Costs = Fields.Add(new ObjectField("costs", CostsFields.Set, "parts of the cost"));
    public static readonly ObjectsField Assignments =
        Fields.Add(new ObjectsField("assignments", AssignmentFields.Set, "the work") { Most = MostItems });
    public static readonly ObjectsField Purchases =
        Fields.Add(new ObjectsField("purchases", PurchaseFields.Set, "rolls to buy") { Most = OffersReader.MostOffers });
    public static readonly ObjectsField Shortfalls = Fields.Add(
        new ObjectsField("shortfalls", ShortfallFields.Set, "orders that cannot be made whole") { Most = MostItems });
    public static readonly ObjectsField Late = Fields.Add(new ObjectsField("late", LateFields.Set, "orders late") { Most = MostItems });
    public static readonly ObjectsField Remnants = Fields.Add(
        new ObjectsField("remnants", RemnantFields.Set, "felt that goes back to stock or is reserved there") { Most = MostItems });
    public static readonly ObjectsField Dies = Fields.Add(
        new ObjectsField("dies", DieFields.Set, "dies used, in the order of their campaigns") { Most = MostItems });
    public static readonly ObjectField Search = Fields.Add(new ObjectField("search", SearchFields.Set, "how far it is the best"));
    public static readonly ObjectField Rules = Fields.Add(new ObjectField("rules", RulesFields.Set, "what holds for all"));
    public static readonly ObjectsField Orders =
        Fields.Add(new ObjectsField("orders", OrderFields.Set, "the orders") { Most = OrdersReader.MostOrders });
    public static readonly ObjectsField Stock =
        Fields.Add(new ObjectsField("stock", StockFields.Set, "the rolls in stock") { Most = StockReader.MostRolls });
    public static readonly ObjectsField Offers = Fields.Add(
        new ObjectsField("offers", OfferFields.Set, "what can be bought; `roll` is the offer's name") { Most = OffersReader.MostOffers });
    public static readonly ObjectsField Rack =
        Fields.Add(new ObjectsField("rack", RackFields.Set, "the dies") { Most = DiesReader.MostDies });
    public static readonly ObjectsField Presses =
        Fields.Add(new ObjectsField("presses", PressFields.Set, "the presses") { Most = MostPresses });

    /// <summary>Fields of <c>costs</c>.</summary>
    internal static class CostsFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Felt = Set.Add(new NumberField("felt", "rolls begun and bought, whole, at their price"));
        public static readonly NumberField KeptValue = Set.Add(
            new NumberField("keptValue", "value of what goes back to stock of them, taken off"));
        public static readonly NumberField Strikes = Set.Add(new NumberField("strikes", "labour, machine and board"));
        public static readonly NumberField Dies = Set.Add(new NumberField("dies", "making and ruling dies"));
        public static readonly NumberField ChangeOvers = Set.Add(new NumberField("changeOvers", "hours of changing dies"));
    }

    /// <summary>Fields of <c>assignments[]</c>.</summary>
    internal static class AssignmentFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Number = Set.Add(new WholeField("number", "place in the work list, press by press"));
        public static readonly TextField Order = Set.Add(new TextField("order", "order"));
        public static readonly TextField Roll = Set.Add(new TextField("roll", "roll; of a purchase: offer and number"));
        public static readonly TextField Die = Set.Add(new TextField("die", "die"));
        public static readonly TextField Press = Set.Add(new TextField("press", "press"));
        public static readonly NumberField Metres = Set.Add(new NumberField("metres", "felt it takes, gap to the next piece included"));
        public static readonly WholeField GoodBalls = Set.Add(
            new WholeField(
                "goodBalls", 0, ShopRanges.MostCount, "whole good balls to expect after faults, rejects and panels without a partner"));
        public static readonly WholeField Strikes = Set.Add(new WholeField("strikes", 0, ShopRanges.MostCount, "strikes"));
        public static readonly NumberField FromM = Set.Add(
            new NumberField("fromM", "where its felt begins on the roll, m from the start it was measured from"));
        public static readonly NumberField StartHour = Set.Add(
            new NumberField("startHour", -1, MostHours, "hour of the press at which it begins"));
        public static readonly NumberField EndHour = Set.Add(new NumberField("endHour", -1, MostHours, "hour at which it ends"));
        public static readonly DayField Day = Set.Add(new DayField("day", "day on which it ends"));
    }

    /// <summary>Fields of <c>purchases[]</c>.</summary>
    internal static class PurchaseFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Offer = Set.Add(new TextField("offer", "offer"));
        public static readonly WholeField Rolls = Set.Add(new WholeField("rolls", 0, MostItems, "rolls"));
        public static readonly NumberField Metres = Set.Add(new NumberField("metres", "length"));
        public static readonly NumberField Price = Set.Add(new NumberField("price", "what they cost"));
    }

    /// <summary>Fields of <c>shortfalls[]</c>.</summary>
    internal static class ShortfallFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Order = Set.Add(new TextField("order", "order"));
        public static readonly WholeField Balls = Set.Add(new WholeField("balls", 0, ShopRanges.MostCount, "balls short"));
        public static readonly WholeField ReserveBalls = Set.Add(
            new WholeField("reserveBalls", 0, ShopRanges.MostCount, "balls of its reserve short"));
        public static readonly TextField Reason = Set.Add(
            new TextField("reason", "why, and what would help; null where only the reserve is short") { OrNull = true });
    }

    /// <summary>Fields of <c>late[]</c>.</summary>
    internal static class LateFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Order = Set.Add(new TextField("order", "order"));
        public static readonly DayField Due = Set.Add(new DayField("due", "day wanted"));
        public static readonly DayField Done = Set.Add(new DayField("done", "day reached"));
        public static readonly WholeField Days = Set.Add(new WholeField("days", 0, ShopRanges.MostCount, "days between"));
    }

    /// <summary>Fields of <c>remnants[]</c>.</summary>
    internal static class RemnantFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Roll = Set.Add(new TextField("roll", "roll"));
        public static readonly TextField Felt = Set.Add(new TextField("felt", "felt"));
        public static readonly TextField Lot = Set.Add(new TextField("lot", "shade lot"));
        public static readonly NumberField WidthMm = Set.Add(new NumberField("widthMm", "width"));
        public static readonly NumberField LengthM = Set.Add(new NumberField("lengthM", 0, ShopRanges.MostRollM, "length"));
        public static readonly FlagField Begun = Set.Add(new FlagField("begun", "whether the roll was begun"));
        public static readonly NumberField AgeDays = Set.Add(
            new NumberField("ageDays", "days since it came, on the first day of cutting; null where that is not known") { OrNull = true });
        public static readonly ObjectsField Reserved = Set.Add(new ObjectsField("reserved", ReservedFields.Set, "what is reserved of it"));
    }

    /// <summary>Fields of <c>remnants[].reserved[]</c>.</summary>
    internal static class ReservedFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Order = Set.Add(new TextField("order", "order"));
        public static readonly NumberField Metres = Set.Add(new NumberField("metres", "metres reserved for its later rejects"));
    }

    /// <summary>Fields of <c>dies[]</c>.</summary>
    internal static class DieFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Die = Set.Add(new TextField("die", "die"));
        public static readonly TextField Press = Set.Add(new TextField("press", "press it stands on"));
        public static readonly WholeField Strikes = Set.Add(new WholeField("strikes", 0, ShopRanges.MostCount, "strikes"));
        public static readonly FlagField Make = Set.Add(new FlagField("make", "whether it must be made first"));
        public static readonly WholeField ReRules = Set.Add(new WholeField("reRules", "how often it gets a new rule"));
        public static readonly NumberField Price = Set.Add(new NumberField("price", "what that costs"));
        public static readonly WholeField StrikesAfter = Set.Add(new WholeField("strikesAfter", "strikes left afterwards"));
    }

    /// <summary>Fields of <c>search</c>.</summary>
    internal static class SearchFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Effort = Set.Add(new WholeField("effort", "counted work allowed"));
        public static readonly FlagField CutShort = Set.Add(new FlagField("cutShort", "stopped by the clock or by hand"));
        public static readonly FlagField Made = Set.Add(
            new FlagField("made", "false where the question is too large for a search and the plan is the one of first fit"));
        public static readonly NumberField LeastShortBalls = Set.Add(new NumberField("leastShortBalls", "balls that any plan is short of"));
        public static readonly NumberField LeastLate = Set.Add(new NumberField("leastLate", "orders late in any plan as little short"));
    }

    /// <summary>Fields of <c>rules</c>.</summary>
    internal static class RulesFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly DayField Start = Set.Add(new DayField("start", "first day of cutting"));
        public static readonly NumberField HoursPerDay = Set.Add(
            new NumberField(ShopRanges.HoursPerDay, "hours a press runs on a working day"));
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
            Set.Add(new NumberField("hourRate", ShopRanges.PlanAmount, "money for an hour of changing dies"));
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
                "where its the usable roll starts on the roll as measured; places on the roll count from the measured start"));
        public static readonly NumberField PricePerMetre = Set.Add(
            new NumberField("pricePerMetre", ShopRanges.PlanAmount, "price of a running metre, in the plan's currency"));
        public static readonly NumberField FaultPercent = Set.Add(
            new NumberField("faultPercent", 0, 100, "panels lost to faults where the roll was not measured"));
        public static readonly DayField Received = Set.Add(new DayField("received", "day it came, yyyy-MM-dd, or null") { OrNull = true });
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
        public static readonly ObjectsField Classes =
            Set.Add(new ObjectsField("classes", ClassFields.Set, "pairing groups") { Most = MostClasses });
        public static readonly WholeField StrikesLeft = Set.Add(new WholeField("strikesLeft", 0, ShopRanges.MostCount, "strikes left"));
        public static readonly NumberField MakePrice = Set.Add(
            new NumberField("makePrice", ShopRanges.PlanAmount, "price to make it; null for a die that is there") { OrNull = true });
        public static readonly WholeField LifeStrikes =
            Set.Add(new WholeField("lifeStrikes", 0, ShopRanges.MostCount, "strikes of a new rule"));
        public static readonly NumberField ReRulePrice =
            Set.Add(new NumberField("reRulePrice", ShopRanges.PlanAmount, "price of a new rule"));
        public static readonly WholeField ReRules = Set.Add(new WholeField(ShopRanges.ReRules, "how often it can be ruled again"));
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
            new NumberField("changeOverMinutes", 0, MostMinutes, "minutes to change a die"));
        public static readonly NumberField Hours = Set.Add(
            new NumberField("hours", "hours it may run; null for no limit") { OrNull = true });
        public static readonly TextsField Dies = Set.Add(new TextsField("dies", "dies that fit; empty where the bed decides"));
    }
}
