using FeltNest.Drawing;
using FeltNest.Drawing.Sheets.Rolls;
using FeltNest.Drawing.Writers;
using FeltNest.Files.Csv;
using FeltNest.Files.Orders;
using FeltNest.Report;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Begun;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;

namespace FeltNest.Runs.Rolls;

/// <summary>Which rolls to cut for which order, what to buy, and the tickets.</summary>
internal sealed class OrdersRun : IRun
{
    private static readonly string[] Planned =
    [
        "orders.json", "orders.csv", "orders.html", TicketsPage.FileName, "tickets.pdf", "stock-after.csv", "dies-after.csv",
        "orders-after.csv",
    ];

    // Where some of another plan is cut: the lists without that.
    private static readonly string[] Begun = ["stock-now.csv", "dies-now.csv", "orders-now.csv"];

    private readonly OrdersQuestion asked;
    private readonly int effort;
    private readonly string folder;
    private readonly ListReading lists;
    private readonly long ticketsBefore;

    /// <summary>Reads what is asked about.</summary>
    /// <exception cref="InputException">A file that cannot be used.</exception>
    /// <exception cref="NoAnswerException">No press takes any of the dies.</exception>
    public OrdersRun(OrdersAsk ask)
    {
        asked = OrdersQuestion.Read(ask);
        (effort, folder, lists, ticketsBefore) = (ask.Effort, ask.OutFolder, ask.Lists, ask.Book?.LastTicket ?? 0);
        FileNames = [.. Planned, .. asked.Before is null ? [] : Begun];
    }

    /// <summary>Told each aim as it is reached, or null.</summary>
    public IProgress<string>? Progress { get; init; }

    /// <summary>Orders and rolls: with them grows what is written in the end.</summary>
    public int Things => asked.Question.Orders.Count + asked.Question.Rolls.Count;

    /// <summary>The plan, once it was made.</summary>
    public OrderPlan? Plan { get; private set; }

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; }

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => lists.Notes;

    /// <inheritdoc/>
    public Outcome Execute(Action? resultThere, CancellationToken search, CancellationToken interrupt)
    {
        (OrderPlan plan, IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> tickets) =
            MeasuredPlanner.Run(asked.Question, effort, Progress, resultThere, search);
        (plan, tickets) = (Numbered(plan), [.. tickets.Select(t => (Numbered(t.Cut), t.Strikes))]);
        plan = asked.Before is { } before ? plan with { Changes = PlanChanges.Of(plan, before, asked.Done) } : plan;
        Plan = plan;
        AfterLists after = new(plan, asked.Stock, asked.Rack);
        Lazy<IReadOnlyList<(OrderCut Cut, Sheet Sheet)>> drawn = new(() => Drawn(plan, tickets));
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => OrderPlanWriter.Json(plan)), new(FileNames[1], () => OrderPlanWriter.Csv(plan)),
                new(FileNames[2], () => OrderPage.Html(plan)),
                new(FileNames[3], () => Page(plan, drawn.Value)),
                new(FileNames[4], () => PdfWriter.Write(Print(drawn.Value))),
                new(FileNames[5], () => ShopLists.Stock(after.Stock(), folder)),
                new(FileNames[6], () => ShopLists.Dies(after.Dies(), folder)),
                new(FileNames[7], () => ShopLists.Orders(after.Orders())), .. Now(),
            ],
            Table = plan.Changes is { } changes ? $"{OrderReport.Text(plan)}\n{ChangeReport.Text(changes)}" : OrderReport.Text(plan),
            Remarks = [.. OrderReport.Warnings(plan).Concat(Unmeasured(plan)).Select(Remark.Warning)],
            CutShort = plan.Proof.CutShort,
        };
    }

    // Tickets of a book go on from its last number, so that the number alone is typed back.
    private OrderPlan Numbered(OrderPlan plan) => plan with { Cuts = [.. plan.Cuts.Select(Numbered)] };

    private OrderCut Numbered(OrderCut cut) => cut with { Number = (int)(cut.Number + ticketsBefore) };

    // The ticket of each piece of work that has one, in the order of the work.
    private static IReadOnlyList<(OrderCut Cut, Sheet Sheet)> Drawn(
        OrderPlan plan, IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> tickets)
    {
        Dictionary<int, RollPlan> strikes = tickets.ToDictionary(ticket => ticket.Cut.Number, ticket => ticket.Strikes);
        return
        [
            .. WorkDay.Of(plan).SelectMany(day => day.Cuts).Where(cut => strikes.ContainsKey(cut.Number)).AsParallel().AsOrdered()
                .Select(cut => (cut, TicketSheet.Draw(strikes[cut.Number], new TicketOrder
                {
                    Number = InvariantText.Invariant($"{cut.Number}"),
                    Cut = cut,
                    Start = plan.Question.Rules.MomentOf(cut.StartHour),
                }))),
        ];
    }

    private static byte[] Page(OrderPlan plan, IReadOnlyList<(OrderCut Cut, Sheet Sheet)> tickets)
    {
        InlineSvg drawn = new([.. tickets.Select(ticket => ticket.Sheet)]);
        Dictionary<int, string> written = tickets
            .Select((t, i) => (t.Cut.Number, Svg: drawn.Of(i, WorkDay.TicketOf(t.Cut), TicketsPage.TicketClass)))
            .ToDictionary(t => t.Number, t => t.Svg);
        return TicketsPage.Html(plan, drawn.Style, drawn.Shared, written);
    }

    // A print has a page at the least.
    private static IReadOnlyList<Sheet> Print(IReadOnlyList<(OrderCut Cut, Sheet Sheet)> tickets) =>
        tickets.Count == 0 ? [TicketSheet.WithoutTicket(TicketsPage.NoTickets)] : [.. tickets.Select(ticket => ticket.Sheet)];

    private IEnumerable<ResultFile> Now() => asked.Before is null ? [] :
    [
        new(Begun[0], () => ShopLists.Stock(asked.Stock, folder)), new(Begun[1], () => ShopLists.Dies(asked.Rack, folder)),
        new(Begun[2], () => ShopLists.Orders(asked.Question.Orders)),
    ];

    private static IEnumerable<string> Unmeasured(OrderPlan plan) => plan.Begun
        .Where(roll => roll is { Turned: true, Measured: not null })
        .Select(roll => $"roll {roll.Name} is turned end for end: stock-after.csv lists its rest without the file it was measured in");
}
