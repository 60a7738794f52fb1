using System.Globalization;
using FeltNest.Files.Csv;
using FeltNest.Rolls.Orders;

namespace FeltNest.Files.Orders;

/// <summary>Reads a list of orders (CSV).</summary>
public static class OrdersReader
{
    /// <summary>Most orders of one list.</summary>
    public const int MostOrders = 500;

    private static readonly string[] Required = ["order", "ball", "thousandBalls", "due"];
    private static readonly string[] Optional = ["lots", "felt", "reserveBalls"];
    private static readonly string[] Lots = ["one", "any"];

    /// <summary>The orders of a file in its order.</summary>
    /// <param name="path">The file.</param>
    /// <param name="balls">Balls for which there are dies.</param>
    /// <param name="felts">Felts in stock and on offer.</param>
    /// <exception cref="InputException">Names the file, the line, the column, the value found and what is allowed.</exception>
    public static IReadOnlyList<CoverOrder> Read(string path, IEnumerable<string> balls, IEnumerable<string> felts)
    {
        string[] ballWords = [.. balls.Distinct()];
        string[] feltWords = [.. felts.Distinct()];
        List<CoverOrder> orders = [];
        foreach (CsvRow row in CsvTable.Read(path, Required, Optional).Rows)
        {
            int wanted = (int)Math.Round(row.Money("thousandBalls", 0.001m, 100_000m, "thousand balls") * 1000);
            CoverOrder order = new(
                row.Text("order"), Known(row, "ball", ballWords, "has no die: the dies cut"), wanted, Day(row, "due"),
                !row.Has("lots") || row.Word("lots", Lots) == "one",
                row.Has("felt") ? Known(row, "felt", feltWords, "is neither in stock nor on offer: there are") : null,
                (int)(row.OptionalNumber("reserveBalls", 0, 10_000_000, "balls") ?? 0));
            if (orders.Exists(o => o.Name == order.Name))
            {
                throw row.Fault("order", $"'{order.Name}' stands in the list twice: every order needs a name of its own");
            }

            orders.Add(
                orders.Count < MostOrders
                    ? order
                    : throw row.Fault("order", $"is one too many: at most {MostOrders} orders are planned at once"));
        }

        return orders;
    }

    /// <summary>A day, written yyyy-MM-dd.</summary>
    internal static DateOnly Day(CsvRow row, string column) =>
        DayOf(row.Text(column)) ?? throw row.Fault(column, $"'{row.Text(column)}' is not a day: write it as 2026-03-31 (year-month-day)");

    /// <summary>The day of a text, or null.</summary>
    internal static DateOnly? DayOf(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            && day.Year is >= 2000 and <= 2199
            ? day
            : null;

    private static string Known(CsvRow row, string column, string[] words, string problem) => words.Contains(row.Text(column))
        ? row.Text(
            column) : throw row.Fault(
                column, $"'{row.Text(column)}' {problem} {string.Join(", ", words)}{NearestWord.Hint(row.Text(column), words)}");
}
