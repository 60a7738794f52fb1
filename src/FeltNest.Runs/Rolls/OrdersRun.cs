using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Drawing.Sheets.Rolls;
using FeltNest.Drawing.Writers;
using FeltNest.Files;
using FeltNest.Files.Costs;
using FeltNest.Files.Offers;
using FeltNest.Files.Orders;
using FeltNest.Files.Presses;
using FeltNest.Report;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;

namespace FeltNest.Runs.Rolls;

/// <summary>Which rolls to cut for which order, what to buy, and the tickets.</summary>
internal sealed class OrdersRun : IRun
{
    private readonly OrderRequest question;
    private readonly int effort;

    /// <summary>Reads what is asked about.</summary>
    /// <exception cref="InputException">A file that cannot be used.</exception>
    /// <exception cref="NoAnswerException">No press takes any of the dies.</exception>
    public OrdersRun(OrdersAsk asked)
    {
        question = Question(asked);
        effort = asked.Effort;
    }

    /// <summary>Told each aim as it is reached, or null.</summary>
    public IProgress<string>? Progress { get; init; }

    /// <summary>Orders and rolls: with them grows what is written in the end.</summary>
    public int Things => question.Orders.Count + question.Rolls.Count;

    /// <inheritdoc/>
    public IReadOnlyList<string> FileNames { get; } = ["orders.json", "orders.csv", "orders.html", TicketsPage.FileName];

    /// <inheritdoc/>
    public IReadOnlyList<string> Notes => [];

    /// <inheritdoc/>
    public Outcome Execute(Action? searchOver, CancellationToken search, CancellationToken interrupt)
    {
        (OrderPlan plan, IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> tickets) =
            MeasuredPlanner.Run(question, effort, Progress, search);
        searchOver?.Invoke();
        return new Outcome
        {
            Files =
            [
                new(FileNames[0], () => OrderPlanWriter.Json(plan)), new(FileNames[1], () => OrderPlanWriter.Csv(plan)),
                new(FileNames[2], () => OrderPage.Html(plan)),
                new(FileNames[3], () => Tickets(plan, tickets)),
            ],
            Table = OrderReport.Text(plan),
            Remarks = [.. OrderReport.Warnings(plan).Select(Remark.Warning)],
            CutShort = plan.Proof.CutShort,
        };
    }

    private static byte[] Tickets(OrderPlan plan, IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> tickets)
    {
        InlineSvg drawn = new([
            .. tickets.AsParallel().AsOrdered().Select(ticket => TicketSheet.Draw(ticket.Strikes, new TicketOrder
            {
                Cut = ticket.Cut,
                Start = plan.Question.Rules.MomentOf(ticket.Cut.StartHour),
            })),
        ]);
        Dictionary<int, string> written = tickets
            .Select((t, i) => (t.Cut.Number, Svg: drawn.Of(i, WorkDay.TicketOf(t.Cut), TicketsPage.TicketClass)))
            .ToDictionary(t => t.Number, t => t.Svg);
        return TicketsPage.Html(plan, drawn.Style, drawn.Shared, written);
    }

    private static OrderRequest Question(OrdersAsk asked)
    {
        CostInputs known = asked.CostsFile is { } file ? CostsReader.Read(file) : CostInputs.Bare(StockReader.CurrencyOf(asked.StockFile));
        StockReader reader = new(known);
        IReadOnlyList<StockRoll> rolls = reader.Read(asked.StockFile);
        FeltPurchase[] bought = asked.OffersFile is { } list
            ? [.. OffersReader.Read(list).Select(offer => NamedInput.Of(list, () => Delivered(reader.Offered(offer), offer, asked.Start)))]
            : [];
        IReadOnlyList<CutDie> rack = DiesReader.Read(asked.DiesFile);
        IReadOnlyList<CoverOrder> wanted = OrdersReader.Read(
            asked.OrdersFile, rack.Select(d => d.Ball), [.. rolls.Select(r => r.Felt), .. bought.Select(b => b.Roll.Felt)]);
        OrderRules rules = new()
        {
            Currency = known.Currency,
            Start = asked.Start,
            HoursPerDay = asked.HoursPerDay,
            EndLossMm = known.Losses.EndLossMm,
            RejectPercent = known.Losses.RejectPercent,
            UnpairedPercent = known.Losses.UnpairedPercent,
            RemnantValuePercent = asked.RemnantValuePercent,
            LeastRemnantM = asked.LeastRemnantM,
            LeastCutM = asked.LeastCutM,
            PerStrike = (known.PerStrike ?? 0) + (known.BoardPerStrike ?? 0),
            HourRate = known.SetUp?.RatePerHour ?? 0,
            Nap = asked.Nap,
        };
        return new OrderRequest
        {
            Orders = wanted,
            Rolls = rolls,
            Offers = bought,
            Dies = rack,
            Presses = Calendars(asked, Presses(asked.PressFiles, rack)),
            Rules = rules,
        };
    }

    // What is ordered on the first day comes so many days later.
    private static FeltPurchase Delivered(FeltPurchase bought, FeltOffer offer, DateOnly start) => offer.DeliveryDays == 0
        ? bought
        : bought with { Roll = bought.Roll with { Received = start.AddDays(offer.DeliveryDays) } };

    private static IReadOnlyList<PressSpec> Calendars(OrdersAsk asked, PressSpec[] presses) =>
        asked.CalendarFile is { } list ? CalendarListReader.Read(list, presses, asked.HoursPerDay) : presses;

    private static void MountedOnce(string file, string die, PressSpec other)
    {
        if (other.MountedDie == die)
        {
            throw new InputException(file, "mountedDie", $"'{die}' stands on press {other.Name} already: a die is in one place");
        }
    }

    private static PressSpec[] Presses(IReadOnlyList<string> files, IReadOnlyList<CutDie> rack)
    {
        List<PressSpec> read = [];
        foreach (string file in files)
        {
            PressSpec press = PressReader.Read(file);
            if (read.Exists(p => p.Name == press.Name))
            {
                throw new InputException(file, "name", $"'{press.Name}' is given twice: every press needs a name of its own");
            }

            if (press.MountedDie is { } die)
            {
                read.ForEach(other => MountedOnce(file, die, other));
                CutDie stands = rack.FirstOrDefault(d => d.Name == die && d.MakePrice is null && d.From is null)
                    ?? throw new InputException(
                        file, "mountedDie", $"'{die}' is no die on the rack{NearestWord.Hint(die, rack.Select(d => d.Name))}");
                if (!OrderRequest.Takes(press, stands))
                {
                    throw new InputException(file, "mountedDie", $"'{die}' does not fit this press");
                }
            }

            read.Add(press);
        }

        return rack.Any(die => read.Exists(press => OrderRequest.Takes(press, die)))
            ? [.. read]
            : throw new NoAnswerException(
                $"no press takes any of the dies {string.Join(", ", rack.Select(d => d.Name))}: name them under dies in a press file, "
                    + $"or use a larger bed");
    }
}
