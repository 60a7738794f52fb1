using System.Globalization;
using FeltNest.Files.Csv;
using FeltNest.Files.Json;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Files.Orders;

/// <summary>Writes a plan of orders as JSON (schema feltnest/order-plan/1), with the question in it so that it can be checked from the file
/// alone, and its work list as CSV.</summary>
public static class OrderPlanWriter
{
    /// <summary>The JSON file's bytes.</summary>
    public static byte[] Json(OrderPlan plan)
    {
        PlanCost cost = plan.Cost;
        using JsonOutput json = new();
        json.Text("schema", SchemaName.OrderPlan)
            .Number("cost", Money(cost.Total))
            .Text("currency", plan.Question.Rules.Currency)
            .Number("bound", plan.Bound is { } bound ? Money(bound) : null)
            .Number("gapPercent", plan.GapPercent)
            .Object("costs", costs => costs
                .Number("felt", Money(cost.Felt))
                .Number("keptValue", Money(cost.KeptValue))
                .Number("strikes", Money(cost.Strikes))
                .Number("dies", Money(cost.Dies))
                .Number("changeOvers", Money(cost.ChangeOvers)))
            .Objects("assignments", plan.Cuts, (item, cut) => item
                .Number("number", cut.Number)
                .Text("order", cut.Order.Name)
                .Text("roll", cut.Roll.Name)
                .Text("die", cut.Die.Name)
                .Text("press", cut.Press.Name)
                .Number("metres", cut.Metres)
                .Number("goodBalls", cut.GoodBalls)
                .Number("strikes", cut.Strikes)
                .Number("fromM", cut.FromM)
                .Number("startHour", cut.StartHour)
                .Number("endHour", cut.EndHour)
                .Text("day", Day(plan.Question.Rules.DayOf(cut.EndHour))))
            .Objects("purchases", plan.Purchases, (item, bought) => item
                .Text("offer", bought.Offer.Roll.Name)
                .Number("rolls", bought.Rolls)
                .Number("metres", bought.Metres)
                .Number("price", Money(bought.Price)))
            .Objects("shortfalls", plan.Results.Where(r => r.ShortBalls > 0 || r.ReserveShortBalls > 0), (item, result) => item
                .Text("order", result.Order.Name)
                .Number("balls", result.ShortBalls)
                .Number("reserveBalls", result.ReserveShortBalls)
                .Text("reason", result.Reason))
            .Objects("late", plan.Results.Where(r => r.DaysLate > 0), (item, result) => item
                .Text("order", result.Order.Name)
                .Text("due", Day(result.Order.Due))
                .Text("done", Day(result.Done!.Value))
                .Number("days", result.DaysLate))
            .Objects("remnants", plan.Remnants, (item, kept) => item
                .Text("roll", kept.Roll.Name)
                .Text("felt", kept.Roll.Felt)
                .Text("lot", kept.Roll.Lot)
                .Number("widthMm", kept.Roll.WidthMm)
                .Number("lengthM", kept.LengthM)
                .Flag("begun", kept.Begun)
                .Number("ageDays", kept.Roll.Received is { } day ? plan.Question.Rules.Start.DayNumber - day.DayNumber : null)
                .Objects("reserved", kept.Reserved, (part, held) => part.Text("order", held.Order.Name).Number("metres", held.Metres)))
            .Objects("dies", plan.Dies, (item, work) => item
                .Text("die", work.Die.Name)
                .Text("press", work.Press.Name)
                .Number("strikes", work.Strikes)
                .Flag("make", work.Make)
                .Number("reRules", work.ReRules)
                .Number("price", Money(work.Price))
                .Number("strikesAfter", work.StrikesAfter))
            .Object("search", search => search
                .Number("effort", plan.Proof.Effort)
                .Flag("cutShort", plan.Proof.CutShort)
                .Flag("made", plan.Proof.Searched)
                .Number("leastShortBalls", plan.Proof.LeastShort)
                .Number("leastLate", plan.Proof.LeastLate));
        Question(json, plan.Question);
        return json.Finish();
    }

    /// <summary>The CSV file's bytes: one line a piece of work.</summary>
    public static byte[] Csv(OrderPlan plan)
    {
        CsvText text = new CsvText()
            .Line("number", "order", "roll", "lot", "die", "press", "strikes", "metres", "fromM", "goodBalls", "startHour", "day", "due");
        foreach (OrderCut cut in plan.Cuts)
        {
            text.Line(
                Whole(cut.Number), cut.Order.Name, cut.Roll.Name, cut.Roll.Lot, cut.Die.Name, cut.Press.Name, Whole(cut.Strikes),
                CsvText.Number(Math.Round(cut.Metres, 6)),
                CsvText.Number(Math.Round(cut.FromM, 6)), Whole(cut.GoodBalls), CsvText.Number(Math.Round(cut.StartHour, 6)),
                Day(plan.Question.Rules.DayOf(cut.EndHour)), Day(cut.Order.Due));
        }

        return text.Finish();
    }

    /// <summary>A day as it is written.</summary>
    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    // Money to a millionth: far below any coin, and exactly a double of the same digits.
    private static double Money(decimal value) => (double)Math.Round(value, 6);

    private static void Question(JsonOutput json, OrderQuestion question)
    {
        OrderRules rules = question.Rules;
        json.Object("rules", item => item
                .Text("start", Day(rules.Start))
                .Number("hoursPerDay", rules.HoursPerDay)
                .Number("endLossMm", rules.EndLossMm)
                .Number("rejectPercent", rules.RejectPercent)
                .Number("unpairedPercent", rules.UnpairedPercent)
                .Number("remnantValuePercent", rules.RemnantValuePercent)
                .Number("leastRemnantM", rules.LeastRemnantM)
                .Number("leastCutM", rules.LeastCutM)
                .Number("perStrike", (double)rules.PerStrike)
                .Number("hourRate", (double)rules.HourRate))
            .Objects("orders", question.Orders, (item, order) => item
                .Text("order", order.Name)
                .Text("ball", order.Ball)
                .Number("balls", order.Balls)
                .Text("due", Day(order.Due))
                .Text("lots", order.OneLot ? "one" : "any")
                .Text("felt", order.Felt)
                .Number("reserveBalls", order.ReserveBalls))
            .Objects("stock", question.Rolls, Roll)
            .Objects("offers", question.Offers, (item, offer) =>
            {
                Roll(item, offer.Roll);
                item.Number("minimumM", offer.MinimumM);
            })
            .Objects("rack", question.Dies, (item, die) => item
                .Text("die", die.Name)
                .Text("ball", die.Ball)
                .Number("feedMm", die.Shape.FeedMm)
                .Number("lengthMm", die.Shape.LengthMm)
                .Number("acrossMm", die.Shape.AcrossMm)
                .Number("gapMm", die.Shape.GapMm)
                .Number("leastWidthMm", die.Shape.LeastWidthMm)
                .Number("mostWidthMm", die.MostWidthMm)
                .Objects("classes", die.Shape.ClassPanels, (part, count) => part.Number("panels", count))
                .Number("strikesLeft", die.StrikesLeft)
                .Number("makePrice", (double?)die.MakePrice)
                .Number("lifeStrikes", die.LifeStrikes)
                .Number("reRulePrice", (double)die.ReRulePrice)
                .Number("reRules", die.MostReRules))
            .Objects("presses", question.Presses, (item, press) => item
                .Text("press", press.Name)
                .Number("boardLengthMm", press.Bed.BoardLengthMm)
                .Number("boardWidthMm", press.Bed.BoardWidthMm)
                .Number("strokesPerMinute", press.StrokesPerMinute)
                .Number("changeOverMinutes", press.ChangeOverMinutes)
                .Number("hours", press.Hours)
                .Texts("dies", press.Dies));
    }

    private static void Roll(JsonOutput item, StockRoll roll) => item
        .Text("roll", roll.Name)
        .Text("felt", roll.Felt)
        .Text("lot", roll.Lot)
        .Number("widthMm", roll.WidthMm)
        .Number("lengthM", roll.LengthM)
        .Number("beginM", roll.BeginM)
        .Number("pricePerMetre", (double)roll.PricePerMetre)
        .Number("faultPercent", roll.FaultPercent)
        .Text("received", roll.Received is { } day ? Day(day) : null)
        .Objects("measured", roll.MeasuredShares, (part, share) => part.Text("die", share.Key).Number("goodShare", share.Value));
}
