using System.Diagnostics;
using System.Globalization;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Tests.Rolls.Orders;

namespace FeltNest.Benchmarks;

/// <summary>How planning grows with the question: first plan, default effort, gap, memory, as lines of Markdown.</summary>
internal static class OrderTable
{
    private static readonly (int Orders, int Rolls)[] Sizes = [(10, 20), (30, 60), (100, 200), (300, 1000)];

    public static void Print(string only)
    {
        Console.WriteLine("| orders x rolls | first plan, s | default effort, s | balls short | cost first | cost | gap, % | memory, MB |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|");
        foreach ((int orders, int rolls) in Sizes.Where(s => only == "all" || only == $"{s.Orders}x{s.Rolls}"))
        {
            OrderRequest question = OrderFactory.Plenty(orders, rolls, 1);
            Stopwatch clock = Stopwatch.StartNew();
            OrderPlan first = FirstFitPlanner.Run(question);
            double began = clock.Elapsed.TotalSeconds;
            clock.Restart();
            OrderPlan plan = OrderPlanner.Run(question, progress: new Lines(clock));
            double ended = clock.Elapsed.TotalSeconds;
            long memory = Process.GetCurrentProcess().PeakWorkingSet64 / 1_000_000;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {orders} x {rolls} | {began:0.00} | {ended:0.0} | {plan.Results.Sum(r => r.ShortBalls)} of "
                    + $"{question.Orders.Sum(o => (long)o.Balls)} | {first.Cost.Total:0} | {plan.Cost.Total:0} | {plan.GapPercent:0.000} | {memory} |"));
        }
    }

    private sealed class Lines(Stopwatch clock) : IProgress<string>
    {
        public void Report(string value) =>
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{clock.Elapsed.TotalSeconds:0.00} s {value}"));
    }
}
