using FeltNest.Files.Csv;
using FeltNest.Files.Fields;
using FeltNest.Rolls.Orders;
using static FeltNest.Files.Orders.OrdersListing;

namespace FeltNest.Files.Orders;

/// <summary>Reads a list of orders (CSV).</summary>
internal static class OrdersReader
{
    /// <summary>Most orders of one list.</summary>
    public const int MostOrders = 500;

    /// <summary>The orders of a file in its order.</summary>
    /// <param name="path">The file.</param>
    /// <param name="balls">Balls for which there are dies.</param>
    /// <param name="felts">Felts in stock and on offer.</param>
    /// <param name="names">What an order may be held to or kept from; null for nothing.</param>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<CoverOrder> Read(
        string path, IEnumerable<string> balls, IEnumerable<string> felts, ShopNames? names = null) =>
        Read(InputText.OfFile(path), balls, felts, names);

    /// <summary>The orders of a text in its order.</summary>
    /// <param name="text">The text.</param>
    /// <param name="balls">Balls for which there are dies.</param>
    /// <param name="felts">Felts in stock and on offer.</param>
    /// <param name="names">What an order may be held to or kept from; null for nothing.</param>
    /// <exception cref="InputException">Names the text, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<CoverOrder> Read(
        InputText text, IEnumerable<string> balls, IEnumerable<string> felts, ShopNames? names = null)
    {
        string[] ballWords = [.. balls.Distinct()];
        string[] feltWords = [.. felts.Distinct()];
        HashSet<string> taken = [];
        return CsvTable.Read(text, OrdersListing.Listing).Each(row =>
        {
            CoverOrder order = Read(row, ballWords, feltWords) with { Pins = OrderPinsColumns.Read(row, names ?? new ShopNames()) };
            if (!row.Insisted && names?.Reach?.Question(order.Ball, order.Balls) is { } question)
            {
                throw row.Asked(ThousandBalls, question);
            }

            if (!taken.Add(order.Name))
            {
                throw row.Fault(Order, $"'{order.Name}' stands in the list twice: every order needs a name of its own");
            }

            return taken.Count <= MostOrders
                ? order
                : throw row.TooMany(Order, $"is one too many: at most {MostOrders} orders are planned at once");
        });
    }

    private static CoverOrder Read(CsvRow row, string[] balls, string[] felts)
    {
        int wanted = (int)Math.Round(row.Money(ThousandBalls) * 1000);
        string? felt = row.Has(Felt) ? Known(row, Felt, felts, "is neither in stock nor on offer: there are") : null;
        return new CoverOrder
        {
            Name = row.Text(Order),
            Ball = Known(row, OrdersListing.Ball, balls, "has no die: the dies cut"),
            Balls = wanted,
            Due = row.Day(Due),
            OneLot = row.Word(Lots) == OneLot,
            Felt = felt,
            ReserveBalls = (int)(row.OptionalNumber(ReserveBalls) ?? 0),
            Priority = row.Whole(Priority),
        };
    }

    private static string Known(CsvRow row, TextField column, string[] words, string problem)
    {
        string text = row.Text(column);
        return words.Contains(text)
            ? text
            : throw row.Fault(column, $"'{text}' {problem} {string.Join(", ", words)}{NearestWord.Hint(text, words)}");
    }
}
