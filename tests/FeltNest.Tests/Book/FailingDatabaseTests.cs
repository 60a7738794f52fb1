using System.Globalization;
using FeltNest.Book;
using FeltNest.Tests.Cli;
using Npgsql;
using Xunit;
using static FeltNest.Tests.Book.BookCases;

namespace FeltNest.Tests.Book;

/// <summary>A database that fails while a desk writes: what stood before stands whole, and one line says what to do.</summary>
public sealed class FailingDatabaseTests
{
    private const string Broke =
        "the line to the database broke: an act stands whole or not at all, so look at the last entries before you write it again";

    // The line that fails is the 350th: many statements of its act have gone to the server before. Codes are those of the
    // PostgreSQL documentation, appendix "Error Codes".
    [Theory]
    [InlineData("53100", "the disk of the database is full: nothing of this was written; make room and try again")]
    [InlineData("53200", "the database has no memory or no connection to spare: nothing of this was written; try again")]
    [InlineData("25006", "the database may only be read: it is a copy, or was set so; nothing of this was written")]
    [InlineData(
        "58030", "the disk of the database gave an error: nothing of this was written; ask who looks after the database before going on")]
    [InlineData("57014", "the database ended the work before it was done: nothing of this was written; try again")]
    public async Task An_act_whose_statement_fails_midway_leaves_the_old_state_whole(string code, string problem)
    {
        using BookRoom room = new(BookRoom.Postgres);
        using BookStore store = room.Started();
        Furnish(store);
        Run(
            room.Place,
            $"CREATE FUNCTION fail() RETURNS trigger LANGUAGE plpgsql AS 'BEGIN RAISE EXCEPTION ''no'' USING ERRCODE = ''{code}''; END'; "
                + "CREATE TRIGGER fails BEFORE INSERT ON entry FOR EACH ROW WHEN (NEW.name = 'N350') EXECUTE FUNCTION fail()");
        string list = room.Write("orders.csv", "order,ball,thousandBalls,due\n" + string.Concat(
            Enumerable.Range(1, 400).Select(i => string.Create(CultureInfo.InvariantCulture, $"N{i},T2,1,2026-03-09\n"))));

        CommandRun run = await CommandRun.Of(
            "book", "order", list, "--book", room.Place, "--by", "anna", "--at", "2026-03-02T06:00");

        Assert.Equal((2, string.Empty), (run.Code, run.Out));
        Assert.EndsWith(problem, Assert.Single(run.Messages), StringComparison.Ordinal);
        RequireOld(store);
        Run(room.Place, "DROP TRIGGER fails ON entry");
        Write(store, Roll("after"));
        Assert.Empty(Faults(store));
    }

    [Fact]
    public void An_act_whose_line_to_the_database_breaks_midway_leaves_the_old_state_whole()
    {
        using BookRoom room = new(BookRoom.Postgres);
        using (BookStore store = room.Started())
        {
            Furnish(store);
            using BookStore cut = Books.Open(room.Place);

            InputException fault = Assert.Throws<InputException>(() => cut.Write(BookRoom.Hand().Origin, book =>
            {
                for (int i = 0; i < 900; i++)
                {
                    book.Add(Roll($"N{i}"));
                }

                Run(
                    room.Place,
                    "SELECT pg_terminate_backend(pid) FROM pg_locks WHERE relation = 'entry'::regclass AND mode = 'ExclusiveLock'");
                return book.Add(Roll("last"));
            }));

            Assert.EndsWith(Broke, fault.Message, StringComparison.Ordinal);
        }

        using BookStore again = Books.Open(room.Place);
        RequireOld(again);
    }

    [Fact]
    public async Task Of_two_desks_that_start_a_book_at_once_one_is_told_that_there_is_one()
    {
        using BookRoom room = new(BookRoom.Postgres);

        InputException?[] faults = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() =>
        {
            try
            {
                Books.Start(room.Place).Dispose();
                return null;
            }
            catch (InputException fault)
            {
                return fault;
            }
        })));

        Assert.Equal(3, faults.Count(fault => fault is not null));
        Assert.All(
            faults.OfType<InputException>(),
            fault => Assert.Contains("holds a book already", fault.Message, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_database_that_is_not_there_cannot_be_reached()
    {
        CommandRun run = await CommandRun.Of("book", "show", "rolls", "--book", "Host=/nowhere;Database=a;Username=b");

        Assert.Equal(
            (2, "feltnest: book of /nowhere a: the database cannot be reached"), (run.Code, Assert.Single(run.Messages)));
    }

    private static void RequireOld(BookStore store)
    {
        Assert.Equal(4, store.Read(book => book.LastEntry()));
        Assert.Equal((1, 1, 1), store.Read(book =>
            (book.Count(SubjectKind.Roll, false), book.Count(SubjectKind.Order, false), book.Count(SubjectKind.Ticket, false))));
        Assert.Equal(50, State<RollState>(store, SubjectKind.Roll, "R1").LeftM);
        Assert.Empty(Faults(store));
    }

    private static void Run(string place, string statement)
    {
        using NpgsqlConnection connection = new($"{place};Pooling=false");
        connection.Open();
        using NpgsqlCommand command = new(statement, connection);
        command.ExecuteNonQuery();
    }
}
