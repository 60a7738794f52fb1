using System.Globalization;
using FeltNest.Files.Json;
using FeltNest.Files.Presses;
using FeltNest.Files.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.Files.Orders.OrderPlanDocument;
using static FeltNest.Files.Orders.OrderQuestionFields;

namespace FeltNest.Files.Orders;

/// <summary>Writes a plan of orders as JSON (schema feltnest/order-plan/1), with the question in it so that it can be checked from the file
/// alone, and its work list as CSV.</summary>
internal static class OrderPlanWriter
{
    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(OrderPlan plan)
    {
        PlanCost cost = plan.Cost;
        using JsonOutput json = new(OrderPlanDocument.Document);
        json.Number(OrderPlanDocument.Cost, Money(cost.Total))
            .Text(OrderPlanDocument.Currency, plan.Question.Rules.Currency)
            .Number(OrderPlanDocument.Bound, plan.Bound is { } bound ? Money(bound) : null)
            .Number(OrderPlanDocument.GapPercent, plan.GapPercent)
            .Flag(OrderPlanDocument.BadlyShort, plan.BadlyShort)
            .Object(OrderPlanDocument.Costs, costs => costs
                .Number(CostsFields.Felt, Money(cost.Felt))
                .Number(CostsFields.KeptValue, Money(cost.KeptValue))
                .Number(CostsFields.Strikes, Money(cost.Strikes))
                .Number(CostsFields.Dies, Money(cost.Dies))
                .Number(CostsFields.ChangeOvers, Money(cost.ChangeOvers))
                .Number(CostsFields.Overtime, Money(cost.Overtime)));
        Work(json, plan);
        Answer(json, plan);
        if (plan.Changes is { } changes)
        {
            json.Objects(OrderPlanDocument.Changes, changes, ChangeFields.Write);
        }

        Search(json, plan.Proof);
        Question(json, plan.Question);
        return json.Finish();
    }

    private static void Search(JsonOutput json, PlanProof proof) => json
        .Object(OrderPlanDocument.Search, search => search
            .Number(SearchFields.Effort, proof.Effort)
            .Flag(SearchFields.CutShort, proof.CutShort)
            .Number(SearchFields.LeastShortBalls, proof.LeastShort)
            .Number(SearchFields.LeastLate, proof.LeastLate)
            .Number(SearchFields.LeastWeightedDays, proof.LeastWeightedDays));

    private static void Work(JsonOutput json, OrderPlan plan) => json
        .Objects(OrderPlanDocument.Assignments, plan.Cuts, (item, cut) => Cut(item, plan, cut));

    private static void Cut(JsonOutput item, OrderPlan plan, OrderCut cut)
    {
        item.Number(AssignmentFields.Number, cut.Number)
            .Text(AssignmentFields.Order, cut.Order.Name)
            .Text(AssignmentFields.Roll, cut.Roll.Name)
            .Text(AssignmentFields.Die, cut.Die.Name)
            .Text(AssignmentFields.Press, cut.Press.Name)
            .Number(AssignmentFields.Metres, cut.Metres)
            .Number(AssignmentFields.GoodBalls, cut.GoodBalls)
            .Number(AssignmentFields.Strikes, cut.Strikes)
            .Number(AssignmentFields.FromM, cut.FromM)
            .Flag(AssignmentFields.RollChange, cut.RollChange)
            .Number(AssignmentFields.StartHour, cut.StartHour)
            .Number(AssignmentFields.EndHour, cut.EndHour)
            .Text(AssignmentFields.Start, MomentText.Of(plan.Question.Rules.MomentOf(cut.StartHour)))
            .Text(AssignmentFields.End, MomentText.Of(plan.Question.Rules.MomentOf(cut.EndHour)))
            .Text(AssignmentFields.Day, Day(plan.Question.Rules.DayOf(cut.EndHour)));
        if (cut.Die.Shape.AlsoBall is not null)
        {
            item.Number(AssignmentFields.AlsoBalls, cut.AlsoBalls);
        }
    }

    // What is mounted, bought, short, late, kept and made.
    private static void Answer(JsonOutput json, OrderPlan plan) => json
        .Objects(OrderPlanDocument.Mountings, plan.Mountings, (item, mounting) => item
            .Text(MountingFields.Die, mounting.Die.Name)
            .Text(MountingFields.Press, mounting.Press.Name)
            .Number(MountingFields.StartHour, mounting.StartHour)
            .Number(MountingFields.EndHour, mounting.EndHour)
            .Flag(MountingFields.Paid, mounting.Paid))
        .Objects(OrderPlanDocument.Overtime, plan.Overtime, (item, over) => item
            .Text(OvertimeFields.Press, over.Press.Name)
            .Text(OvertimeFields.From, MomentText.Of(over.Span.From))
            .Number(OvertimeFields.Hours, over.Hours)
            .Number(OvertimeFields.Price, Money(over.Price)))
        .Objects(OrderPlanDocument.Purchases, plan.Purchases, (item, bought) => item
            .Text(PurchaseFields.Offer, bought.Offer.Roll.Name)
            .Number(PurchaseFields.Rolls, bought.Rolls)
            .Number(PurchaseFields.Metres, bought.Metres)
            .Number(PurchaseFields.Price, Money(bought.Price)))
        .Objects(OrderPlanDocument.Shortfalls, plan.Results
        .Where(r => r.ShortBalls > 0 || r.ReserveShortBalls > 0), (item, result) => item
            .Text(ShortfallFields.Order, result.Order.Name)
            .Number(ShortfallFields.Balls, result.ShortBalls)
            .Number(ShortfallFields.ReserveBalls, result.ReserveShortBalls)
            .Text(ShortfallFields.Reason, result.Reason))
        .Objects(OrderPlanDocument.Late, plan.Results.Where(r => r.DaysLate > 0), (item, result) => item
            .Text(LateFields.Order, result.Order.Name)
            .Text(LateFields.Due, Day(result.Order.Due))
            .Text(LateFields.Done, Day(result.Done!.Value))
            .Number(LateFields.Days, result.DaysLate)
            .Number(LateFields.Priority, result.Order.Priority)
            .Objects(
                LateFields.PushedBy, result.PushedBy,
                (part, delay) => part.Text(PushedFields.Order, delay.Rush.Name).Number(PushedFields.Days, delay.Days)))
        .Objects(OrderPlanDocument.Remnants, plan.Remnants, (item, kept) => item
            .Text(RemnantFields.Roll, kept.Roll.Name)
            .Text(RemnantFields.Felt, kept.Roll.Felt)
            .Text(RemnantFields.Lot, kept.Roll.Lot)
            .Number(RemnantFields.WidthMm, kept.Roll.WidthMm)
            .Number(RemnantFields.LengthM, kept.LengthM)
            .Flag(RemnantFields.Begun, kept.Begun)
            .Number(RemnantFields.AgeDays, kept.Roll.Received is { } day ? plan.Question.Rules.Start.DayNumber - day.DayNumber : null)
            .Objects(
                RemnantFields.Reserved, kept.Reserved,
                (part, held) => part.Text(ReservedFields.Order, held.Order.Name).Number(ReservedFields.Metres, held.Metres)))
        .Objects(OrderPlanDocument.Dies, plan.Dies, (item, work) => item
            .Text(DieFields.Die, work.Die.Name)
            .Text(DieFields.Press, work.Press.Name)
            .Number(DieFields.Mountings, work.Mountings)
            .Number(DieFields.Strikes, work.Strikes)
            .Flag(DieFields.Make, work.Make)
            .Number(DieFields.ReRules, work.ReRules)
            .Number(DieFields.Price, Money(work.Price))
            .Number(DieFields.StrikesAfter, work.StrikesAfter));

    /// <summary>The CSV file's bytes: one line a piece of work.</summary>
    public static byte[] Csv(OrderPlan plan) =>
        WorkListing.Columns.Csv(plan.Cuts.Select(cut => new WorkListing.Line(cut, plan.Question.Rules)));

    /// <summary>A day as it is written.</summary>
    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    // Money to a millionth: far below any coin, and exactly a double of the same digits.
    private static double Money(decimal value) => (double)Math.Round(value, 6);

    // Long because it is one list of fields in the order of the file.
    private static void Question(JsonOutput json, OrderRequest question)
    {
        OrderRules rules = question.Rules;
        json.Object(OrderPlanDocument.Rules, item => item
                .Text(RulesFields.Start, Day(rules.Start))
                .Number(RulesFields.HoursPerDay, rules.HoursPerDay)
                .Number(RulesFields.EndLossMm, rules.EndLossMm)
                .Number(RulesFields.RejectPercent, rules.RejectPercent)
                .Number(RulesFields.UnpairedPercent, rules.UnpairedPercent)
                .Number(RulesFields.RemnantValuePercent, rules.RemnantValuePercent)
                .Number(RulesFields.LeastRemnantM, rules.LeastRemnantM)
                .Number(RulesFields.LeastCutM, rules.LeastCutM)
                .Number(RulesFields.PerStrike, (double)rules.PerStrike)
                .Number(RulesFields.HourRate, (double)rules.HourRate)
                .Text(RulesFields.Nap, EnumWord.Of(rules.Nap)))
            .Objects(OrderPlanDocument.Orders, question.Orders, Order)
            .Objects(OrderPlanDocument.Stock, question.Rolls, Roll)
            .Objects(OrderPlanDocument.Offers, question.Offers, (item, offer) =>
            {
                Roll(item, offer.Roll);
                item.Number(OfferFields.MinimumM, offer.MinimumM);
            })
            .Objects(OrderPlanDocument.Rack, question.Dies, Die)
            .Objects(OrderPlanDocument.Presses, question.Presses, (item, press) => item
                .Text(PressFields.Press, press.Name)
                .Number(PressFields.BoardLengthMm, press.Bed.BoardLengthMm)
                .Number(PressFields.BoardWidthMm, press.Bed.BoardWidthMm)
                .Number(PressFields.StrokesPerMinute, press.StrokesPerMinute)
                .Number(PressFields.ChangeOverMinutes, press.ChangeOverMinutes)
                .Number(PressFields.Hours, press.Hours)
                .Texts(PressFields.Dies, press.Dies)
                .Number(PressFields.RollChangeMinutes, press.RollChangeMinutes)
                .Text(PressFields.MountedDie, press.MountedDie)
                .ObjectOrNull(PressFields.Calendar, press.Calendar, CalendarWriter.Write));
    }

    private static void Die(JsonOutput item, CutDie die)
    {
        item.Text(RackFields.Die, die.Name)
            .Text(RackFields.Ball, die.Ball)
            .Number(RackFields.FeedMm, die.Shape.FeedMm)
            .Number(RackFields.LengthMm, die.Shape.LengthMm)
            .Number(RackFields.AcrossMm, die.Shape.AcrossMm)
            .Number(RackFields.GapMm, die.Shape.GapMm)
            .Number(RackFields.LeastWidthMm, die.Shape.LeastWidthMm)
            .Number(RackFields.MostWidthMm, die.MostWidthMm)
            .Flag(RackFields.OneWay, die.Shape.OneWay)
            .Objects(RackFields.Classes, die.Shape.ClassPanels, (part, count) => part.Number(ClassFields.Panels, count))
            .Number(RackFields.StrikesLeft, die.StrikesLeft)
            .Number(RackFields.MakePrice, (double?)die.MakePrice)
            .Number(RackFields.LifeStrikes, die.LifeStrikes)
            .Number(RackFields.ReRulePrice, (double)die.ReRulePrice)
            .Number(RackFields.ReRules, die.MostReRules)
            .Text(RackFields.From, die.From is { } day ? Day(day) : null)
            .Number(RackFields.MakeDays, die.MakeDays);
        if (die.Shape.AlsoBall is { } also)
        {
            item.Text(RackFields.AlsoBall, also)
                .Objects(RackFields.AlsoClasses, die.Shape.AlsoClasses, (part, count) => part.Number(ClassFields.Panels, count));
        }
    }

    private static void Order(JsonOutput item, CoverOrder order)
    {
        item.Text(OrderFields.Order, order.Name)
            .Text(OrderFields.Ball, order.Ball)
            .Number(OrderFields.Balls, order.Balls)
            .Text(OrderFields.Due, Day(order.Due))
            .Text(OrderFields.Lots, order.OneLot ? "one" : "any")
            .Text(OrderFields.Felt, order.Felt)
            .Number(OrderFields.ReserveBalls, order.ReserveBalls)
            .Number(OrderFields.Priority, order.Priority);
        if (order.Pins is { } pins)
        {
            item.Object(OrderFields.Pins, part => OrderPinsFields.Write(part, pins));
        }
    }

    private static void Roll(JsonOutput item, StockRoll roll)
    {
        item.Text(StockFields.Roll, roll.Name)
            .Text(StockFields.Felt, roll.Felt)
            .Text(StockFields.Lot, roll.Lot)
            .Number(StockFields.WidthMm, roll.WidthMm)
            .Number(StockFields.LengthM, roll.LengthM)
            .Number(StockFields.BeginM, roll.BeginM)
            .Number(StockFields.PricePerMetre, (double)roll.PricePerMetre)
            .Number(StockFields.FaultPercent, roll.FaultPercent)
            .Text(StockFields.Received, roll.Received is { } day ? Day(day) : null)
            .Flag(StockFields.Turned, roll.Turned);
        if (roll.Nap is { } nap)
        {
            item.Text(StockFields.NapToward, NapWord.Of(nap));
        }

        item.Objects(
            StockFields.Measured, roll.MeasuredShares,
            (part, share) => part.Text(MeasuredFields.Die, share.Key).Number(MeasuredFields.GoodShare, share.Value));
    }
}
