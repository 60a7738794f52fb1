using System.Globalization;
using FeltNest.Book;
using FeltNest.Cost.Offers;
using FeltNest.Files;
using FeltNest.Files.Csv;
using FeltNest.Files.Orders;
using FeltNest.Files.Rolls;
using FeltNest.Rolls.Orders;

namespace FeltNest.Runs.Book;

/// <summary>The lists of a shop out of the book, as it stands at one moment: for export, and for a plan.</summary>
internal sealed class BookLists
{
    // A roll shorter than any list takes, m.
    private const decimal ShortestM = 0.1m;

    private readonly string? folder;
    private readonly IReadOnlyList<(string Name, RollState State)> rolls;
    private readonly IReadOnlyList<(string Name, DieState State)> dies;
    private readonly IReadOnlyList<(string Name, OrderState State)> orders;

    private BookLists(BookStore store, BookTables book)
    {
        (Name, folder) = (store.Name, store.Folder);
        rolls = Of<RollState>(book, SubjectKind.Roll);
        dies = Of<DieState>(book, SubjectKind.Die);
        orders = [.. book.States(SubjectKind.Order, openOnly: true).Select(s => (s.Name, (OrderState)s.State))];
        Begun =
        [
            .. book.States(SubjectKind.Ticket, openOnly: true).Select(s => (Number(s.Name), (TicketState)s.State))
                .Where(t => t.Item2.Phase == TicketPhase.Begun),
        ];
        LastEntry = book.LastEntry();
        (LastPlan, LastTicket) = PlanNumbers.Last(book);
    }

    /// <summary>What messages call the book.</summary>
    public string Name { get; }

    /// <summary>Last entry that is in the lists.</summary>
    public long LastEntry { get; }

    /// <summary>Number of the last plan; 0 for none.</summary>
    public long LastPlan { get; }

    /// <summary>Number of the last ticket ever printed; 0 for none.</summary>
    public long LastTicket { get; }

    /// <summary>Tickets of which some strikes are made.</summary>
    public IReadOnlyList<(long Number, TicketState State)> Begun { get; }

    /// <summary>Press on which each die stands, by the name of the press.</summary>
    public IReadOnlyDictionary<string, string> Mounted => dies.Where(die => die.State.Press is not null)
        .GroupBy(die => die.State.Press!)
        .ToDictionary(g => g.Key, g => g.MaxBy(die => die.State.MountedBy).Name);

    /// <summary>The lists of a book.</summary>
    public static BookLists Of(BookStore store) => store.Read(book => new BookLists(store, book));

    /// <summary>The stock list: rolls of which felt is left, and used-up ones that an open order names, as not available.</summary>
    /// <param name="to">Folder that it will stand in.</param>
    public byte[] Stock(string to) =>
        StockAfterListing.Columns.Csv(rolls.Select(roll => Line(roll.Name, roll.State, to)).OfType<StockAfterListing.Line>());

    /// <summary>The list of dies.</summary>
    /// <param name="to">Folder that it will stand in.</param>
    public byte[] Dies(string to) => DiesAfterListing.Columns.Csv(dies.Select(die => Line(die.Name, die.State, to)));

    /// <summary>The list of open orders, with the balls they want still.</summary>
    public byte[] Orders() => OrdersAfterListing.Columns.Csv(orders.Select(order => OrderOf(order.Name, order.State)));

    /// <summary>How many orders are open.</summary>
    public int OpenOrders => orders.Count;

    /// <summary>The three lists as they are read for a plan.</summary>
    /// <param name="reading">How, and whether what is asked about is meant.</param>
    /// <exception cref="InputException">One of them is empty.</exception>
    public ShopTexts Texts(ListReading reading) => new()
    {
        Stock = TextOf("rolls", rolls.Count, Stock("/")) with { Lists = reading },
        Dies = TextOf("dies", dies.Count, Dies("/")) with { Lists = reading },
        Orders = TextOf("open orders", orders.Count, Orders()) with { Lists = reading },
    };

    private static IReadOnlyList<(string Name, T State)> Of<T>(BookTables book, SubjectKind kind) =>
        [.. book.States(kind, openOnly: false).Select(s => (s.Name, (T)s.State))];

    private static long Number(string ticket) => long.Parse(ticket, CultureInfo.InvariantCulture);

    private InputText TextOf(string what, int count, byte[] list) => count > 0
        ? InputText.In($"{what} of {Name}", list, "/")
        : throw new InputException(Name, null, $"holds no {what}: bring them in first");

    private StockAfterListing.Line? Line(string name, RollState roll, string to)
    {
        bool left = roll.LeftM >= ShortestM;
        if (!left && !orders.Any(order => Names(OrderOf(order.Name, order.State), name, roll.Roll)))
        {
            return null;
        }

        RollBody body = roll.Roll;
        StockRoll rest = new()
        {
            Name = name,
            Felt = body.Felt,
            Lot = body.Lot,
            WidthMm = (double)body.WidthMm,
            LengthM = (double)Math.Max(ShortestM, roll.LeftM),
            PricePerMetre = 0,
            FaultPercent = 0,
            Received = Day(body.Received),
            Offer = null,
            Nap = body.NapToward is { } nap ? NapWord.Find(nap) : null,
        };
        StockEntry entry = new()
        {
            Roll = rest,
            Available = body.Available && left,
            Price = new FeltPrice(body.Price, PriceUnits.Find(body.PriceUnit)!.Value, body.Currency),
            MassPerAreaGsm = (double?)body.MassPerAreaGsm,
            FaultPercent = (double?)body.FaultPercent,
        };
        return new StockAfterListing.Line(entry, left && body.MeasuredFile is { } file ? From(to, file) : null);
    }

    private static bool Names(CoverOrder order, string roll, RollBody body) => order.Felt == body.Felt
        || (order.Pins is { } pins && (pins.Lots.Contains(body.Lot) || pins.Rolls.Contains(roll)));

    private DiesAfterListing.Line Line(string name, DieState die, string to) => new()
    {
        Die = name,
        Ball = die.Die.Ball,
        Layout = From(to, die.Die.Layout),
        StrikesLeft = (int)Math.Max(0, die.Left),
        Repeats = die.Die.Repeats,
        Band = die.Die.Band,
        MostWidthMm = (double)die.Die.MostWidthMm,
        MakePrice = die.Die.MakePrice,
        LifeStrikes = die.Die.LifeStrikes,
        ReRules = die.Die.ReRules,
        ReRulePrice = die.Die.ReRulePrice,
        From = die.Die.From,
        MakeDays = die.Die.MakeDays,
    };

    // Where it is of one lot and some of it is cut, it stays in that lot.
    private CoverOrder OrderOf(string name, OrderState state)
    {
        OrderBody body = state.Order;
        bool begun = body.OneLot && state.FirstRoll is not null;
        RollBody? first = begun ? rolls.FirstOrDefault(roll => roll.Name == state.FirstRoll).State?.Roll : null;
        return new CoverOrder
        {
            Name = name,
            Ball = body.Ball,
            Balls = state.Left,
            Due = Day(body.Due)!.Value,
            OneLot = body.OneLot,
            Felt = first?.Felt ?? body.Felt,
            ReserveBalls = body.ReserveBalls,
            Priority = body.Priority,
            Pins = new OrderPins
            {
                Lots = first is null ? body.Lots ?? [] : [first.Lot],
                Rolls = body.Rolls ?? [],
                Presses = body.Presses ?? [],
                Dies = body.Dies ?? [],
                Day = Day(body.Day),
                NotLots = body.NotLots ?? [],
                NotRolls = body.NotRolls ?? [],
                NotPresses = body.NotPresses ?? [],
                NotDies = body.NotDies ?? [],
            },
        };
    }

    private static DateOnly? Day(string? text) => text is null ? null : DayText.Of(text);

    private string From(string to, string file) =>
        Path.GetRelativePath(to, Path.GetFullPath(Path.Combine(folder ?? "/", file))).Replace('\\', '/');
}
