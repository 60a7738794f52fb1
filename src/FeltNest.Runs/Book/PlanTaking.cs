using System.Globalization;
using FeltNest.Book;
using FeltNest.Files.Orders;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Begun;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Book;

/// <summary>Puts a plan that is taken into the book, with its tickets.</summary>
internal static class PlanTaking
{
    /// <summary>Takes a plan. Tickets of plans before that no press has begun are withdrawn, and of those begun the rest is on the new
    /// tickets.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="plan">The plan, its tickets numbered on from the book's.</param>
    /// <param name="from">The lists it was made from.</param>
    /// <exception cref="InputException">Another plan was taken since these lists.</exception>
    public static BookSaid Take(BookDesk desk, OrderPlan plan, BookLists from) => desk.Write(book =>
    {
        (long lastPlan, long _) = PlanNumbers.Last(book.Tables);
        if (lastPlan != from.LastPlan)
        {
            throw new InputException(Invariant($"plan {lastPlan} was taken while this one was made: it was not taken; plan again"));
        }

        long since = book.Last - from.LastEntry;
        string number = (lastPlan + 1).ToString(CultureInfo.InvariantCulture);
        (string Name, TicketState State)[] open = [.. book.States<TicketState>(SubjectKind.Ticket, openOnly: true)];
        PlanBody body = BodyOf(plan, from, [.. open.Select(t => long.Parse(t.Name, CultureInfo.InvariantCulture))]);
        book.Add(BookDraft.Of(EntryKind.PlanMade, SubjectKind.Plan, number, body));
        book.Add(BookDraft.Of(EntryKind.PlanTaken, SubjectKind.Plan, number, body));
        foreach (OrderCut cut in plan.Cuts)
        {
            string? supplier = book.State<RollState>(SubjectKind.Roll, cut.Roll.Name)?.Roll.Supplier;
            book.Add(BookDraft.Of(
                EntryKind.TicketPrinted, SubjectKind.Ticket, cut.Number.ToString(CultureInfo.InvariantCulture),
                TicketOf(plan, cut, lastPlan + 1) with { Supplier = supplier }));
        }

        string withdrawn = open.Length > 0 ? Invariant($"; {open.Length} tickets before it are withdrawn") : string.Empty;
        string tickets = plan.Cuts.Count > 0 ? Invariant($"tickets {plan.Cuts[0].Number} to {plan.Cuts[^1].Number}") : "no tickets";
        return new BookSaid(
            $"plan {number} is taken: {tickets}{withdrawn}",
            since > 0 ? [Invariant($"{since} entries came in while it was made: look whether they change it")] : []);
    });

    private static PlanBody BodyOf(OrderPlan plan, BookLists from, long[] withdraws) => new()
    {
        Start = OrderPlanWriter.Day(plan.Question.Rules.Start),
        Orders = plan.Question.Orders.Count,
        Tickets = plan.Cuts.Count,
        Balls = plan.BallsServed,
        ShortBalls = plan.ShortBalls,
        MadeFrom = from.LastEntry,
        Withdraws = withdraws,
    };

    private static TicketBody TicketOf(OrderPlan plan, OrderCut cut, long number)
    {
        OrderRules rules = plan.Question.Rules;
        StrikeShape shape = cut.Die.Shape;
        return new TicketBody
        {
            Plan = number,
            Order = BegunShop.OrderOf(cut.Order),
            Ball = cut.Order.Ball,
            Roll = cut.Roll.Name,
            Felt = cut.Roll.Felt,
            Lot = cut.Roll.Lot,
            Die = cut.Die.Name,
            Press = cut.Press.Name,
            Strikes = cut.Strikes,
            Panels = cut.Strikes * shape.ClassPanels.Sum(),
            Balls = cut.GoodBalls,
            FromM = Exact(cut.FromM),
            ToM = Exact(cut.ToM),
            LeadM = Exact(Lead(plan, cut)),
            WidthMm = Exact(cut.Roll.WidthMm),
            FeedMm = Exact(shape.FeedMm),
            OverMm = Exact(shape.OverMm),
            LeastWidthMm = Exact(shape.LeastWidthMm),
            Rows = shape.Rows,
            GroupPanels = shape.ClassPanels,
            GoodShare = Math.Round((decimal)plan.Question.GoodShare(cut.Roll, cut.Die), 12),
            FaultPercent = Exact(cut.Roll.FaultPercent),
            RejectPercent = Exact(rules.RejectPercent),
            UnpairedPercent = Exact(rules.UnpairedPercent),
            PricePerMetre = cut.Roll.PricePerMetre,
            Currency = rules.Currency,
            Due = OrderPlanWriter.Day(cut.Order.Due),
            Start = Moment(rules, cut.StartHour),
            End = Moment(rules, cut.EndHour),
        };
    }

    // What lies between the piece before on the roll, or its start, and this piece.
    private static double Lead(OrderPlan plan, OrderCut cut)
    {
        double before =
            plan.Cuts.Where(c => c.Roll == cut.Roll && c.FromM < cut.FromM).Select(c => c.ToM).DefaultIfEmpty(cut.Roll.BeginM).Max();
        return Math.Max(0, cut.FromM - before);
    }

    private static string Moment(OrderRules rules, double hour) => Invariant($"{rules.MomentOf(hour):yyyy-MM-ddTHH:mm:ss}");

    private static decimal Exact(double value) => Math.Round((decimal)value, 6);
}
