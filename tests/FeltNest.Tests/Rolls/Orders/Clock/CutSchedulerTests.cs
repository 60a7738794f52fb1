using System.Globalization;
using CsCheck;
using FeltNest.Rolls;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Clock;
using Google.OrTools.Sat;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders.Clock;

public sealed class CutSchedulerTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    // Pinedo, "Scheduling", 4th edition (2012), Example 3.4.5 (370, with its sequences) and the data of Example 3.6.3 (67 by trying every
    // sequence); the two machines are the same data with due days halved and rounded down, by trying every sequence.
    [Theory]
    [InlineData("121 79 147 83 130", "260 266 266 336 337", "1 1 1 1 1", 1, 370)]
    [InlineData("12 8 15 9", "16 26 25 27", "4 5 3 5", 1, 67)]
    [InlineData("121 79 147 83 130", "130 133 133 168 168", "1 1 1 1 1", 2, 259)]
    [InlineData("12 8 15 9", "8 13 12 13", "4 5 3 5", 2, 81)]
    public void Published_tardiness_is_reached(string days, string due, string weights, int presses, long least)
    {
        int[] p = Numbers(days);
        int[] d = Numbers(due);
        int[] w = Numbers(weights);
        CutPiece[] pieces =
        [
            .. Enumerable.Range(0, p.Length).Select(i => new CutPiece(
                ClockCases.Order($"O{i}", d[i] - 1, w[i]), ClockCases.Die($"D{i}"), ClockCases.Roll($"R{i}"), 24 * p[i])),
        ];
        OrderRequest question =
            ClockCases.Question(pieces, [.. Enumerable.Range(0, presses).Select(i => ClockCases.Press($"P{i}"))]);

        Assert.Equal(least, ClockCases.WeightedDays(question, pieces));
    }

    // ft06 and the job shop of three jobs stand in the examples and the guide of OR-Tools with their optima; la01 = 666 in the tests of
    // PyJobShop. A roll stands for a job, a press for a machine; the sequence is found by CP-SAT and proved the best there.
    [Theory]
    [InlineData("0 3 1 2 2 2|0 2 2 1 1 4|1 4 2 3", 11)]
    [InlineData(
        "2 1 0 3 1 6 3 7 5 3 4 6|1 8 2 5 4 10 5 10 0 10 3 4|2 5 3 4 5 8 0 9 1 1 4 7|1 5 0 5 2 5 3 3 4 8 5 9|2 9 1 3 4 5 5 4 0 3 3 1|"
            + "1 3 3 3 5 9 0 10 4 4 2 1",
        55)]
    [InlineData(
        "1 21 0 53 4 95 3 55 2 34|0 21 3 52 4 16 2 26 1 71|3 39 4 98 1 42 2 31 0 12|1 77 0 55 4 79 2 66 3 77|0 83 3 34 2 64 1 19 4 37|"
            + "1 54 2 43 4 79 0 92 3 62|3 69 4 77 1 87 2 87 0 93|2 38 0 60 1 41 3 24 4 83|3 17 1 49 4 25 0 44 2 98|4 77 3 79 2 43 1 75 "
            + "0 96",
        666)]
    public void The_best_sequence_of_a_published_job_shop_is_timed_to_its_published_end(string jobs, int end)
    {
        int[][] table = [.. jobs.Split('|').Select(Numbers)];
        int machines = table[0].Length / 2;
        (int Job, int Machine, int Hours, int Start)[] work = JobShop(table, end);
        CutPiece[] pieces =
        [
            .. work.Select((one, i) => new CutPiece(
                ClockCases.Order($"O{one.Job}", 1000), ClockCases.Die($"D{one.Machine}"), ClockCases.Roll($"R{one.Job}"), one.Hours)),
        ];
        ClockShop shop = new(
            ClockCases.Question(pieces, [.. Enumerable.Range(0, machines).Select(m => ClockCases.Press($"P{m}"))]), pieces);
        PressClock clock = new(shop);
        clock.Run([.. Enumerable.Range(0, work.Length).OrderBy(i => work[i].Start)], [.. work.Select(one => one.Machine)]);

        Assert.Equal(end, clock.Times.End.Max(), 6);
        Assert.All(work, (one, i) => Assert.True(clock.Times.Start[i] <= one.Start + 1e-6));
    }

    [Fact]
    public void Tiny_shops_are_put_in_the_best_of_all_sequences() =>
        Gen.Int[0, 100_000].Sample(
            seed =>
            {
                (OrderRequest question, CutPiece[] pieces) = TinyShops.Of(seed);
                ClockShop shop = new(question, pieces);
                ClockScore best = TinyShops.Best(shop);
                (long unplaced, long days, int late) = ClockCases.Scored(CutScheduler.Run(question, pieces, 5, Stop));

                Assert.Equal((seed, best.Unplaced, best.WeightedDays, best.Late), (seed, unplaced, days, late));
            },
            iter: Runs.Count(30), threads: 1);

    [Fact]
    public void The_same_pieces_are_timed_alike_twice()
    {
        (OrderRequest question, CutPiece[] pieces) = ClockCases.Shop(3, 20, 2);
        ClockResult first = CutScheduler.Run(question, pieces, 1, Stop);
        ClockResult second = CutScheduler.Run(question, pieces, 1, Stop);

        Assert.Equal(first.Times.Start, second.Times.Start);
        Assert.Equal(first.PressOf, second.PressOf);
    }

    [Fact]
    public void A_search_betters_the_rule_and_one_that_is_stopped_keeps_it()
    {
        (OrderRequest question, CutPiece[] pieces) = ClockCases.Shop(2, 150, 2, load: 1);
        (long Unplaced, long Days, int Late) rule = ClockCases.Scored(CutScheduler.Run(question, pieces, 0, Stop));
        (long Unplaced, long Days, int Late) stopped = ClockCases.Scored(
            CutScheduler.Run(question, pieces, 5, new CancellationToken(canceled: true)));
        (long Unplaced, long Days, int Late) searched = ClockCases.Scored(CutScheduler.Run(question, pieces, 1, Stop));

        Assert.True(searched.CompareTo(rule) < 0, $"{searched} is not better than {rule}");
        Assert.Equal(0, stopped.Unplaced);
    }

    [Fact]
    public void An_order_whose_felt_comes_too_late_holds_no_other_up()
    {
        // Received on Thursday, due on Monday: three days late whatever happens. The others are done on Monday.
        CutPiece late = new(
            ClockCases.Order("late", 0, 9), ClockCases.Die("D"), ClockCases.Roll("far") with { Received = OrderCases.Monday.AddDays(3) },
            2);
        CutPiece[] pieces =
        [
            late, .. Enumerable.Range(0, 4).Select(i =>
                new CutPiece(ClockCases.Order($"O{i}", 0), ClockCases.Die("D"), ClockCases.Roll($"R{i}"), 6)),
        ];
        ClockResult result = CutScheduler.Run(ClockCases.Question(pieces, ClockCases.Press("P")), pieces, 1, Stop);

        Assert.Equal((0L, 27L, 1), ClockCases.Scored(result));
        Assert.Equal(72, result.Times.Start[0], 9);
    }

    [Fact]
    public void Overtime_that_saves_no_day_is_not_worked()
    {
        DateTime saturday = OrderCases.Monday.AddDays(5).ToDateTime(TimeOnly.MinValue);
        PressCalendar calendar = PressCalendar.Usual(8) with
        {
            Overtime = [new OvertimeSpan { From = saturday.AddHours(6), To = saturday.AddHours(12), PricePerHour = 45 }],
        };
        PressSpec press = ClockCases.Press("P", calendar);
        CutPiece Piece(int due) => new(ClockCases.Order("O", due), ClockCases.Die("D"), ClockCases.Roll("R"), 42);
        CutPiece needed = Piece(5);
        CutPiece relaxed = Piece(7);

        Assert.Equal((5 * 24) + 8, CutScheduler.Run(ClockCases.Question([needed], press), [needed], 1, Stop).Times.End[0], 9);
        Assert.Equal((7 * 24) + 8, CutScheduler.Run(ClockCases.Question([relaxed], press), [relaxed], 1, Stop).Times.End[0], 9);
    }

    private static int[] Numbers(string text) => [.. text.Split(' ').Select(one => int.Parse(one, CultureInfo.InvariantCulture))];

    // A schedule of a job shop that ends when it is known that the best one ends.
    private static (int Job, int Machine, int Hours, int Start)[] JobShop(int[][] table, int end)
    {
        CpModel model = new();
        List<(int Job, int Machine, int Hours, IntVar Start, IntervalVar Span)> all = [];
        for (int job = 0; job < table.Length; job++)
        {
            for (int k = 0; k < table[job].Length; k += 2)
            {
                IntVar start = model.NewIntVar(0, end - table[job][k + 1], "s");
                if (k > 0)
                {
                    model.Add(start >= all[^1].Start + all[^1].Hours);
                }

                all.Add((job, table[job][k], table[job][k + 1], start, model.NewFixedSizeIntervalVar(start, table[job][k + 1], "i")));
            }
        }

        foreach (IGrouping<int, (int Job, int Machine, int Hours, IntVar Start, IntervalVar Span)> machine in all.GroupBy(
            one => one.Machine))
        {
            model.AddNoOverlap(machine.Select(one => one.Span));
        }

        CpSolver solver = new() { StringParameters = "num_workers:1 random_seed:1 max_deterministic_time:20" };
        Assert.Contains(solver.Solve(model), new[] { CpSolverStatus.Optimal, CpSolverStatus.Feasible });
        return [.. all.Select(one => (one.Job, one.Machine, one.Hours, (int)solver.Value(one.Start)))];
    }
}
