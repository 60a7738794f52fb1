using System.Diagnostics;
using System.Globalization;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Tests.Rolls.Orders;

namespace FeltNest.Benchmarks;

/// <summary>How long planning goes on after it was told to stop, at several moments, as lines of Markdown.</summary>
internal static class OrderStops
{
    private static readonly double[] Moments = [0.1, 0.5, 1, 2, 4, 6, 8, 12, 16, 24, 32, 48];

    /// <summary>Prints one row for each moment that comes before the search ends by itself.</summary>
    public static void Print(int orders, int rolls)
    {
        OrderRequest question = OrderFactory.Plenty(orders, rolls, 1);
        OrderPlanner.Run(question, effort: 1);
        Console.WriteLine("| told to stop after, s | ended after, s | late, s | gap, % |");
        Console.WriteLine("|---|---|---|---|");
        foreach (double moment in Moments)
        {
            using CancellationTokenSource stop = new(TimeSpan.FromSeconds(moment));
            Stopwatch clock = Stopwatch.StartNew();
            OrderPlan plan = OrderPlanner.Run(question, stop: stop.Token);
            double ended = clock.Elapsed.TotalSeconds;
            if (!stop.IsCancellationRequested)
            {
                return;
            }

            string gap = plan.GapPercent is { } percent ? percent.ToString("0.000", CultureInfo.InvariantCulture) : "not known";
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"| {moment} | {ended:0.00} | {ended - moment:0.00} | {gap} |"));
        }
    }
}
