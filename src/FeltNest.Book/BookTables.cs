using System.Data.Common;
using System.Globalization;

namespace FeltNest.Book;

/// <summary>The statements of a book: the same for both stores, every value a parameter.</summary>
internal sealed class BookTables(DbConnection connection, DbTransaction? transaction) : IDisposable
{
    private const string Columns = "number, act, kind, subject, name, at, by_whom, source, hash, body, corrects, why";

    // A server is told so many statements at a time: each answer costs a way there and back.
    private const int MostWaiting = 500;

    private readonly Dictionary<string, DbCommand> prepared = [];
    private DbBatch? waiting;
    private bool figuresWait;

    /// <inheritdoc/>
    public void Dispose()
    {
        waiting?.Dispose();
        foreach (DbCommand command in prepared.Values)
        {
            command.Dispose();
        }
    }

    /// <summary>Number of the last entry; 0 for none.</summary>
    public long LastEntry() => Convert.ToInt64(Scalar("SELECT COALESCE(MAX(number), 0) FROM entry"), CultureInfo.InvariantCulture);

    /// <summary>Writes an entry.</summary>
    public void Insert(BookEntry entry) => Run(
        $"INSERT INTO entry ({Columns}) VALUES (@a, @b, @c, @d, @e, @f, @g, @h, @i, @j, @k, @l)",
        entry.Number, entry.Act, EnumWord.Of(entry.Kind), EnumWord.Of(entry.Subject.Kind), entry.Subject.Name, entry.At, entry.By,
        Or(entry.Source), Or(entry.Hash), entry.Body, Or(entry.Corrects), Or(entry.Why));

    /// <summary>Writes what an entry is about.</summary>
    public void Touch(Subject subject, long entry) =>
        Run("INSERT INTO touch (subject, name, entry) VALUES (@a, @b, @c)", EnumWord.Of(subject.Kind), subject.Name, entry);

    /// <summary>Keeps what is known of something.</summary>
    public void Keep(Subject subject, long rank, object state)
    {
        figuresWait = true;
        Run(
            "INSERT INTO kept (subject, name, open, rank, state) VALUES (@a, @b, @c, @d, @e) "
                + "ON CONFLICT (subject, name) DO UPDATE SET open = excluded.open, state = excluded.state",
            EnumWord.Of(subject.Kind), subject.Name, BookFold.IsOpen(state) ? 1 : 0, rank, BookFold.Text(state));
    }

    /// <summary>Keeps nothing of something any more.</summary>
    public void Forget(Subject subject)
    {
        figuresWait = true;
        Run("DELETE FROM kept WHERE subject = @a AND name = @b", EnumWord.Of(subject.Kind), subject.Name);
    }

    /// <summary>Sends the statements that wait; where a store takes each at once there are none.</summary>
    public void Send()
    {
        if (waiting is { BatchCommands.Count: > 0 })
        {
            waiting.ExecuteNonQuery();
            waiting.BatchCommands.Clear();
        }

        figuresWait = false;
    }

    /// <summary>What is kept of something; null for nothing.</summary>
    public object? State(Subject subject)
    {
        // Entries that wait change no figure: an act asks for many.
        if (figuresWait)
        {
            Send();
        }

        const string Kept = "SELECT state FROM kept WHERE subject = @a AND name = @b";
        return Command(Kept, EnumWord.Of(subject.Kind), subject.Name).ExecuteScalar() is string text
            ? BookFold.State(subject.Kind, text)
            : null;
    }

    /// <summary>All that is kept of a kind, in the order in which it came.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="openOnly">Only that of which work is still to come.</param>
    public IReadOnlyList<(string Name, object State)> States(SubjectKind kind, bool openOnly) =>
        Kept(kind, openOnly, int.MaxValue, (name, text) => (name, BookFold.State(kind, text)));

    /// <summary>What is made of all that is kept of a kind, in the order in which it came: one at a time, as there can be very
    /// many.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="openOnly">Only that of which work is still to come.</param>
    /// <param name="most">So many at most, the last ones.</param>
    /// <param name="make">Makes it of a name and of the state as it is kept.</param>
    public IReadOnlyList<T> Kept<T>(SubjectKind kind, bool openOnly, int most, Func<string, string, T> make)
    {
        string open = openOnly ? "AND open = 1 " : string.Empty;
        List<T> states = Rows(
            $"SELECT name, state FROM kept WHERE subject = @a {open}ORDER BY rank DESC LIMIT @b",
            row => make(row.GetString(0), row.GetString(1)), EnumWord.Of(kind), (long)most);
        states.Reverse();
        return states;
    }

    /// <summary>How many are kept of a kind.</summary>
    public long Count(SubjectKind kind, bool openOnly) => Convert.ToInt64(
        Scalar($"SELECT COUNT(*) FROM kept WHERE subject = @a{(openOnly ? " AND open = 1" : string.Empty)}", EnumWord.Of(kind)),
        CultureInfo.InvariantCulture);

    /// <summary>The entry of a number, or null.</summary>
    public BookEntry? Entry(long number) => Rows($"SELECT {Columns} FROM entry WHERE number = @a", Read, number).FirstOrDefault();

    /// <summary>The last entry of a kind, taken back or not; null for none.</summary>
    public BookEntry? LastOfKind(EntryKind kind) =>
        Rows($"SELECT {Columns} FROM entry WHERE kind = @a ORDER BY number DESC LIMIT 1", Read, EnumWord.Of(kind)).FirstOrDefault();

    /// <summary>The last entries, the last one first.</summary>
    public IReadOnlyList<BookEntry> LastEntries(int most) =>
        Rows($"SELECT {Columns} FROM entry ORDER BY number DESC LIMIT @a", Read, (long)most);

    /// <summary>The entries of an act.</summary>
    public IReadOnlyList<BookEntry> OfAct(long act) => Rows($"SELECT {Columns} FROM entry WHERE act = @a ORDER BY number", Read, act);

    /// <summary>The entries about something, in the order of their numbers.</summary>
    public IReadOnlyList<BookEntry> OfSubject(Subject subject) => Rows(
        $"SELECT {string.Join(", ", Columns.Split(", ").Select(c => $"e.{c}"))} FROM touch t JOIN entry e ON e.number = t.entry "
            + "WHERE t.subject = @a AND t.name = @b ORDER BY e.number",
        Read, EnumWord.Of(subject.Kind), subject.Name);

    /// <summary>What an entry is about.</summary>
    public IReadOnlyList<Subject> TouchedBy(long entry) => Rows(
        "SELECT subject, name FROM touch WHERE entry = @a",
        row => new Subject(EnumWord.Find<SubjectKind>(row.GetString(0))!.Value, row.GetString(1)), entry);

    /// <summary>Numbers of the corrections of an entry.</summary>
    public IReadOnlyList<long> CorrectionsOf(long root) => Rows(
        "SELECT number FROM entry WHERE corrects = @a AND kind <> @b", row => row.GetInt64(0), root, EnumWord.Of(EntryKind.Undone));

    /// <summary>The entries of two kinds, in the order of their numbers.</summary>
    public IReadOnlyList<BookEntry> OfKinds(EntryKind one, EntryKind other) => Rows(
        $"SELECT {Columns} FROM entry WHERE kind = @a OR kind = @b ORDER BY number", Read, EnumWord.Of(one), EnumWord.Of(other));

    /// <summary>All entries, in the order of their numbers.</summary>
    public IReadOnlyList<BookEntry> AllEntries() => Rows($"SELECT {Columns} FROM entry ORDER BY number", Read);

    /// <summary>All that is kept.</summary>
    public IReadOnlyList<(Subject Subject, long Rank, string State)> AllKept() => Rows(
        "SELECT subject, name, rank, state FROM kept",
        row => (new Subject(EnumWord.Find<SubjectKind>(row.GetString(0))!.Value, row.GetString(1)), row.GetInt64(2), row.GetString(3)));

    /// <summary>The last act that is neither taken back nor one that takes back; null for none.</summary>
    public long? LastStandingAct()
    {
        HashSet<long> undone = [];
        long before = LastEntry() + 1;
        while (before > 1)
        {
            // A page at a time: a server sends all that it was asked for, though the first line may be enough.
            List<(long Number, long Act, string Kind, long Corrects)> page = Rows(
                "SELECT number, act, kind, COALESCE(corrects, 0) FROM entry WHERE number < @a ORDER BY number DESC LIMIT 100",
                row => (row.GetInt64(0), row.GetInt64(1), row.GetString(2), row.GetInt64(3)), before);
            foreach ((_, long act, string kind, long corrects) in page)
            {
                if (kind == EnumWord.Of(EntryKind.Undone))
                {
                    undone.Add(corrects);
                }
                else if (!undone.Contains(act))
                {
                    return act;
                }
            }

            before = page.Count > 0 ? page[^1].Number : 0;
        }

        return null;
    }

    /// <summary>Runs statements without values: those that make the tables.</summary>
    public void Make(string statements)
    {
        Send();
        using DbCommand command = connection.CreateCommand();
        (command.CommandText, command.Transaction) = (statements, transaction);
        command.ExecuteNonQuery();
    }

    private static BookEntry Read(DbDataReader row) => new()
    {
        Number = row.GetInt64(0),
        Act = row.GetInt64(1),
        Kind = EnumWord.Find<EntryKind>(row.GetString(2))!.Value,
        Subject = new Subject(EnumWord.Find<SubjectKind>(row.GetString(3))!.Value, row.GetString(4)),
        At = row.GetString(5),
        By = row.GetString(6),
        Source = row.IsDBNull(7) ? null : row.GetString(7),
        Hash = row.IsDBNull(8) ? null : row.GetString(8),
        Body = row.GetString(9),
        Corrects = row.IsDBNull(10) ? null : row.GetInt64(10),
        Why = row.IsDBNull(11) ? null : row.GetString(11),
    };

    private static object Or(object? value) => value ?? DBNull.Value;

    private List<T> Rows<T>(string statement, Func<DbDataReader, T> read, params object[] values)
    {
        Send();
        List<T> rows = [];
        using DbDataReader row = Command(statement, values).ExecuteReader();
        while (row.Read())
        {
            rows.Add(read(row));
        }

        return rows;
    }

    private object? Scalar(string statement, params object[] values)
    {
        Send();
        return Command(statement, values).ExecuteScalar();
    }

    private void Run(string statement, params object[] values)
    {
        if (!connection.CanCreateBatch)
        {
            Command(statement, values).ExecuteNonQuery();
            return;
        }

        if (waiting is null)
        {
            waiting = connection.CreateBatch();
            waiting.Transaction = transaction;
        }

        DbBatchCommand command = waiting.CreateBatchCommand();
        command.CommandText = statement;
        for (int i = 0; i < values.Length; i++)
        {
            DbParameter parameter = command.CreateParameter();
            (parameter.ParameterName, parameter.Value) = (NameOf(i), values[i]);
            command.Parameters.Add(parameter);
        }

        waiting.BatchCommands.Add(command);
        if (waiting.BatchCommands.Count >= MostWaiting)
        {
            Send();
        }
    }

    // Parameters are named @a, @b ... in the order of the values.
    private static string NameOf(int value) => $"@{(char)('a' + value)}";

    private DbCommand Command(string statement, params object[] values)
    {
        if (!prepared.TryGetValue(statement, out DbCommand? command))
        {
            prepared.Add(statement, command = connection.CreateCommand());
            (command.CommandText, command.Transaction) = (statement, transaction);
            for (int i = 0; i < values.Length; i++)
            {
                DbParameter parameter = command.CreateParameter();
                parameter.ParameterName = NameOf(i);
                command.Parameters.Add(parameter);
            }
        }

        for (int i = 0; i < values.Length; i++)
        {
            command.Parameters[i].Value = values[i];
        }

        return command;
    }
}
