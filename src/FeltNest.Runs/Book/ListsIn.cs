using FeltNest.Book;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Files;
using FeltNest.Files.Costs;
using FeltNest.Files.Csv;
using FeltNest.Files.Orders;
using FeltNest.Files.Rolls;
using FeltNest.Rolls.Orders;

namespace FeltNest.Runs.Book;

/// <summary>The lists of a shop into the book.</summary>
internal static class ListsIn
{
    /// <summary>Rolls that came in.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="list">A stock list.</param>
    /// <param name="costsFile">Rates of currencies, or null.</param>
    /// <param name="supplier">Who sold them, or null.</param>
    /// <param name="again">Whether of a list that stands in part the rest is brought in.</param>
    /// <exception cref="InputException">A list that cannot be used, or one that stands in the book.</exception>
    public static BookSaid Rolls(BookDesk desk, InputText list, string? costsFile, string? supplier, bool again)
    {
        CostInputs costs = costsFile is { } file ? CostsReader.Read(file) : CostInputs.Bare(StockReader.CurrencyOf(list));
        IReadOnlyList<StockEntry> rolls = new StockReader(costs).Entries(list);
        return new BroughtIn(desk, list, again) { What = "rolls", Listing = StockListing.Listing, NameColumn = StockListing.Roll }.Write(
        [
            .. rolls.Select(roll => BookDraft.Of(
                EntryKind.RollReceived, SubjectKind.Roll, roll.Roll.Name, BodyOf(desk, roll) with { Supplier = supplier })),
        ]);
    }

    /// <summary>Dies on the rack, or that can be made.</summary>
    /// <exception cref="InputException">A list that cannot be used, or one that stands in the book.</exception>
    public static BookSaid Dies(BookDesk desk, InputText list, bool again) =>
        new BroughtIn(desk, list, again) { What = "dies", Listing = DiesListing.Listing, NameColumn = DiesListing.Die }.Write(
        [
            .. DiesReader.Entries(list).Select(die => BookDraft.Of(EntryKind.DieMade, SubjectKind.Die, die.Die.Name, BodyOf(desk, die))),
        ]);

    /// <summary>Orders that were taken.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="list">A list of orders.</param>
    /// <param name="again">Whether of a list that stands in part the rest is brought in.</param>
    /// <param name="change">Whether orders that stand are changed to what the list says.</param>
    /// <exception cref="InputException">A list that cannot be used, or one that stands in the book.</exception>
    public static BookSaid Orders(BookDesk desk, InputText list, bool again, bool change)
    {
        BookDraft[] lines =
        [
            .. Read(list).Select(order => BookDraft.Of(EntryKind.OrderTaken, SubjectKind.Order, order.Name, BodyOf(order))),
        ];
        BroughtIn brought = new(desk, list, again || change)
        {
            What = "orders",
            Listing = OrdersListing.Listing,
            NameColumn = OrdersListing.Order,
        };
        BookSaid said = brought.Write(lines, change ? Changed : null);
        string[] balls = desk.Store.Read(
            book => book.States(SubjectKind.Die, openOnly: false).Select(die => ((DieState)die.State).Die.Ball).Distinct().ToArray());
        string[] strange = [.. Read(list).Select(order => order.Ball).Distinct().Where(ball => !balls.Contains(ball))];
        return strange.Length == 0 ? said : said with { Notes = [$"no die of the book cuts {string.Join(", ", strange)} yet"] };
    }

    // An order may name what the book does not hold yet: that is looked at when it is planned.
    private static IReadOnlyList<CoverOrder> Read(InputText list)
    {
        IReadOnlyList<CsvRow> rows = CsvTable.Read(list, OrdersListing.Listing).Rows;
        return OrdersReader.Read(
            list, Cells(rows, OrdersListing.Ball), Cells(rows, OrdersListing.Felt), new ShopNames
            {
                Lots = [.. Names(rows, OrdersListing.Lot), .. Names(rows, OrdersListing.NotLot)],
                Rolls = [.. Names(rows, OrdersListing.Roll), .. Names(rows, OrdersListing.NotRoll)],
                Presses = [.. Names(rows, OrdersListing.Press), .. Names(rows, OrdersListing.NotPress)],
                Dies = [.. Names(rows, OrdersListing.Die), .. Names(rows, OrdersListing.NotDie)],
            });
    }

    private static string[] Cells(IReadOnlyList<CsvRow> rows, FeltNest.Files.Fields.TextField column) =>
        [.. rows.Select(row => row.OptionalText(column)).OfType<string>()];

    private static string[] Names(IReadOnlyList<CsvRow> rows, FeltNest.Files.Fields.TextField column) =>
        [.. Cells(rows, column).SelectMany(OrderPinsColumns.NamesOf)];

    private static BookDraft? Changed(BookDraft line, object there)
    {
        OrderState order = (OrderState)there;
        return BookJson.Write(order.Order) == line.Body ? null : line with { Kind = EntryKind.OrderChanged };
    }

    private static RollBody BodyOf(BookDesk desk, StockEntry entry) => new()
    {
        Felt = entry.Roll.Felt,
        Lot = entry.Roll.Lot,
        WidthMm = Exact(entry.Roll.WidthMm),
        LengthM = Exact(entry.Roll.LengthM),
        Price = entry.Price.Amount,
        PriceUnit = PriceUnits.WordOf(entry.Price.Unit),
        Currency = entry.Price.Currency,
        Available = entry.Available,
        MassPerAreaGsm = entry.MassPerAreaGsm is { } mass ? Exact(mass) : null,
        FaultPercent = entry.FaultPercent is { } faults ? Exact(faults) : null,
        Received = entry.Roll.Received is { } day ? OrderPlanWriter.Day(day) : null,
        NapToward = entry.Roll.Nap is { } nap ? NapWord.Of(nap) : null,
        MeasuredFile = entry.MeasuredFile is { } file ? desk.Kept(file) : null,
    };

    private static DieBody BodyOf(BookDesk desk, DieEntry entry) => new()
    {
        Ball = entry.Die.Ball,
        Layout = desk.Kept(entry.LayoutFile),
        Repeats = entry.Die.Drawn?.Repeats ?? 1,
        Band = entry.Band,
        MostWidthMm = Exact(entry.Die.MostWidthMm),
        StrikesLeft = entry.Die.StrikesLeft,
        MakePrice = entry.Die.MakePrice,
        LifeStrikes = entry.Die.LifeStrikes,
        ReRules = entry.Die.MostReRules,
        ReRulePrice = entry.Die.ReRulePrice,
        From = entry.Die.From is { } day ? OrderPlanWriter.Day(day) : null,
        MakeDays = entry.Die.MakeDays,
    };

    private static OrderBody BodyOf(CoverOrder order) => new()
    {
        Ball = order.Ball,
        Balls = order.Balls,
        Due = OrderPlanWriter.Day(order.Due),
        OneLot = order.OneLot,
        Felt = order.Felt,
        ReserveBalls = order.ReserveBalls,
        Priority = order.Priority,
        Lots = Or(order.Pins?.Lots),
        Rolls = Or(order.Pins?.Rolls),
        Presses = Or(order.Pins?.Presses),
        Dies = Or(order.Pins?.Dies),
        Day = order.Pins?.Day is { } day ? OrderPlanWriter.Day(day) : null,
        NotLots = Or(order.Pins?.NotLots),
        NotRolls = Or(order.Pins?.NotRolls),
        NotPresses = Or(order.Pins?.NotPresses),
        NotDies = Or(order.Pins?.NotDies),
    };

    private static IReadOnlyList<string>? Or(IReadOnlyList<string>? names) => names is { Count: > 0 } ? names : null;

    // A micrometre, or less than any figure of a list.
    private static decimal Exact(double value) => Math.Round((decimal)value, 6);
}
