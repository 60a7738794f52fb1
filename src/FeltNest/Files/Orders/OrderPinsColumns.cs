using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using FeltNest.Rolls.Orders;

namespace FeltNest.Files.Orders;

/// <summary>Reads and writes the columns of a list of orders that hold an order to something or keep it from it.</summary>
internal static class OrderPinsColumns
{
    // Between names of one cell. A name that holds it can stand there alone.
    private const char Between = ';';

    /// <summary>What a line holds its order to and keeps it from; null for nothing.</summary>
    /// <exception cref="InputException">A name that is in no list, or one that the order is both held to and kept from.</exception>
    public static OrderPins? Read(CsvRow row, ShopNames names)
    {
        Field[] columns =
        [
            OrdersListing.Lot, OrdersListing.Roll, OrdersListing.Press, OrdersListing.Die, OrdersListing.Day, OrdersListing.NotLot,
            OrdersListing.NotRoll, OrdersListing.NotPress, OrdersListing.NotDie,
        ];
        if (!Array.Exists(columns, row.Has))
        {
            return null;
        }

        OrderPins pins = new()
        {
            Lots = Names(row, OrdersListing.Lot, names.Lots),
            Rolls = Names(row, OrdersListing.Roll, names.Rolls),
            Presses = Names(row, OrdersListing.Press, names.Presses),
            Dies = Names(row, OrdersListing.Die, names.Dies),
            NotLots = Names(row, OrdersListing.NotLot, names.Lots),
            NotRolls = Names(row, OrdersListing.NotRoll, names.Rolls),
            NotPresses = Names(row, OrdersListing.NotPress, names.Presses),
            NotDies = Names(row, OrdersListing.NotDie, names.Dies),
            Day = row.OptionalDay(OrdersListing.Day),
        };
        NotBoth(row, OrdersListing.NotLot, pins.Lots, pins.NotLots);
        NotBoth(row, OrdersListing.NotRoll, pins.Rolls, pins.NotRolls);
        NotBoth(row, OrdersListing.NotPress, pins.Presses, pins.NotPresses);
        NotBoth(row, OrdersListing.NotDie, pins.Dies, pins.NotDies);
        return pins;
    }

    /// <summary>Names as one cell.</summary>
    public static string Cell(IReadOnlyList<string>? names) => string.Join(Between, names ?? []);

    /// <summary>The names of a cell, where nothing is known of them.</summary>
    public static IEnumerable<string> NamesOf(string cell) => cell.Split(Between, StringSplitOptions.TrimEntries);

    private static string[] Names(CsvRow row, TextField column, IReadOnlyList<string> known)
    {
        if (row.OptionalText(column) is not { } cell)
        {
            return [];
        }

        string[] names = known.Contains(cell) ? [cell] : cell.Split(Between, StringSplitOptions.TrimEntries);
        string? strange = Array.Find(names, name => !known.Contains(name));
        return strange is null
            ? [.. names.Distinct()]
            : throw row.Fault(
                column, $"'{strange}' is in no list: there are {string.Join(", ", known.Distinct())}{NearestWord.Hint(strange, known)}");
    }

    private static void NotBoth(CsvRow row, TextField column, IReadOnlyList<string> held, IReadOnlyList<string> barred)
    {
        if (held.Intersect(barred).FirstOrDefault() is { } both)
        {
            throw row.Fault(column, $"'{both}' is what the order is held to: it cannot be kept from it");
        }
    }
}
