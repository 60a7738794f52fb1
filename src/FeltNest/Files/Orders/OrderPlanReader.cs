using System.Text.Json;
using FeltNest.Files.Json;
using FeltNest.Files.Offers;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Files.Orders;

/// <summary>Reads a plan of orders (schema feltnest/order-plan/1) for checking.</summary>
public static class OrderPlanReader
{
    // Most entries of one list: far above what the planner takes and gives.
    private const int MostItems = 10_000;

    // Hours of work from the start: eleven years without a break.
    private const double MostHours = 100_000;

    /// <summary>The plan of a JSON object already read from a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    internal static StatedOrders Read(string path, JsonElement root)
    {
        JsonInput.SchemaOf(root, path, SchemaName.OrderPlan);
        JsonFields top = JsonFields.Top(
            path, root, "schema", "cost", "currency", "bound", "gapPercent", "costs", "assignments", "purchases", "shortfalls", "late",
            "remnants", "dies", "search", "rules", "orders", "stock", "offers",
            "rack", "presses");
        OrderQuestion question = OrderPlanQuestion.Read(top);
        List<RollPurchase> bought = [.. top
            .ObjectsUpTo(OffersReader.MostOffers, "purchases", "offer", "rolls", "metres", "price")
            .Select(item =>
            new RollPurchase(Named(item, "offer", question.Offers, o => o.Roll.Name), Rolls(item)))];
        StockRoll[] rolls = [.. question.Rolls, .. bought.SelectMany(p => Enumerable.Range(1, p.Rolls).Select(p.Offer.Copy))];
        List<OrderCut> cuts = [.. top
            .ObjectsUpTo(
                MostItems, "assignments", "number", "order", "roll", "die", "press", "metres", "goodBalls", "strikes", "fromM", "startHour",
                "endHour", "day")
            .Select(item => new OrderCut(
            item.Whole("number"), Named(item, "order", question.Orders, o => o.Name), Named(item, "roll", rolls, r => r.Name),
            Named(item, "die", question.Dies, d => d.Name),
            Named(item, "press", question.Presses, p => p.Name), item.Count("strikes"), item.Count("goodBalls"), item.Number("fromM"),
            item.Within("startHour", -1, MostHours), item.Within("endHour", -1, MostHours)))];
        List<KeptRemnant> remnants = [.. top
            .ObjectsUpTo(MostItems, "remnants", "roll", "felt", "lot", "widthMm", "lengthM", "begun", "ageDays", "reserved")
            .Select(item => new KeptRemnant(
            Named(item, "roll", rolls, r => r.Name), item.Within("lengthM", 0, OrderPlanQuestion.MostMetres), item.Flag("begun"),
            [
                .. item
                    .Objects("reserved", "order", "metres")
                    .Select(part => (Named(part, "order", question.Orders, o => o.Name), part.Number("metres"))),
            ]))];
        List<DieWork> dies = [.. top
            .ObjectsUpTo(MostItems, "dies", "die", "press", "strikes", "make", "reRules", "price", "strikesAfter")
            .Select(item => new DieWork(
            Named(item, "die", question.Dies, d => d.Name), Named(item, "press", question.Presses, p => p.Name), item.Count("strikes")))];
        JsonFields search = top.Object("search", "effort", "cutShort", "made", "leastShortBalls", "leastLate");
        PlanProof proof = new(
            top.Has("bound") ? top.Amount("bound") : null, search.Number("leastShortBalls"), search.Number("leastLate"),
            search.Flag("cutShort"), search.Whole("effort"), search.Flag("made"));
        return new StatedOrders(
            new OrderPlan(question, cuts, bought, remnants, [], dies, proof), top.Amount("cost"), top.OptionalNumber("gapPercent"),
            top.ByName(
                MostItems, "shortfalls", item => (Known(item).Count("balls"), item.Count("reserveBalls")), "order", "balls", "reserveBalls",
                "reason"),
            top.ByName(MostItems, "late", item => Known(item).Count("days"), "order", "due", "done", "days"));

        JsonFields Known(JsonFields item)
        {
            Named(item, "order", question.Orders, o => o.Name);
            return item;
        }
    }

    private static int Rolls(JsonFields item) =>
        item.Whole("rolls") is >= 0 and <= MostItems and var rolls
            ? rolls
            : throw item.Fault("rolls", $"{item.Whole("rolls")} is outside 0 to {MostItems}");

    private static T Named<T>(JsonFields item, string field, IEnumerable<T> all, Func<T, string> nameOf)
        where T : class
    {
        string wanted = item.Text(field);
        return all.FirstOrDefault(one => nameOf(one) == wanted) ?? throw item.Fault(field, $"'{wanted}' is not in this plan");
    }
}
