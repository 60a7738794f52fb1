using System.CommandLine;
using FeltNest.Files;
using FeltNest.Files.Orders;
using FeltNest.Runs.Book;

namespace FeltNest.Cli.Commands.Book;

/// <summary>Commands that bring rolls, dies and orders into the book.</summary>
internal static class ListVerbs
{
    private const string Again = "Bring in what of the list is not in the book, though the rest of it is.";

    /// <summary>The commands.</summary>
    public static IEnumerable<Command> All(Terminal terminal) => [Receive(terminal), Die(terminal), Order(terminal), Close(terminal)];

    private static Command Receive(Terminal terminal)
    {
        BookVerb verb = new(terminal, "receive", "Rolls that came in: a stock list, whole or not at all, or one roll by its options.");
        Argument<string?> list = verb.MaybeInput("STOCK", "Rolls (CSV), as for orders.");
        Option<string?>[] cells =
        [
            verb.Text("--name", "roll", "One roll: its name."), verb.Text("--felt", "felt", "Its felt."),
            verb.Text("--lot", "lot", "Its shade lot."), verb.Text("--width", "mm", "Its width."),
            verb.Text("--length", "m", "Its length."),
            verb.Text("--price", "money", "Its price for one unit."), verb.Text("--price-unit", "unit", "m, m2 or kg."),
            verb.Text("--currency", "word", "Currency of the price."), verb.Text("--received", "day", "Day it came."),
            verb.Text("--measured", "file", "The roll as measured (JSON)."),
        ];
        string[] columns =
        [
            StockListing.Roll.Name, StockListing.Felt.Name, StockListing.Lot.Name, StockListing.WidthMm.Name, StockListing.LengthM.Name,
            StockListing.Price.Name, StockListing.PriceUnit.Name, StockListing.Currency.Name, StockListing.Received.Name,
            StockListing.Measured.Name,
        ];
        Option<string?> supplier = verb.Text("--supplier", "name", "Who sold them.");
        Option<string?> costs = verb.Text("--costs", "COSTS", "Rates, where the list has several currencies (JSON).");
        Option<bool> again = verb.Flag("--again", Again);
        verb.TakesList();
        return verb.Writes((parse, desk) => ListsIn.Rolls(
            desk, ListOf(verb, parse, list, cells, columns, (StockListing.Available.Name, StockListing.There)), parse.GetValue(costs),
            parse.GetValue(supplier), parse.GetValue(again)));
    }

    private static Command Die(Terminal terminal)
    {
        BookVerb verb = new(terminal, "die", "Dies on the rack, or that can be made: a list of dies, whole or not at all.");
        Argument<string> list = verb.Input("DIES", "Dies (CSV), as for orders.");
        Option<bool> again = verb.Flag("--again", Again);
        verb.TakesList();
        return verb.Writes((parse, desk) => ListsIn.Dies(desk, verb.Opened(parse, parse.GetValue(list)!), parse.GetValue(again)));
    }

    private static Command Order(Terminal terminal)
    {
        BookVerb verb = new(terminal, "order", "Orders that were taken: a list of orders, whole or not at all, or one by its options.");
        Argument<string?> list = verb.MaybeInput("ORDERS", "Orders (CSV), as for orders.");
        Option<string?>[] cells =
        [
            verb.Text("--name", "order", "One order: its name."), verb.Text("--ball", "ball", "Its ball."),
            verb.Text("--thousand-balls", "n", "Good balls wanted, in thousands."), verb.Text("--due", "day", "Day it is due."),
            verb.Text("--lots", "word", "one or any shade lot."), verb.Text("--felt", "felt", "Felt wanted."),
            verb.Text("--priority", "n", "Weight of its days late, 1 to 9."),
        ];
        string[] columns =
        [
            OrdersListing.Order.Name, OrdersListing.Ball.Name, OrdersListing.ThousandBalls.Name, OrdersListing.Due.Name,
            OrdersListing.Lots.Name, OrdersListing.Felt.Name, OrdersListing.Priority.Name,
        ];
        Option<bool> again = verb.Flag("--again", Again);
        Option<bool> change = verb.Flag("--change", "Change orders that stand in the book to what the list says.");
        verb.TakesList();
        return verb.Writes((parse, desk) => ListsIn.Orders(
            desk, ListOf(verb, parse, list, cells, columns), parse.GetValue(again), parse.GetValue(change)));
    }

    private static Command Close(Terminal terminal)
    {
        BookVerb verb = new(terminal, "close", "Nothing more is cut for an order.");
        Argument<string> order = verb.Input("ORDER", "Name of the order.");
        Option<string?> why = verb.Text("--why", "text", "Why.");
        return verb.Writes((parse, desk) => OrderEntries.Closed(desk, parse.GetValue(order)!, parse.GetValue(why)));
    }

    private static InputText ListOf(
        BookVerb verb, ParseResult parse, Argument<string?> list, Option<string?>[] cells, string[] columns,
        params (string, string?)[] usual)
    {
        string? file = parse.GetValue(list);
        Option<string?>? stray = Array.Find(cells, cell => parse.GetValue(cell) is not null);
        if (file is not null)
        {
            return stray is null
                ? verb.Opened(parse, file)
                : throw new InputException(null, stray.Name, $"belongs to one line alone: give {list.Name} or the options of one");
        }

        return stray is null
            ? throw new InputException(null, list.Name, $"is missing: name a list, or give {cells[0].Name} and what belongs to it")
            : WrittenList.Of("what was typed", [.. cells.Select((cell, i) => (columns[i], parse.GetValue(cell))), .. usual]);
    }
}
