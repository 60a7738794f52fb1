using System.Data;
using System.Data.Common;
using System.Globalization;
using Microsoft.Data.Sqlite;

namespace FeltNest.Book;

/// <summary>A book in one SQLite file beside the work.</summary>
/// <remarks>Write-ahead log, every commit written through to the disk, one writer at a time (BEGIN IMMEDIATE). Codes and pragmas are those
/// of the SQLite documentation, pages "Result and Error Codes" and "Pragma Statements".</remarks>
internal sealed class SqliteBook : BookStore
{
    // Result codes.
    private const int Busy = 5;
    private const int Locked = 6;

    private const string Never = """
        CREATE TRIGGER entry_stays BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'an entry of the book is never changed'); END;
        CREATE TRIGGER entry_remains BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'an entry of the book is never taken out'); END;
        """;

    private readonly SqliteConnection connection;
    private readonly string path;

    private SqliteBook(string path, SqliteConnection connection, Action<string>? say)
        : base(path, say) => (this.path, this.connection) = (path, connection);

    /// <inheritdoc/>
    public override string? Folder => Path.GetDirectoryName(Path.GetFullPath(path));

    /// <inheritdoc/>
    protected override DbConnection Connection => connection;

    /// <summary>Most pages of the file, to try a full disk; 0 for no end.</summary>
    internal int MostPages
    {
        set => Pragma($"max_page_count = {value}");
    }

    /// <summary>Makes an empty book in a file that is not there.</summary>
    /// <exception cref="InputException">The file is there, or cannot be made.</exception>
    public static SqliteBook Start(string path, Action<string>? say)
    {
        if (Path.Exists(path))
        {
            throw new InputException(path, null, "is there already: a new book needs a name of its own");
        }

        SqliteBook book = new(path, Connected(path, SqliteOpenMode.ReadWriteCreate), say);
        return book.Guarded(() =>
        {
            book.Pragma("journal_mode = WAL");
            using (DbTransaction transaction = book.Waited())
            using (BookTables tables = new(book.connection, transaction))
            {
                BringUp(tables, 0, Never);
                tables.Make($"PRAGMA application_id = {BookSchema.ApplicationId}; PRAGMA user_version = {BookSchema.Version};");
                transaction.Commit();
            }

            return book;
        });
    }

    /// <summary>Opens a book; one of an older version is brought up to date after a copy is kept beside it.</summary>
    /// <exception cref="InputException">There is none, it is no book, or a newer program wrote it.</exception>
    public static SqliteBook Open(string path, Action<string>? say)
    {
        if (!File.Exists(path))
        {
            throw new InputException(path, null, "is not there: start a book first");
        }

        SqliteBook book = new(path, Connected(path, SqliteOpenMode.ReadWrite), say);
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
        if (Path.Exists(path))
        {
            throw new InputException(path, null, "is there already: a copy never takes the place of a file");
        }

        Guarded(() =>
        {
            string beside = path + ".part";
            File.Delete(beside);
            using SqliteCommand command = connection.CreateCommand();
            command.CommandText = "VACUUM INTO @a";
            command.Parameters.AddWithValue("@a", beside);
            command.ExecuteNonQuery();
            File.Move(beside, path);
            return true;
        });
    }

    /// <summary>Writes entries as they stand in another store.</summary>
    internal void Fill(IReadOnlyList<BookEntry> entries) => Guarded(() =>
    {
        using DbTransaction transaction = Waited();
        using BookTables tables = new(connection, transaction);
        foreach (BookEntry entry in entries)
        {
            tables.Insert(entry);
        }

        KeepAll(tables, entries);
        transaction.Commit();
        return true;
    });

    /// <summary>What SQLite itself finds wrong with the file; null for nothing.</summary>
    public string? Damage() => Guarded(() => Pragma("integrity_check") is string verdict && verdict != "ok" ? verdict : null);

    /// <inheritdoc/>
    protected override DbTransaction Snapshot() => connection.BeginTransaction(IsolationLevel.Serializable, deferred: true);

    /// <inheritdoc/>
    protected override DbTransaction? TryBegin()
    {
        int usual = connection.DefaultTimeout;
        try
        {
            connection.DefaultTimeout = 1;
            return connection.BeginTransaction(IsolationLevel.Serializable, deferred: false);
        }
        catch (SqliteException error) when (error.SqliteErrorCode is Busy or Locked)
        {
            return null;
        }
        finally
        {
            connection.DefaultTimeout = usual;
        }
    }

    /// <inheritdoc/>
    protected override string? Problem(DbException error) => error is not SqliteException fault ? null : fault.SqliteErrorCode switch
    {
        Busy or Locked => "another desk keeps it: try again",
        3 or 8 or 23 => "may not be written: ask who owns the file and its folder",
        10 => "the disk gave an error: nothing of this was written; look at the disk before going on",
        11 => "is damaged: go on with the last copy, and keep this file",
        13 => "the disk is full: nothing of this was written; make room and try again",
        14 => "cannot be opened: look at its folder and who may write there",
        26 => "is no book: it is another kind of file",
        _ => null,
    };

    private static SqliteConnection Connected(string path, SqliteOpenMode mode)
    {
        SqliteConnection connection = new(new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = mode,
            Pooling = false,
            ForeignKeys = true,
            DefaultTimeout = 30,
        }.ToString());
        try
        {
            connection.Open();
        }
        catch (SqliteException error)
        {
            connection.Dispose();
            throw new InputException(path, null, "cannot be opened: look at its folder and who may write there", error);
        }

        return connection;
    }

    private SqliteBook Known(Action<string>? say)
    {
        if (Number("application_id") != BookSchema.ApplicationId)
        {
            throw new InputException(Name, null, "is no book: another program wrote it");
        }

        Pragma("synchronous = FULL");
        int version = Number("user_version");
        if (version > BookSchema.Version)
        {
            throw new InputException(
                Name, null,
                $"is a book of version {version}, this program knows up to {BookSchema.Version}: use the newer program; nothing was "
                    + $"changed");
        }

        if (version < BookSchema.Version)
        {
            string copy = FreeName($"{path}.version-{version}");
            CopyTo(copy);
            say?.Invoke($"{Name} is of version {version}: it is brought up to date; a copy as it was is kept in {copy}");
            using DbTransaction transaction = Waited();
            using BookTables tables = new(connection, transaction);
            if (Number("user_version") == version)
            {
                BringUp(tables, version, Never);
                tables.Make($"PRAGMA user_version = {BookSchema.Version};");
            }

            transaction.Commit();
        }

        return this;
    }

    private static string FreeName(string name)
    {
        string free = name;
        for (int number = 2; Path.Exists(free); number++)
        {
            free = $"{name}-{number}";
        }

        return free;
    }

    private int Number(string pragma) => Convert.ToInt32(Pragma(pragma), CultureInfo.InvariantCulture);

    private object? Pragma(string pragma)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = $"PRAGMA {pragma}";
        return command.ExecuteScalar();
    }
}
