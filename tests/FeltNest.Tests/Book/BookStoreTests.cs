using System.Data.Common;
using FeltNest.Book;
using FeltNest.Runs.Book;
using Microsoft.Data.Sqlite;
using Npgsql;
using Xunit;
using static FeltNest.Tests.Book.BookCases;

namespace FeltNest.Tests.Book;

/// <summary>What both stores keep: entries as they are, names as they are, every act whole, and older and newer books apart.</summary>
public sealed class BookStoreTests
{
    private const string Hostile = "'; DROP TABLE entry;--";

    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public void A_hostile_name_stays_a_name(string kind)
    {
        using BookRoom room = new(kind);
        using BookStore store = room.Started();
        using BookDesk desk = BookRoom.Desk(store, Hostile);
        string[] names = [Hostile, "\"x\" OR 1=1", "@a", "\\'; DELETE FROM kept;", "Rolle ß 卷", "=cmd|' /C calc'!A0", "%_"];
        Write(store, [.. names.Select(name => Roll(name))]);

        RollEntries.Scrapped(desk, Hostile, 1, Hostile);

        Assert.Equal(names, store.Read(book => book.States(SubjectKind.Roll, openOnly: false).Select(s => s.Name)));
        Assert.Equal(49, State<RollState>(store, SubjectKind.Roll, Hostile).LeftM);
        BookEntry last = store.Read(book => book.LastEntries(1)[0]);
        Assert.Equal((names.Length + 1, Hostile, Hostile), (last.Number, last.By, last.Why));
        Assert.Empty(Faults(store));
    }

    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public void An_entry_can_neither_be_changed_nor_taken_out(string kind)
    {
        using BookRoom room = new(kind);
        using BookStore store = room.Started();
        Furnish(store);
        using DbConnection connection = Raw(kind, room.Place);

        Assert.ThrowsAny<DbException>(() => Run(connection, "UPDATE entry SET by_whom = 'nobody' WHERE number = 1"));
        Assert.ThrowsAny<DbException>(() => Run(connection, "DELETE FROM entry WHERE number = 1"));

        Assert.Equal("anna", store.Read(book => book.Entry(1))!.By);
    }

    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public void An_act_that_fails_leaves_nothing(string kind)
    {
        using BookRoom room = new(kind);
        using BookStore store = room.Started();
        Furnish(store);

        InputException fault = Assert.Throws<InputException>(() => Write(
            store, Roll("R2"), BookDraft.Of(EntryKind.RollScrapped, SubjectKind.Roll, "R1", new ScrappedBody { LengthM = 50.001m })));

        Assert.EndsWith(
            "roll R1 would be 0.001 m short: of 50 m received, 0 m would be cut and 50.001 m scrapped; measure the roll first",
            fault.Message, StringComparison.Ordinal);
        Assert.Equal(4, store.Read(book => book.LastEntry()));
        Assert.Null(store.Read(book => book.State(new Subject(SubjectKind.Roll, "R2"))));
        Assert.Empty(Faults(store));
    }

    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public async Task Four_desks_at_once_lose_nothing(string kind)
    {
        const int Acts = 25;
        using BookRoom room = new(kind);
        using (BookStore store = room.Started())
        {
            Furnish(store);
        }

        await Task.WhenAll(Enumerable.Range(1, 4).Select(desk => Task.Run(() =>
        {
            using BookStore store = Books.Open(room.Place);
            for (int i = 0; i < Acts; i++)
            {
                RollEntries.Scrapped(BookRoom.Desk(store, $"desk {desk}"), "R1", 0.1m, null);
            }
        })));

        using BookStore after = Books.Open(room.Place);
        Assert.Equal(50 - (4 * Acts * 0.1m), State<RollState>(after, SubjectKind.Roll, "R1").LeftM);
        Assert.Equal(4 + (4 * Acts), after.Read(book => book.LastEntry()));
        Assert.Empty(Faults(after));
    }

    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public async Task A_desk_that_must_wait_says_so_and_then_writes(string kind)
    {
        using BookRoom room = new(kind);
        using BookStore first = room.Started();
        TaskCompletionSource<string> word = new();
        using BookStore second = Books.Open(room.Place, line => word.TrySetResult(line));
        using ManualResetEventSlim writing = new();
        Task holder = Task.Run(() => first.Write(BookRoom.Hand().Origin, book =>
        {
            book.Add(Roll("R1"));
            writing.Set();
            word.Task.Wait(TestContext.Current.CancellationToken);
            return 0;
        }));
        writing.Wait(TestContext.Current.CancellationToken);

        Write(second, Roll("R2"));
        await holder;

        Assert.EndsWith("waiting for it, 30 s at most", await word.Task, StringComparison.Ordinal);
        Assert.Equal(["R1", "R2"], second.Read(book => book.States(SubjectKind.Roll, false).Select(s => s.Name)));
    }

    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public async Task A_copy_taken_while_others_write_opens_sound(string kind)
    {
        using BookRoom room = new(kind);
        using BookStore store = room.Started();
        Furnish(store);
        using CancellationTokenSource enough = new();
        Task writing = Task.Run(() =>
        {
            using BookStore other = Books.Open(room.Place);
            for (int i = 0; !enough.IsCancellationRequested; i++)
            {
                Write(other, Roll($"N{i}"));
            }
        }, TestContext.Current.CancellationToken);

        string[] copies = [.. Enumerable.Range(0, 3).Select(i => room.Path($"copy{i}.db"))];
        foreach (string copy in copies)
        {
            store.CopyTo(copy);
        }

        await enough.CancelAsync();
        await writing;

        foreach (string copy in copies)
        {
            using BookStore opened = Books.Open(copy);
            Assert.True(opened.Read(book => book.LastEntry()) >= 4);
            Assert.Empty(Faults(opened));
        }

        Assert.Throws<InputException>(() => store.CopyTo(copies[0]));
    }

    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public void A_book_of_an_older_version_is_brought_up_to_date_after_a_copy_is_kept(string kind)
    {
        using BookRoom room = new(kind);
        using (BookStore store = room.Started())
        {
            Furnish(store);
            TicketEntries.FilledIn(BookRoom.Desk(store), Back(1, 100, 940));
        }

        using (DbConnection connection = Raw(kind, room.Place))
        {
            // Version 1 had entries alone.
            Run(connection, "DROP TABLE kept; DROP TABLE touch; DROP INDEX entry_act; DROP INDEX entry_kind; DROP INDEX entry_corrects");
            Run(connection, kind == BookRoom.Sqlite ? "PRAGMA user_version = 1" : "UPDATE book SET version = 1");
        }

        List<string> said = [];
        using BookStore opened = Books.Open(room.Place, said.Add);

        Assert.Equal(20.1m - 0.5m, State<RollState>(opened, SubjectKind.Roll, "R1").LeftM);
        Assert.Empty(Faults(opened));
        Assert.Contains("is of version 1: it is brought up to date", Assert.Single(said), StringComparison.Ordinal);
        using DbConnection kept = Raw(kind, kind == BookRoom.Sqlite ? room.Place + ".version-1" : room.Place);
        Assert.Equal(5L, Scalar(kept, $"SELECT COUNT(*) FROM {(kind == BookRoom.Sqlite ? "entry" : "entry_version_1")}"));
    }

    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public void A_book_of_a_newer_version_is_refused_and_left_as_it_is(string kind)
    {
        using BookRoom room = new(kind);
        room.Started().Dispose();
        using (DbConnection connection = Raw(kind, room.Place))
        {
            Run(connection, kind == BookRoom.Sqlite ? "PRAGMA user_version = 9" : "UPDATE book SET version = 9");
        }

        InputException fault = Assert.Throws<InputException>(() => Books.Open(room.Place));

        Assert.EndsWith(
            "is a book of version 9, this program knows up to 2: use the newer program; nothing was changed", fault.Message,
            StringComparison.Ordinal);
    }

    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public void A_book_is_started_once_and_opened_only_where_it_was_started(string kind)
    {
        using BookRoom room = new(kind);

        Assert.Throws<InputException>(() => Books.Open(room.Place));
        room.Started().Dispose();
        Assert.Throws<InputException>(() => Books.Start(room.Place));

        Books.Open(room.Place).Dispose();
    }

    [Fact]
    public void A_file_that_is_no_book_is_refused_and_stays_as_it_is()
    {
        using BookRoom room = new(BookRoom.Sqlite);
        string text = room.Write("notes.txt", new string('x', 5000));
        string other = room.Path("other.db");
        using (DbConnection connection = Raw(BookRoom.Sqlite, other))
        {
            Run(connection, "CREATE TABLE thing (name TEXT)");
        }

        Assert.EndsWith("is no book: it is another kind of file", Refused(text), StringComparison.Ordinal);
        Assert.EndsWith("is no book: another program wrote it", Refused(other), StringComparison.Ordinal);
        Assert.EndsWith("is not there: start a book first", Refused(room.Path("none.db")), StringComparison.Ordinal);
        Assert.Equal(5000, File.ReadAllText(text).Length);
    }

    // The file may not grow any more, as on a full disk: SQLite then reports its code for a full one.
    [Fact]
    public void A_full_disk_loses_nothing_and_is_told()
    {
        using BookRoom room = new(BookRoom.Sqlite);
        using (BookStore store = room.Started())
        {
            Furnish(store);
            ((SqliteBook)store).MostPages = 30;
            long before = 0;
            InputException fault = Assert.Throws<InputException>(() =>
            {
                for (int i = 0; i < 1000; i++)
                {
                    Write(store, [.. Enumerable.Range(0, 20).Select(k => Roll($"N{i}-{k}"))]);
                    before = store.Read(book => book.LastEntry());
                }
            });

            Assert.EndsWith(
                "the disk is full: nothing of this was written; make room and try again", fault.Message, StringComparison.Ordinal);
            Assert.Equal(before, store.Read(book => book.LastEntry()));
            Assert.Empty(Faults(store));
        }

        using BookStore again = Books.Open(room.Place);
        Write(again, Roll("after"));
        Assert.Empty(Faults(again));
    }

    private static string Refused(string place) => Assert.Throws<InputException>(() => Books.Open(place)).Message;

    private static DbConnection Raw(string kind, string place)
    {
        DbConnection connection = kind == BookRoom.Sqlite
            ? new SqliteConnection($"Data Source={place};Pooling=false")
            : new NpgsqlConnection($"{place};Pooling=false");
        connection.Open();
        return connection;
    }

    private static void Run(DbConnection connection, string statement)
    {
        using DbCommand command = connection.CreateCommand();
        command.CommandText = statement;
        command.ExecuteNonQuery();
    }

    private static object? Scalar(DbConnection connection, string statement)
    {
        using DbCommand command = connection.CreateCommand();
        command.CommandText = statement;
        return command.ExecuteScalar();
    }
}
