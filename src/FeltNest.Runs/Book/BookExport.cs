using FeltNest.Book;

namespace FeltNest.Runs.Book;

/// <summary>The lists of the book as files that go in again as they are.</summary>
internal static class BookExport
{
    /// <summary>Names of the files.</summary>
    public static IReadOnlyList<string> FileNames { get; } = ["stock.csv", "dies.csv", "orders.csv", "tickets.csv"];

    /// <summary>The files.</summary>
    /// <param name="store">The book.</param>
    /// <param name="folder">Folder that they will stand in.</param>
    public static IReadOnlyList<(string Name, byte[] Content)> Of(BookStore store, string folder)
    {
        BookLists lists = BookLists.Of(store);
        byte[] tickets = BookShow.Of(store, "tickets", null, openOnly: false, int.MaxValue).Csv();
        return
        [
            (FileNames[0], lists.Stock(folder)), (FileNames[1], lists.Dies(folder)), (FileNames[2], lists.Orders()),
            (FileNames[3], tickets),
        ];
    }
}
