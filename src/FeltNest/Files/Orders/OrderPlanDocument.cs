using FeltNest.Files.Fields;
using FeltNest.Files.Offers;
using FeltNest.Rolls.Orders.Clock;

namespace FeltNest.Files.Orders;

/// <summary>Orders planned against stock: every field of <c>feltnest/order-plan/1</c>.</summary>
internal static class OrderPlanDocument
{
    // Most entries of one list: far above what the planner takes and gives.
    private const int MostItems = 10_000;

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
    public static readonly FlagField BadlyShort = Fields.Add(
        new FlagField("badlyShort", "whether one ball in twenty or more of all that are wanted is missing"));
    public static readonly ObjectField Costs = Fields.Add(new ObjectField("costs", CostsFields.Set, "parts of the cost"));
    public static readonly ObjectsField Assignments =
        Fields.Add(new ObjectsField("assignments", AssignmentFields.Set, "the work") { Most = MostItems });
    public static readonly ObjectsField Mountings = Fields.Add(
        new ObjectsField("mountings", MountingFields.Set, "dies put on presses, press by press in order of time") { Most = MostItems });
    public static readonly ObjectsField Overtime = Fields.Add(
        new ObjectsField("overtime", OvertimeFields.Set, "overtime that is worked, press by press") { Most = MostItems });
    public static readonly ObjectsField Purchases =
        Fields.Add(new ObjectsField("purchases", PurchaseFields.Set, "rolls to buy") { Most = OffersReader.MostOffers });
    public static readonly ObjectsField Shortfalls = Fields.Add(
        new ObjectsField("shortfalls", ShortfallFields.Set, "orders that cannot be made whole") { Most = MostItems });
    public static readonly ObjectsField Late = Fields.Add(new ObjectsField("late", LateFields.Set, "orders late") { Most = MostItems });
    public static readonly ObjectsField Remnants = Fields.Add(
        new ObjectsField("remnants", RemnantFields.Set, "felt that goes back to stock or is reserved there") { Most = MostItems });
    public static readonly ObjectsField Dies = Fields.Add(
        new ObjectsField("dies", DieFields.Set, "dies used, in the order in which they are first mounted, press by press")
        {
            Most = MostItems,
        });
    public static readonly ObjectsField Changes = Fields.Add(
        new ObjectsField("changes", ChangeFields.Set, "what is otherwise than in the plan before, of which some is cut")
        {
            Most = MostItems,
            Optional = true,
        });
    public static readonly ObjectField Search = Fields.Add(new ObjectField("search", SearchFields.Set, "how far it is the best"));
    public static readonly ObjectField Rules =
        Fields.Add(new ObjectField("rules", OrderQuestionFields.RulesFields.Set, "what holds for all"));
    public static readonly ObjectsField Orders =
        Fields.Add(new ObjectsField("orders", OrderQuestionFields.OrderFields.Set, "the orders") { Most = OrdersReader.MostOrders });
    public static readonly ObjectsField Stock =
        Fields.Add(new ObjectsField("stock", OrderQuestionFields.StockFields.Set, "the rolls in stock") { Most = StockReader.MostRolls });
    public static readonly ObjectsField Offers = Fields.Add(
        new ObjectsField("offers", OrderQuestionFields.OfferFields.Set, "what can be bought; `roll` is the offer's name")
        {
            Most = OffersReader.MostOffers,
        });
    public static readonly ObjectsField Rack =
        Fields.Add(new ObjectsField("rack", OrderQuestionFields.RackFields.Set, "the dies") { Most = DiesReader.MostDies });
    public static readonly ObjectsField Presses =
        Fields.Add(new ObjectsField("presses", OrderQuestionFields.PressFields.Set, "the presses") { Most = MostPresses });

    /// <summary>Fields of <c>costs</c>.</summary>
    internal static class CostsFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly NumberField Felt = Set.Add(new NumberField("felt", "rolls begun and bought, whole, at their price"));
        public static readonly NumberField KeptValue = Set.Add(
            new NumberField("keptValue", "value of what goes back to stock of them, taken off"));
        public static readonly NumberField Strikes = Set.Add(new NumberField("strikes", "labour, machine and board"));
        public static readonly NumberField Dies = Set.Add(new NumberField("dies", "making and ruling dies"));
        public static readonly NumberField ChangeOvers = Set.Add(new NumberField("changeOvers", "hours of mounting dies"));
        public static readonly NumberField Overtime = Set.Add(new NumberField("overtime", "hours of overtime at their price"));
    }

    /// <summary>Fields of <c>assignments[]</c>.</summary>
    internal static class AssignmentFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly WholeField Number = Set.Add(
            new WholeField("number", "place in the work list, press by press; of a plan from a book numbered on from its last ticket"));
        public static readonly TextField Order = Set.Add(new TextField("order", "order"));
        public static readonly TextField Roll = Set.Add(new TextField("roll", "roll; of a purchase: offer and number"));
        public static readonly TextField Die = Set.Add(new TextField("die", "die"));
        public static readonly TextField Press = Set.Add(new TextField("press", "press"));
        public static readonly NumberField Metres = Set.Add(new NumberField("metres", "felt it takes, gap to the next piece included"));
        public static readonly WholeField GoodBalls = Set.Add(
            new WholeField(
                "goodBalls", 0, ShopRanges.MostCount, "whole good balls to expect after faults, rejects and panels without a partner"));
        public static readonly WholeField AlsoBalls = Set.Add(
            new WholeField(
                "alsoBalls", 0, ShopRanges.MostCount,
                "whole good balls of the layout's other part that come besides; they serve no order of the plan")
            {
                Optional = true,
            });
        public static readonly WholeField Strikes = Set.Add(new WholeField("strikes", 0, ShopRanges.MostCount, "strikes"));
        public static readonly NumberField FromM = Set.Add(
            new NumberField("fromM", "where its felt begins on the roll, m from the start it was measured from"));
        public static readonly FlagField RollChange = Set.Add(
            new FlagField("rollChange", "whether its roll is put on the press before it"));
        public static readonly NumberField StartHour = Set.Add(
            new NumberField(
                "startHour", 0, OpenHours.MostHours, "when its strikes begin, hours since 00:00 of the first day of cutting"));
        public static readonly NumberField EndHour = Set.Add(
            new NumberField("endHour", 0, OpenHours.MostHours, "when they end, hours since 00:00 of the first day of cutting"));
        public static readonly TextField Start = Set.Add(
            new TextField("start", "when its strikes begin, by the clock on the wall, to the minute, as 2026-03-02T06:35"));
        public static readonly TextField End = Set.Add(new TextField("end", "when they end, as 2026-03-02T06:35"));
        public static readonly DayField Day = Set.Add(new DayField("day", "day on which it ends"));
    }

    /// <summary>Fields of <c>mountings[]</c>.</summary>
    internal static class MountingFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Die = Set.Add(new TextField("die", "die"));
        public static readonly TextField Press = Set.Add(new TextField("press", "press"));
        public static readonly NumberField StartHour = Set.Add(
            new NumberField("startHour", 0, OpenHours.MostHours, "when it begins, hours since 00:00 of the first day of cutting"));
        public static readonly NumberField EndHour = Set.Add(new NumberField("endHour", 0, OpenHours.MostHours, "when it ends"));
        public static readonly FlagField Paid = Set.Add(
            new FlagField("paid", "false for a die that stood on the press already: it takes no time and costs nothing"));
    }

    /// <summary>Fields of <c>overtime[]</c>.</summary>
    internal static class OvertimeFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Press = Set.Add(new TextField("press", "press"));
        public static readonly TextField From = Set.Add(new TextField("from", "where it begins in the calendar of the press"));
        public static readonly NumberField Hours = Set.Add(
            new NumberField("hours", 0, OpenHours.MostHours, "hours of it that are worked"));
        public static readonly NumberField Price = Set.Add(new NumberField("price", "what they cost"));
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
        public static readonly WholeField Priority = Set.Add(
            new WholeField(ShopRanges.Priority, "weight of each of these days"));
        public static readonly ObjectsField PushedBy = Set.Add(
            new ObjectsField(
                "pushedBy", PushedFields.Set, "orders of higher priority without which it would be done on an earlier day"));
    }

    /// <summary>Fields of <c>late[].pushedBy[]</c>.</summary>
    internal static class PushedFields
    {
        internal static readonly FieldSet Set = new();

        public static readonly TextField Order = Set.Add(new TextField("order", "order of higher priority"));
        public static readonly WholeField Days = Set.Add(
            new WholeField("days", 0, ShopRanges.MostCount, "days sooner in the same sequence without it"));
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
        public static readonly TextField Press = Set.Add(new TextField("press", "first press it stands on"));
        public static readonly WholeField Mountings = Set.Add(
            new WholeField("mountings", 0, MostItems, "how often it is put on a press, standing there already counted"));
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
        public static readonly NumberField LeastShortBalls = Set.Add(new NumberField("leastShortBalls", "balls that any plan is short of"));
        public static readonly NumberField LeastLate = Set.Add(new NumberField("leastLate", "orders late in any plan as little short"));
        public static readonly NumberField LeastWeightedDays = Set.Add(
            new NumberField("leastWeightedDays", "days late, each order's times its priority, in any plan as little short"));
    }
}
