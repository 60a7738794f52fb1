namespace FeltNest.Book;

/// <summary>Opens books by their place: a file, or the connection string of a PostgreSQL database.</summary>
internal static class Books
{
    /// <summary>True for a connection string: it names a host, and is no file.</summary>
    public static bool IsDatabase(string place) => place.Contains("Host=", StringComparison.OrdinalIgnoreCase) && !Path.Exists(place);

    /// <summary>Opens the book of a place.</summary>
    /// <exception cref="InputException">There is none, or it cannot be opened.</exception>
    public static BookStore Open(string place, Action<string>? say = null) =>
        IsDatabase(place) ? PostgresBook.Open(place, say) : SqliteBook.Open(place, say);

    /// <summary>Starts an empty book.</summary>
    /// <exception cref="InputException">There is one already, or it cannot be made.</exception>
    public static BookStore Start(string place, Action<string>? say = null) =>
        IsDatabase(place) ? PostgresBook.Start(place, say) : SqliteBook.Start(place, say);
}
