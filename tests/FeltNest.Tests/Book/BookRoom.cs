using FeltNest.Book;
using FeltNest.Runs.Book;
using FeltNest.Tests.Files;
using Xunit;

namespace FeltNest.Tests.Book;

/// <summary>A place for a book of a test, in either store, gone afterwards.</summary>
internal sealed class BookRoom : IDisposable
{
    public const string Sqlite = "SQLite";
    public const string Postgres = "PostgreSQL";

    private readonly TempFolder folder = new();

    public BookRoom(string store)
    {
        Assert.SkipUnless(store == Sqlite || PostgresServer.IsInstalled, "postgresql is not installed");
        Place = store == Sqlite ? folder.Path("room.db") : PostgresServer.NewSchema();
    }

    public string Place { get; }

    public string Path(string name) => folder.Path(name);

    public string Write(string name, string text) => folder.Write(name, text);

    public BookStore Started() => Books.Start(Place);

    public static BookDesk Desk(BookStore store, string by = "anna") => new(store, Hand(by));

    public static BookHand Hand(string by = "anna") => new() { By = by, At = "2026-03-02T06:00:00" };

    public void Dispose() => folder.Dispose();
}
