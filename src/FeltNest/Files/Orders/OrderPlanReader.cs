using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Files.Orders;

/// <summary>Reads a plan of orders (schema feltnest/order-plan/1) for checking.</summary>
public static class OrderPlanReader
{
    /// <summary>The plan of a JSON object already read from a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    internal static StatedOrders Read(string path, JsonElement root)
    {
        JsonInput.SchemaOf(root, path, SchemaName.OrderPlan);
        JsonFields top = JsonFields.Top(
            path, root, "schema", "cost", "currency", "bound", "gapPercent", "costs", "assignments", "purchases", "shortfalls", "late", "remnants", "dies", "search", "rules", "orders", "stock", "offers",
            "rack", "presses");
        OrderQuestion question = OrderPlanQuestion.Read(top);
        List<RollPurchase> bought = [.. top.Objects("purchases", "offer", "rolls", "metres", "price").Select(item =>
            new RollPurchase(Named(item, "offer", question.Offers, o => o.Roll.Name), item.Whole("rolls")))];
        StockRoll[] rolls = [.. question.Rolls, .. bought.SelectMany(p => Enumerable.Range(1, Math.Clamp(p.Rolls, 0, 10_000)).Select(p.Offer.Copy))];
        List<OrderCut> cuts = [.. top.Objects("assignments", "number", "order", "roll", "die", "press", "metres", "goodBalls", "strikes", "fromM", "startHour", "endHour", "day").Select(item => new OrderCut(
            item.Whole("number"), Named(item, "order", question.Orders, o => o.Name), Named(item, "roll", rolls, r => r.Name), Named(item, "die", question.Dies, d => d.Name),
            Named(item, "press", question.Presses, p => p.Name), item.Whole("strikes"), item.Whole("goodBalls"), item.Number("fromM"), item.Number("startHour"), item.Number("endHour")))];
        List<KeptRemnant> remnants = [.. top.Objects("remnants", "roll", "felt", "lot", "widthMm", "lengthM", "begun", "ageDays", "reserved").Select(item => new KeptRemnant(
            Named(item, "roll", rolls, r => r.Name), item.Number("lengthM"), item.Flag("begun"),
            [.. item.Objects("reserved", "order", "metres").Select(part => (Named(part, "order", question.Orders, o => o.Name), part.Number("metres")))]))];
        List<DieWork> dies = [.. top.Objects("dies", "die", "press", "strikes", "make", "reRules", "price", "strikesAfter").Select(item => new DieWork(
            Named(item, "die", question.Dies, d => d.Name), Named(item, "press", question.Presses, p => p.Name), item.Whole("strikes")))];
        JsonFields search = top.Object("search", "effort", "cutShort", "leastShortBalls", "leastLate");
        PlanProof proof = new((decimal)top.Number("bound"), search.Number("leastShortBalls"), search.Number("leastLate"), search.Flag("cutShort"), search.Whole("effort"));
        return new StatedOrders(
            new OrderPlan(question, cuts, bought, remnants, [], dies, proof), (decimal)top.Number("cost"),
            top.Objects("shortfalls", "order", "balls", "reserveBalls", "reason").ToDictionary(item => Named(item, "order", question.Orders, o => o.Name).Name, item => (item.Whole("balls"), item.Whole("reserveBalls"))),
            top.Objects("late", "order", "due", "done", "days").ToDictionary(item => Named(item, "order", question.Orders, o => o.Name).Name, item => item.Whole("days")));
    }

    private static T Named<T>(JsonFields item, string field, IEnumerable<T> all, Func<T, string> nameOf)
        where T : class => all.FirstOrDefault(one => nameOf(one) == item.Text(field)) ?? throw item.Fault(field, $"'{item.Text(field)}' is not in this plan");
}
