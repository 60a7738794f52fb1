using System.Diagnostics;
using FeltNest.Book;
using FeltNest.Tests.Cli;
using FeltNest.Tests.Cli.Faults;
using Xunit;

namespace FeltNest.Tests.Book;

/// <summary>The program killed while it writes in a book, and two of it at once.</summary>
public sealed class KilledBookTests
{
    private const int Lines = 400;

    [Fact]
    public Task A_list_that_is_killed_while_it_comes_in_is_in_the_book_whole_or_not_at_all() => RequireWhole(BookRoom.Sqlite, 3);

    [Fact, Trait("tier", "long")]
    public Task So_it_is_when_it_is_killed_two_hundred_times() => RequireWhole(BookRoom.Sqlite, 200);

    [Fact, Trait("tier", "long")]
    public Task So_it_is_in_a_database() => RequireWhole(BookRoom.Postgres, 50);

    [Theory, InlineData(BookRoom.Sqlite), InlineData(BookRoom.Postgres)]
    public async Task Of_two_programs_at_once_both_finish(string kind)
    {
        CancellationToken stop = TestContext.Current.CancellationToken;
        using BookRoom room = new(kind);
        room.Started().Dispose();

        CommandRun[] both = await Task.WhenAll(Enumerable.Range(1, 2).Select(desk =>
            ProgramProcess.Run(ProgramProcess.Program, Args(room, room.Write($"orders{desk}.csv", List($"{desk}-"))), stop)));

        Assert.All(both, run => Assert.Equal((0, string.Empty), (run.Code, run.Code == 0 ? string.Empty : run.Err)));
        using BookStore store = Books.Open(room.Place);
        Assert.Equal(2 * Lines, store.Read(book => book.Count(SubjectKind.Order, openOnly: true)));
        Assert.Empty(BookCases.Faults(store));
    }

    // In a file half of the runs are killed when its log has grown to a length drawn by lot. The others are killed after a share, drawn by
    // lot, of what a run took that was left alone: on a slow machine too some are killed before and some while they write.
    private static async Task RequireWhole(string kind, int times)
    {
        CancellationToken stop = TestContext.Current.CancellationToken;
        using BookRoom room = new(kind);
        room.Started().Dispose();
        Random random = new(1);
        Stopwatch alone = Stopwatch.StartNew();
        CommandRun first = await ProgramProcess.Run(ProgramProcess.Program, Args(room, room.Write("first.csv", List("first-"))), stop);
        TimeSpan took = alone.Elapsed;
        Assert.Equal((0, string.Empty), (first.Code, first.Code == 0 ? string.Empty : first.Err));
        int written = Lines;
        int whole = 0;
        for (int run = 0; run < times; run++)
        {
            string list = room.Write("orders.csv", List($"run{run}-"));
            using Process process = ProgramProcess.Start(ProgramProcess.Program, Args(room, list));
            if (kind == BookRoom.Sqlite && run % 2 == 0)
            {
                long length = random.NextInt64(0, 900_000);
                FileInfo log = new(room.Place + "-wal");
                while (!process.HasExited && Length(log) <= length)
                {
                    Thread.SpinWait(50);
                }
            }
            else
            {
                await Task.Delay(took * (0.3 + (0.9 * random.NextDouble())), stop);
            }

            process.Kill();
            await process.WaitForExitAsync(stop);
            using BookStore store = Books.Open(room.Place);
            long orders = store.Read(book => book.Count(SubjectKind.Order, openOnly: true));
            Assert.True(orders == written || orders == written + Lines, $"{orders} orders after {written}");
            Assert.Empty(BookCases.Faults(store));
            whole += orders > written ? 1 : 0;
            written = (int)orders;
        }

        // Enough kills came before the end of the writing, and enough after it, where the file itself says when.
        Assert.True(
            times < 20 || kind != BookRoom.Sqlite || (whole > times / 20 && whole < times - (times / 20)),
            $"{whole} of {times} came in whole");
    }

    private static long Length(FileInfo log)
    {
        log.Refresh();
        return log.Exists ? log.Length : -1;
    }

    private static string[] Args(BookRoom room, string list) => ["book", "order", list, "--book", room.Place, "--by", "anna"];

    private static string List(string prefix) => "order,ball,thousandBalls,due\n"
        + string.Concat(Enumerable.Range(1, Lines).Select(i => $"{prefix}{i},T2,1.5,2026-03-09\n"));
}
