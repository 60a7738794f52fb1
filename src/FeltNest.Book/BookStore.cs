using System.Data.Common;

namespace FeltNest.Book;

/// <summary>A book in a store: read as it stood at one moment, written one act at a time.</summary>
internal abstract class BookStore : IDisposable
{
    // So many tries of a second each for another desk to end its writing.
    private const int MostTries = 30;

    private readonly Action<string>? say;

    /// <summary>A store.</summary>
    /// <param name="name">What messages call it.</param>
    /// <param name="say">Told where this desk has to wait; may be null.</param>
    protected BookStore(string name, Action<string>? say) => (Name, this.say) = (name, say);

    /// <summary>What messages call it.</summary>
    public string Name { get; }

    /// <summary>Folder from which the files of its rolls and dies are seen; null where they are named whole.</summary>
    public abstract string? Folder { get; }

    /// <summary>The connection.</summary>
    protected abstract DbConnection Connection { get; }

    /// <summary>Reads the book as it stands at one moment, whoever writes meanwhile.</summary>
    /// <exception cref="InputException">The book cannot be read.</exception>
    public T Read<T>(Func<BookTables, T> work) => Guarded(() =>
    {
        using DbTransaction snapshot = Snapshot();
        using BookTables tables = new(Connection, snapshot);
        return work(tables);
    });

    /// <summary>Writes one act: all of it, or nothing.</summary>
    /// <exception cref="InputException">The book cannot be written, or the act cannot be.</exception>
    public T Write<T>(BookOrigin origin, Func<BookWriter, T> work) => Guarded(() =>
    {
        using DbTransaction transaction = Waited();
        using BookTables tables = new(Connection, transaction);
        BookWriter writer = new(tables, origin);
        T result = work(writer);
        writer.Finish();
        transaction.Commit();
        return result;
    });

    /// <summary>Writes a copy of the book, as it stands at one moment, to a SQLite file that is not there yet.</summary>
    /// <exception cref="InputException">The file is there, or cannot be written.</exception>
    public abstract void CopyTo(string path);

    /// <inheritdoc/>
    public virtual void Dispose()
    {
        Connection.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>Begins a transaction that sees one moment.</summary>
    protected abstract DbTransaction Snapshot();

    /// <summary>Begins a transaction that writes alone; null where another desk still writes after a second.</summary>
    protected abstract DbTransaction? TryBegin();

    /// <summary>A fault of the store as a line for the user; null for one that is none of the user's.</summary>
    protected abstract string? Problem(DbException error);

    /// <summary>Does work of the store; its faults are told as a line.</summary>
    /// <exception cref="InputException">The store failed.</exception>
    protected T Guarded<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (DbException error) when (Problem(error) is { } problem)
        {
            throw new InputException(Name, null, problem, error);
        }
        catch (InputException error) when (error is { File: null, Asked: null })
        {
            throw error.InFile(Name);
        }
    }

    /// <summary>Begins writing; waits for another desk, and says so.</summary>
    protected DbTransaction Waited()
    {
        for (int tried = 1; tried <= MostTries; tried++)
        {
            if (TryBegin() is { } begun)
            {
                return begun;
            }

            if (tried == 1)
            {
                say?.Invoke($"another desk is writing in {Name}: waiting for it, {MostTries} s at most");
            }
        }

        throw new InputException(Name, null, $"another desk is writing; waited {MostTries} s and wrote nothing: try again");
    }

    /// <summary>Makes the tables of the present version in an empty store, or brings those of an older one up to date.</summary>
    /// <param name="tables">The tables.</param>
    /// <param name="from">Version that is there; 0 for none.</param>
    /// <param name="never">Statements that keep entries from being changed or taken out.</param>
    protected static void BringUp(BookTables tables, int from, string never)
    {
        if (from == 0)
        {
            tables.Make(BookSchema.Entries);
            tables.Make(never);
        }

        tables.Make(BookSchema.Figures);
        KeepAll(tables, tables.AllEntries());
    }

    /// <summary>Keeps the figures of a book whose entries alone stand there.</summary>
    protected static void KeepAll(BookTables tables, IReadOnlyList<BookEntry> entries)
    {
        WholeBook whole = new(entries);
        foreach ((Subject subject, long entry) in whole.Touches)
        {
            tables.Touch(subject, entry);
        }

        foreach ((Subject subject, long rank, object state) in whole.Figures())
        {
            tables.Keep(subject, rank, state);
        }

        tables.Send();
    }
}
