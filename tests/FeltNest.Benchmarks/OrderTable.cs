using System.Diagnostics;
using System.Globalization;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.FirstFit;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Tests.Rolls.Orders;

namespace FeltNest.Benchmarks;

/// <summary>How planning grows with the question: first plan, default effort, gap, memory, as lines of Markdown; and tight cases: felt for
/// nine tenths of the balls, one lot short, hours for half.</summary>
internal static class OrderTable
{
    private static readonly (int Orders, int Rolls)[] Sizes = [(10, 20), (30, 60), (60, 120), (100, 200), (300, 1000)];

    /// <summary>Prints one row for each case whose name holds a text, or all, and draws how the time grows.</summary>
    public static void Print(string only, string? plot)
    {
        List<(int Orders, double First, double Whole)> points = [];
        Console.WriteLine(
            "| question | first plan, s | default effort, s | balls short, at least | cost first | cost | gap, % | memory, MB |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|");
        foreach ((string name, OrderRequest question) in Cases())
        {
            if (only == "all" || name.Contains(only, StringComparison.Ordinal))
            {
                (double first, double whole) = Row(name, question);
                points.Add((question.Orders.Count, first, whole));
            }
        }

        if (plot is not null)
        {
            // The tight cases stand behind the sizes and are no part of the growth.
            OrderPlot.Write(plot, [.. points.Take(Sizes.Length)]);
        }
    }

    private static IEnumerable<(string Name, OrderRequest Question)> Cases()
    {
        foreach ((int orders, int rolls) in Sizes)
        {
            yield return ($"{orders}x{rolls}", OrderFactory.Plenty(orders, rolls, 1));
        }

        OrderRequest plenty = OrderFactory.Plenty(30, 60, 1);
        yield return ("felt for nine tenths, 30x60", OrderFactory.ShortOfFelt(plenty));
        yield return ("one lot short, 30x60", OrderFactory.OneLotShort(plenty));
        yield return ("hours for half, 30x60", OrderFactory.ShortOfHours(plenty));
    }

    private static (double First, double Whole) Row(string name, OrderRequest question)
    {
        Stopwatch clock = Stopwatch.StartNew();
        OrderPlan first = FirstFitPlanner.Run(question);
        double began = clock.Elapsed.TotalSeconds;
        clock.Restart();
        OrderPlan plan = OrderPlanner.Run(question, progress: new Lines(clock));
        double ended = clock.Elapsed.TotalSeconds;
        long memory = Process.GetCurrentProcess().PeakWorkingSet64 / 1_000_000;
        string gap = plan.GapPercent is { } percent ? percent.ToString("0.000", CultureInfo.InvariantCulture) : "not known";
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {began:0.00} | {ended:0.0} | {plan.Rank.Balls}, {plan.Proof.LeastShort:0} of "
                + $"{question.Orders.Sum(o => (long)o.Balls)} | {first.Cost.Total:0} | {plan.Cost.Total:0} | {gap} | {memory} |"));
        return (began, ended);
    }

    private sealed class Lines(Stopwatch clock) : IProgress<string>
    {
        public void Report(string value) =>
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{clock.Elapsed.TotalSeconds:0.00} s {value}"));
    }
}
