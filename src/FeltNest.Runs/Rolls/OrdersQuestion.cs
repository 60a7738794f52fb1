using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files;
using FeltNest.Files.Costs;
using FeltNest.Files.Offers;
using FeltNest.Files.Orders;
using FeltNest.Files.Presses;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Begun;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Runs.Book;
using static FeltNest.InvariantText;

namespace FeltNest.Runs.Rolls;

/// <summary>What a plan of orders is asked about.</summary>
internal sealed record OrdersQuestion
{
    // How much longer than in the plan before a roll may be said to be, as a share: tapes and felt under pull differ by less.
    private const double LengthTolerance = 0.01;

    /// <summary>The question, without what is cut already.</summary>
    public required OrderRequest Question { get; init; }

    /// <summary>Lines of the stock list, without what is cut already.</summary>
    public required IReadOnlyList<StockEntry> Stock { get; init; }

    /// <summary>Lines of the list of dies, without the strikes made already.</summary>
    public required IReadOnlyList<DieEntry> Rack { get; init; }

    /// <summary>The plan before, of which some is cut, or null.</summary>
    public OrderPlan? Before { get; init; }

    /// <summary>What is cut of it.</summary>
    public IReadOnlyList<DoneWork> Done { get; init; } = [];

    /// <summary>Reads it.</summary>
    /// <exception cref="InputException">A file that cannot be used.</exception>
    /// <exception cref="NoAnswerException">No press takes any of the dies.</exception>
    public static OrdersQuestion Read(OrdersAsk asked)
    {
        ShopTexts lists = ListsOf(asked);
        CostInputs known = asked.CostsFile is { } file ? CostsReader.Read(file) : CostInputs.Bare(StockReader.CurrencyOf(lists.Stock));
        StockReader reader = new(known);
        IReadOnlyList<StockEntry> stock = reader.Entries(lists.Stock);
        FeltPurchase[] bought = Bought(asked, reader);
        IReadOnlyList<DieEntry> rack = DiesReader.Entries(lists.Dies);
        CutDie[] dies = [.. rack.Select(entry => entry.Die)];
        PressSpec[] presses = Presses(asked.PressFiles, dies);
        StockRoll[] felt = [.. stock.Select(entry => entry.Roll), .. bought.Select(b => b.Roll)];
        IReadOnlyList<CoverOrder> wanted = OrdersReader.Read(
            lists.Orders, dies.Select(d => d.Ball), felt.Select(r => r.Felt), new ShopNames
            {
                Lots = [.. felt.Select(r => r.Lot)],
                Rolls = [.. felt.Select(r => r.Name)],
                Presses = [.. presses.Select(p => p.Name)],
                Dies = [.. dies.Select(d => d.Name)],
                Reach = new StockReach(stock.Where(entry => entry.Available).Select(entry => entry.Roll), dies, bought.Length > 0),
            });
        OrderRequest question = new()
        {
            Orders = wanted,
            Rolls = [.. stock.Where(entry => entry.Available).Select(entry => entry.Roll)],
            Offers = bought,
            Dies = dies,
            Presses = Calendars(asked, presses),
            Rules = RulesOf(asked, known),
        };
        OrdersQuestion whole = new() { Question = question, Stock = stock, Rack = rack };
        if (asked.Book is { } book)
        {
            return whole with { Question = BookWork.Begun(question, book) };
        }

        return asked.FromPlanFile is { } plan ? whole.After(OrderPlanReader.Read(InputText.OfFile(plan)).Plan, asked) : whole;
    }

    private static FeltPurchase[] Bought(OrdersAsk asked, StockReader reader) => asked.OffersFile is { } list
        ?
        [
            .. OffersReader.Read(asked.Lists.Open(list))
                .Select(offer => NamedInput.Of(list, () => Delivered(reader.Offered(offer), offer, asked.Start))),
        ]
        : [];

    private static ShopTexts ListsOf(OrdersAsk asked) => asked.Book?.Texts(asked.Lists) ?? new ShopTexts
    {
        Stock = asked.Lists.Open(asked.StockFile!),
        Dies = asked.Lists.Open(asked.DiesFile!),
        Orders = asked.Lists.Open(asked.OrdersFile!),
    };

    // Without what is cut of a plan before.
    private OrdersQuestion After(OrderPlan before, OrdersAsk asked)
    {
        foreach (StockRoll roll in Question.Rolls)
        {
            StockRoll? planned = before.Question.Rolls.FirstOrDefault(r => r.Name == roll.Name);
            if (planned is not null && roll.LengthM > planned.LengthM * (1 + LengthTolerance))
            {
                throw new InputException(
                    asked.StockFile, StockListing.LengthM.Name,
                    Invariant($"{roll.LengthM:0.###} of roll {roll.Name} is longer than in the plan before: {planned.LengthM:0.###} m"));
            }
        }

        IReadOnlyList<DoneWork> done = asked.DoneFile is { } list
            ? DoneReader.Read(asked.Lists.Open(list), before, [.. Stock.Select(entry => entry.Roll)])
            : [];
        OrderRequest rest = BegunShop.After(Question, before.Question, done);
        return new OrdersQuestion
        {
            Question = rest,
            Stock =
            [
                .. Stock.Where(entry => !entry.Available || rest.Rolls.Any(r => r.Name == entry.Roll.Name))
                    .Select(entry => Rest(entry, rest)),
            ],
            Rack = [.. Rack.Select((entry, i) => entry with { Die = rest.Dies[i] })],
            Before = before,
            Done = done,
        };
    }

    private static StockEntry Rest(StockEntry entry, OrderRequest rest)
    {
        StockRoll roll = rest.Rolls.FirstOrDefault(r => r.Name == entry.Roll.Name) ?? entry.Roll;
        return entry with { Roll = roll, MeasuredFile = roll.Measured is null ? null : entry.MeasuredFile };
    }

    private static OrderRules RulesOf(OrdersAsk asked, CostInputs known) => new()
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

    // What is ordered on the first day comes so many days later.
    private static FeltPurchase Delivered(FeltPurchase bought, FeltOffer offer, DateOnly start) => offer.DeliveryDays == 0
        ? bought
        : bought with { Roll = bought.Roll with { Received = start.AddDays(offer.DeliveryDays) } };

    private static IReadOnlyList<PressSpec> Calendars(OrdersAsk asked, PressSpec[] presses) =>
        asked.CalendarFile is { } list ? CalendarListReader.Read(asked.Lists.Open(list), presses, asked.HoursPerDay) : presses;

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
