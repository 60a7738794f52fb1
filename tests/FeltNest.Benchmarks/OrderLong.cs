using System.Globalization;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Tests.Rolls.Orders;

namespace FeltNest.Benchmarks;

/// <summary>The bound of the default effort against the best plan of a long run, as lines of Markdown: a bound may never stand above a
/// plan.</summary>
internal static class OrderLong
{
    private static readonly (int Orders, int Rolls, int Seed)[] Cases = [(10, 20, 1), (10, 20, 2), (30, 60, 1), (30, 60, 2), (60, 120, 1)];

    /// <summary>Prints one row a question.</summary>
    /// <param name="effort">Effort of the long run.</param>
    public static void Print(int effort)
    {
        Console.WriteLine("| question | bound | cost | bound, long run | cost, long run | cost above the higher bound, % |");
        Console.WriteLine("|---|---|---|---|---|---|");
        foreach ((int orders, int rolls, int seed) in Cases)
        {
            OrderRequest question = OrderFactory.Plenty(orders, rolls, seed);
            OrderPlan plan = OrderPlanner.Run(question);
            OrderPlan longer = OrderPlanner.Run(question, effort);
            decimal? bound = plan.Bound > longer.Bound ? plan.Bound : longer.Bound;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {orders}x{rolls}, seed {seed} | {plan.Bound:0.00} | {plan.Cost.Total:0.00} | {longer.Bound:0.00} | "
                    + $"{longer.Cost.Total:0.00} | {100 * (longer.Cost.Total - bound) / longer.Cost.Total:0.000} |"));
        }
    }
}
