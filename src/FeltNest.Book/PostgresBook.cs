using System.Data;
using System.Data.Common;
using System.Globalization;
using Npgsql;

namespace FeltNest.Book;

/// <summary>A book in a PostgreSQL database that several desks share: in the first schema of the connection's search path.</summary>
/// <remarks>One writer at a time (a lock on the table of entries); readers see one moment. Codes of faults are those of the PostgreSQL
/// documentation, appendix "Error Codes".</remarks>
internal sealed class PostgresBook : BookStore
{
    private const string LockNotAvailable = "55P03";

    private const string Never = """
        CREATE FUNCTION entry_stays() RETURNS trigger LANGUAGE plpgsql AS
            'BEGIN RAISE EXCEPTION ''an entry of the book is never changed and never taken out''; END';
        CREATE TRIGGER entry_stays BEFORE UPDATE OR DELETE ON entry FOR EACH ROW EXECUTE FUNCTION entry_stays();
        CREATE TRIGGER entry_remains BEFORE TRUNCATE ON entry FOR EACH STATEMENT EXECUTE FUNCTION entry_stays();
        """;

    private readonly NpgsqlConnection connection;

    private PostgresBook(string name, NpgsqlConnection connection, Action<string>? say)
        : base(name, say) => this.connection = connection;

    /// <inheritdoc/>
    public override string? Folder => null;

    /// <inheritdoc/>
    protected override DbConnection Connection => connection;

    /// <summary>Makes an empty book in a database that has none.</summary>
    /// <exception cref="InputException">There is one, or the database cannot be reached.</exception>
    public static PostgresBook Start(string place, Action<string>? say)
    {
        PostgresBook book = Connected(place, say);
        return book.Guarded(() =>
        {
            using NpgsqlTransaction transaction = book.connection.BeginTransaction();
            using BookTables tables = new(book.connection, transaction);
            if (book.Version() is not null)
            {
                throw new InputException(book.Name, null, "holds a book already: a new one needs a database or a schema of its own");
            }

            tables.Make("CREATE TABLE book (application TEXT NOT NULL, version INTEGER NOT NULL)");
            BringUp(tables, 0, Never);
            tables.Make($"INSERT INTO book VALUES ('FeltNest', {BookSchema.Version})");
            transaction.Commit();
            return book;
        });
    }

    /// <summary>Opens a book; one of an older version is brought up to date after its entries are kept in a table beside.</summary>
    /// <exception cref="InputException">There is none, a newer program wrote it, or the database cannot be reached.</exception>
    public static PostgresBook Open(string place, Action<string>? say)
    {
        PostgresBook book = Connected(place, say);
        try
        {
            return book.Guarded(() => book.Known(say));
        }
        catch
        {
            book.Dispose();
            throw;
        }
    }

    /// <inheritdoc/>
    public override void CopyTo(string path)
    {
        IReadOnlyList<BookEntry> entries = Read(tables => tables.AllEntries());
        string beside = path + ".part";
        File.Delete(beside);
        if (Path.Exists(path))
        {
            throw new InputException(path, null, "is there already: a copy never takes the place of a file");
        }

        using (SqliteBook copy = SqliteBook.Start(beside, null))
        {
            copy.Fill(entries);
        }

        File.Move(beside, path);
    }

    /// <inheritdoc/>
    protected override DbTransaction Snapshot() => connection.BeginTransaction(IsolationLevel.RepeatableRead);

    /// <inheritdoc/>
    protected override DbTransaction? TryBegin()
    {
        NpgsqlTransaction transaction = connection.BeginTransaction(IsolationLevel.ReadCommitted);
        try
        {
            using NpgsqlCommand command = new("SET LOCAL lock_timeout = '1s'; LOCK TABLE entry IN EXCLUSIVE MODE", connection, transaction);
            command.ExecuteNonQuery();
            return transaction;
        }
        catch (PostgresException error) when (error.SqlState == LockNotAvailable)
        {
            transaction.Rollback();
            transaction.Dispose();
            return null;
        }
    }

    /// <inheritdoc/>
    protected override string? Problem(DbException error) => error switch
    {
        PostgresException { SqlState: "53100" } => "the disk of the database is full: nothing of this was written; make room and try again",
        PostgresException { SqlState: "42501" } => "may not be written by this user of the database",
        PostgresException { SqlState: "28P01" or "28000" } => "the database refuses this user",
        PostgresException { SqlState: "3D000" } => "there is no such database",
        PostgresException { SqlState: "3F000" } => "the schema of the search path is not there",
        PostgresException => null,
        NpgsqlException => "the database cannot be reached, or the line broke: nothing of this act was written unless a check shows it",
        _ => null,
    };

    private static PostgresBook Connected(string place, Action<string>? say)
    {
        NpgsqlConnectionStringBuilder words;
        try
        {
            words = new NpgsqlConnectionStringBuilder(place) { Pooling = false, ApplicationName = "FeltNest" };
        }
        catch (ArgumentException error)
        {
            throw new InputException(
                "the connection string of the book", null, "is not sound: write Host=...;Database=...;Username=...", error);
        }

        PostgresBook book = new($"book of {words.Host} {words.Database}", new NpgsqlConnection(words.ToString()), say);
        return book.Guarded(() =>
        {
            book.connection.Open();
            return book;
        });
    }

    private PostgresBook Known(Action<string>? say)
    {
        int version = Version() ?? throw new InputException(Name, null, "holds no book: start one first");
        if (version > BookSchema.Version)
        {
            throw new InputException(
                Name, null,
                $"is a book of version {version}, this program knows up to {BookSchema.Version}: use the newer program; nothing was "
                    + $"changed");
        }

        if (version < BookSchema.Version)
        {
            using DbTransaction transaction = Waited();
            using BookTables tables = new(connection, transaction);
            if (Version() == version)
            {
                say?.Invoke(
                    $"{Name} is of version {version}: it is brought up to date; its entries as they were stay in entry_version_{version}");
                tables.Make($"CREATE TABLE entry_version_{version} AS TABLE entry");
                BringUp(tables, version, Never);
                tables.Make($"UPDATE book SET version = {BookSchema.Version}");
            }

            transaction.Commit();
        }

        return this;
    }

    private int? Version()
    {
        using NpgsqlCommand there = new("SELECT to_regclass('book') IS NOT NULL AND to_regclass('entry') IS NOT NULL", connection);
        if (there.ExecuteScalar() is not true)
        {
            return null;
        }

        using NpgsqlCommand command = new("SELECT version FROM book", connection);
        return Convert.ToInt32(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }
}
