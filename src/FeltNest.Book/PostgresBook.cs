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
    private const string TableIsThere = "42P07";
    private const string NameIsThere = "23505";

    // Goes before what the user writes, which may say otherwise: statements that come again are prepared by the server.
    private const string Usual = "Max Auto Prepare=20;";

    private const string Never = """
        CREATE FUNCTION entry_stays() RETURNS trigger LANGUAGE plpgsql AS
            'BEGIN RAISE EXCEPTION ''an entry of the book is never changed and never taken out''; END';
        CREATE TRIGGER entry_stays BEFORE UPDATE OR DELETE ON entry FOR EACH ROW EXECUTE FUNCTION entry_stays();
        CREATE TRIGGER entry_remains BEFORE TRUNCATE ON entry FOR EACH STATEMENT EXECUTE FUNCTION entry_stays();
        """;

    private const string LineBroke =
        "the line to the database broke: an act stands whole or not at all, so look at the last entries before you write it again";

    private const string HasOne = "holds a book already: a new one needs a database or a schema of its own";

    private readonly NpgsqlConnection connection;
    private bool isOpen;

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
                throw new InputException(book.Name, null, HasOne);
            }

            book.MakeVersion(tables);
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
        PostgresException { SqlState: "53200" or "53300" or "53400" } =>
            "the database has no memory or no connection to spare: nothing of this was written; try again",
        PostgresException { SqlState: "25006" } =>
            "the database may only be read: it is a copy, or was set so; nothing of this was written",
        PostgresException { SqlState: "42501" } => "may not be written by this user of the database",
        PostgresException { SqlState: "28P01" or "28000" } => "the database refuses this user",
        PostgresException { SqlState: "3D000" } => "there is no such database",
        PostgresException { SqlState: "3F000" } => "the schema of the search path is not there",
        PostgresException { SqlState: "58030" or "XX001" or "XX002" } =>
            "the disk of the database gave an error: nothing of this was written; ask who looks after the database before going on",
        PostgresException { SqlState: "55P03" or "57014" or "40001" or "40P01" } =>
            "the database ended the work before it was done: nothing of this was written; try again",
        PostgresException { SqlState: not ("57P01" or "57P02" or "57P03" or "57P05" or "25P03") } => null,
        NpgsqlException when !isOpen => "the database cannot be reached",
        NpgsqlException => LineBroke,
        _ => null,
    };

    // Of two desks that start a book at once the second waits here for the first.
    private void MakeVersion(BookTables tables)
    {
        try
        {
            tables.Make("CREATE TABLE book (application TEXT NOT NULL, version INTEGER NOT NULL)");
        }
        catch (PostgresException error) when (error.SqlState is TableIsThere or NameIsThere)
        {
            throw new InputException(Name, null, HasOne, error);
        }
    }

    private static PostgresBook Connected(string place, Action<string>? say)
    {
        NpgsqlConnectionStringBuilder words;
        try
        {
            words = new NpgsqlConnectionStringBuilder(Usual + place) { Pooling = false, ApplicationName = "FeltNest" };
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
            book.isOpen = true;
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
