using FeltNest.Files.Orders;
using FeltNest.Rolls.Orders;

namespace FeltNest.Runs.Rolls;

/// <summary>Writes lists of rolls, dies and orders that the next run reads as they are.</summary>
internal static class ShopLists
{
    /// <summary>A stock list.</summary>
    /// <param name="rolls">Its lines.</param>
    /// <param name="folder">Folder it will stand in.</param>
    public static byte[] Stock(IEnumerable<StockEntry> rolls, string folder) => StockAfterListing.Columns.Csv(
        rolls.Select(entry => new StockAfterListing.Line(entry, entry.MeasuredFile is { } file ? From(folder, file) : null)));

    /// <summary>A list of dies.</summary>
    /// <param name="dies">Its lines.</param>
    /// <param name="folder">Folder it will stand in.</param>
    public static byte[] Dies(IEnumerable<DieEntry> dies, string folder) => DiesAfterListing.Columns.Csv(
        dies.Select(entry => DiesAfterListing.Line.Of(entry, From(folder, entry.LayoutFile))));

    /// <summary>A list of orders.</summary>
    public static byte[] Orders(IEnumerable<CoverOrder> orders) => OrdersAfterListing.Columns.Csv(orders);

    private static string From(string folder, string file) => Path.GetRelativePath(folder, file).Replace('\\', '/');
}
