using System.Text.Json;
using FeltNest.Files.Fields;
using FeltNest.Files.Json;
using FeltNest.Files.Presses;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Clock;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.Files.Orders.OrderPlanDocument;

namespace FeltNest.Files.Orders;

/// <summary>Reads a plan of orders (schema feltnest/order-plan/1) for checking.</summary>
internal static class OrderPlanReader
{
    /// <summary>The plan of a text.</summary>
    /// <exception cref="InputException">Names the text, the field, the value found and what is allowed.</exception>
    public static StatedOrders Read(InputText text) => Read(text.Name, JsonInput.ReadObject(text));

    /// <summary>The plan of a JSON object already read from a file.</summary>
    /// <exception cref="InputException">Names the file, the field, the value found and what is allowed.</exception>
    internal static StatedOrders Read(string path, JsonElement root)
    {
        JsonFields top = JsonFields.Top(path, root, OrderPlanDocument.Document);
        OrderRequest question = OrderPlanQuestion.Read(top);
        List<RollPurchase> bought =
        [
            .. top.Objects(Purchases).Select(item => new RollPurchase(
                Named(item, PurchaseFields.Offer, question.Offers, o => o.Roll.Name), item.Whole(PurchaseFields.Rolls))),
        ];
        StockRoll[] rolls = [.. question.Rolls, .. bought.SelectMany(p => Enumerable.Range(1, p.Rolls).Select(p.Offer.Copy))];
        List<OrderCut> cuts = [.. top.Objects(Assignments).Select(item => Cut(item, question, rolls))];
        List<KeptRemnant> remnants = [.. top.Objects(Remnants).Select(item => Remnant(item, question, rolls))];
        return new StatedOrders(
            new OrderPlan
            {
                Question = question,
                Cuts = cuts,
                Mountings = [.. top.Objects(OrderPlanDocument.Mountings).Select(item => Mounted(item, question))],
                Overtime = [.. top.Objects(OrderPlanDocument.Overtime).Select(item => Over(item, question))],
                Purchases = bought,
                Remnants = remnants,
                Results = [],
                Changes = [.. top.OptionalObjects(OrderPlanDocument.Changes).Select(ChangeFields.Read)],
                Dies = [.. top.Objects(OrderPlanDocument.Dies).Select(item => Worked(item, question))],
                Proof = Proof(top),
            }, top.Amount(OrderPlanDocument.Cost), top.OptionalNumber(GapPercent),
            top.ByName(Shortfalls, ShortfallFields.Order, item => Short(item, question)),
            top.ByName(OrderPlanDocument.Late, LateFields.Order, item => Known(item, LateFields.Order, question).Whole(LateFields.Days)))
        {
            BadlyShort = top.Flag(OrderPlanDocument.BadlyShort),
        };
    }

    private static DieWork Worked(JsonFields item, OrderRequest question) => new(
        Named(item, DieFields.Die, question.Dies, d => d.Name), Named(item, DieFields.Press, question.Presses, p => p.Name),
        item.Whole(DieFields.Strikes))
    {
        Mountings = item.Whole(DieFields.Mountings),
    };

    private static PlanProof Proof(JsonFields top)
    {
        JsonFields search = top.Object(Search);
        return new PlanProof
        {
            CostBound = top.Has(Bound) ? top.Amount(Bound) : null,
            LeastShort = search.Number(SearchFields.LeastShortBalls),
            LeastLate = search.Number(SearchFields.LeastLate),
            LeastWeightedDays = search.Number(SearchFields.LeastWeightedDays),
            CutShort = search.Flag(SearchFields.CutShort),
            Effort = search.Whole(SearchFields.Effort),
        };
    }

    private static OrderCut Cut(JsonFields item, OrderRequest question, StockRoll[] rolls) => new()
    {
        Number = item.Whole(AssignmentFields.Number),
        Order = Named(item, AssignmentFields.Order, question.Orders, o => o.Name),
        Roll = Named(item, AssignmentFields.Roll, rolls, r => r.Name),
        Die = Named(item, AssignmentFields.Die, question.Dies, d => d.Name),
        Press = Named(item, AssignmentFields.Press, question.Presses, p => p.Name),
        Strikes = item.Whole(AssignmentFields.Strikes),
        GoodBalls = item.Whole(AssignmentFields.GoodBalls),
        AlsoBalls = item.OptionalWhole(AssignmentFields.AlsoBalls) ?? 0,
        FromM = item.Number(AssignmentFields.FromM),
        RollChange = item.Flag(AssignmentFields.RollChange),
        StartHour = item.Number(AssignmentFields.StartHour),
        EndHour = item.Number(AssignmentFields.EndHour),
    };

    private static Mounting Mounted(JsonFields item, OrderRequest question) => new()
    {
        Die = Named(item, MountingFields.Die, question.Dies, d => d.Name),
        Press = Named(item, MountingFields.Press, question.Presses, p => p.Name),
        StartHour = item.Number(MountingFields.StartHour),
        EndHour = item.Number(MountingFields.EndHour),
        Paid = item.Flag(MountingFields.Paid),
    };

    private static OvertimeWork Over(JsonFields item, OrderRequest question)
    {
        PressSpec press = Named(item, OvertimeFields.Press, question.Presses, p => p.Name);
        string from = item.Text(OvertimeFields.From);
        OvertimeSpan span = press.Calendar?.Overtime.FirstOrDefault(span => MomentText.Of(span.From) == from)
            ?? throw item.Fault(OvertimeFields.From, $"'{from}' is no overtime of press {press.Name} in this plan");
        return new OvertimeWork(press, span, item.Number(OvertimeFields.Hours));
    }

    private static KeptRemnant Remnant(JsonFields item, OrderRequest question, StockRoll[] rolls) => new(
        Named(item, RemnantFields.Roll, rolls, r => r.Name), item.Number(RemnantFields.LengthM), item.Flag(RemnantFields.Begun),
        [
            .. item.Objects(RemnantFields.Reserved).Select(part =>
                (Named(part, ReservedFields.Order, question.Orders, o => o.Name), part.Number(ReservedFields.Metres))),
        ]);

    private static (int Balls, int ReserveBalls) Short(JsonFields item, OrderRequest question)
    {
        Known(item, ShortfallFields.Order, question);
        return (item.Whole(ShortfallFields.Balls), item.Whole(ShortfallFields.ReserveBalls));
    }

    private static JsonFields Known(JsonFields item, TextField field, OrderRequest question)
    {
        Named(item, field, question.Orders, o => o.Name);
        return item;
    }

    private static T Named<T>(JsonFields item, TextField field, IEnumerable<T> all, Func<T, string> nameOf)
        where T : class
    {
        string wanted = item.Text(field);
        return all.FirstOrDefault(one => nameOf(one) == wanted) ?? throw item.Fault(field, $"'{wanted}' is not in this plan");
    }
}
