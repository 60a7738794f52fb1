using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Xunit;
using static FeltNest.InvariantText;

namespace FeltNest.Tests.Endurance;

/// <summary>The page's server under many clients and under one that drags a width: 10 clients for two seconds and 12 widths in the suite,
/// 50 clients for two minutes and 720 widths with the factor 60.</summary>
[Collection(AloneInProcess.Name)]
public sealed class BusyPageTests
{
    private static readonly int Clients = Runs.Count(1) > 1 ? 50 : 10;

    // Seconds for a first answer while a width is dragged. The suite shares its machine, so there only an answer that waited for a search
    // is caught.
    private static readonly double Longest = Runs.Count(1) > 1 ? 0.3 : 1;

    private static readonly string[] Questions =
    [
        .. Enumerable.Range(0, Runs.Count(1) > 1 ? 8 : 3).Select(i => $"lay?width={110 + (10 * i)}&effort=1"),
        "lay?width=150&gap=2&effort=1", "lay?width=150&waist=23&effort=1", "lay?width=150&oneWay=yes&effort=1", "widths?width=140", "panel",
        "panel?waist=23", "files/layout.json?width=120&effort=1", "lay?width=5", "health",
    ];

    [Fact, Trait("tier", "long")]
    public async Task Many_clients_get_the_answers_that_one_gets_alone_and_work_ends_when_they_go()
    {
        CancellationToken stop = TestContext.Current.CancellationToken;
        using PageClient page = await PageClient.Start(stop);
        Dictionary<string, string> alone = [];
        foreach (string question in Questions)
        {
            alone[question] = await page.Whole(question, stop);
        }

        ProcessWeight before = ProcessWeight.Of(page.Program);
        TimeSpan length = TimeSpan.FromSeconds(Runs.Count(2));
        Stopwatch watch = Stopwatch.StartNew();
        ConcurrentBag<(double At, double Took)> answered = [];
        ConcurrentBag<string> wrong = [];
        int gone = 0;
        ProcessWeight middle = default;
        await Task.WhenAll([.. Enumerable.Range(0, Clients).Select(Client), Task.Run(async () =>
        {
            await Task.Delay(length / 2, stop);
            middle = ProcessWeight.Of(page.Program);
        }, stop)]);

        // Each in a search of a minute, all gone at once.
        using CancellationTokenSource leave = new();
        Task[] leaving = [.. Enumerable.Range(0, Clients).Select(i => page.Whole($"lay?width={1500 + i}&effort=60&rows=any", leave.Token))];
        await Task.Delay(1000, stop);
        await leave.CancelAsync();
        await Task.WhenAll(leaving).ContinueWith(_ => { }, stop, TaskContinuationOptions.None, TaskScheduler.Default);
        Stopwatch left = Stopwatch.StartNew();
        while (await page.IdleShare(stop) > 0.2 && left.Elapsed < TimeSpan.FromSeconds(30))
        {
        }

        ProcessWeight after = ProcessWeight.Of(page.Program);
        double[][] quarters =
        [
            .. Enumerable.Range(0, 4)
                .Select(q =>
                    answered
                        .Where(a => (int)Math.Min(3, 4 * a.At / watch.Elapsed.TotalSeconds) == q)
                        .Select(a => a.Took)
                        .Order()
                        .ToArray()),
        ];
        Say(Invariant(
            $"{answered.Count} answers to {Clients} clients in {length.TotalSeconds:0} s, {gone} went before theirs; idle "
                + $"{left.Elapsed.TotalSeconds:0.0} s after all had gone"));
        Say(Invariant($"before: {before}; half way: {middle}; after: {after}"));
        foreach (double[] quarter in quarters)
        {
            Say(Invariant(
                $"quarter: {quarter.Length} answers, median {Share(quarter, 0.5):0.000} s, 90 % {Share(quarter, 0.9):0.000} s, 99 % "
                    + $"{Share(quarter, 0.99):0.000} s"));
        }

        Assert.Empty(wrong);
        Assert.True(gone > 0 || Runs.Count(1) == 1, "nobody went before the answer");
        Assert.InRange(left.Elapsed.TotalSeconds, 0, 20);
        Assert.InRange(after.ResidentMb, 0, Math.Max(middle.ResidentMb, before.ResidentMb) + 150);
        Assert.InRange(after.Handles, 0, before.Handles + 20);

        async Task Client(int number)
        {
            Random random = new(number);
            while (watch.Elapsed < length)
            {
                string question = Questions[random.Next(Questions.Length)];
                double began = watch.Elapsed.TotalSeconds;
                using CancellationTokenSource go = CancellationTokenSource.CreateLinkedTokenSource(stop);
                if (random.Next(10) == 0)
                {
                    go.CancelAfter(random.Next(1, 400));
                }

                try
                {
                    string answer = await page.Whole(question, go.Token);
                    answered.Add((began, watch.Elapsed.TotalSeconds - began));
                    if (answer != alone[question])
                    {
                        wrong.Add($"{question}: {answer[..Math.Min(200, answer.Length)]}");
                    }
                }
                catch (OperationCanceledException) when (!stop.IsCancellationRequested && go.IsCancellationRequested)
                {
                    Interlocked.Increment(ref gone);
                }
            }
        }
    }

    [Fact, Trait("tier", "long")]
    public async Task A_width_that_is_dragged_is_answered_at_once_every_time_in_flat_memory()
    {
        CancellationToken stop = TestContext.Current.CancellationToken;
        using PageClient page = await PageClient.Start(stop);
        int count = (int)Runs.Count(12);
        string whole = await page.FirstLine("lay?width=1500", stop);
        List<double> took = [];
        ProcessWeight early = default;
        for (int i = 0; i < count; i++)
        {
            // Up and down between 1300 and 1620 mm, each asked before the last one is done.
            double width = 1460 + (160 * Math.Sin(i * 0.3));
            Stopwatch watch = Stopwatch.StartNew();
            string line = await page.FirstLine(string.Create(CultureInfo.InvariantCulture, $"lay?width={width:0.#}"), stop);
            took.Add(watch.Elapsed.TotalSeconds);
            Assert.Contains("\"stage\":\"first\"", line, StringComparison.Ordinal);
            early = i == count / 4 ? ProcessWeight.Of(page.Program) : early;
        }

        ProcessWeight late = ProcessWeight.Of(page.Program);
        took.Sort();
        Say(Invariant(
            $"{count} widths: first answer median {Share([.. took], 0.5):0.000} s, 90 % {Share([.. took], 0.9):0.000} s, 99 % "
                + $"{Share([.. took], 0.99):0.000} s, longest {took[^1]:0.000} s"));
        Say(Invariant($"after a quarter: {early}; at the end: {late}"));
        Assert.Equal(whole, await page.FirstLine("lay?width=1500", stop));
        Assert.InRange(Share([.. took], 0.5), 0, Longest);
        Assert.InRange(late.ResidentMb, 0, early.ResidentMb + 150);
    }

    private static double Share(double[] sorted, double share) =>
        sorted.Length == 0 ? 0 : sorted[(int)Math.Min(sorted.Length - 1, share * sorted.Length)];

    private static void Say(string line) => TestContext.Current.TestOutputHelper!.WriteLine(line);
}
