using System.Globalization;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Planned;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>Rolls cut to lengths with known least counts or costs, by the search that plans orders: a length is a die whose strike gives
/// one ball.</summary>
public sealed class CuttingStockTests
{
    private const string Certified =
        "\"Certified Delta=1 catalog C=24\", 2026: optimum seen there; settled again by all maximal patterns and CP-SAT";

    /// <summary>Stock as length=cost*rolls, wanted as length:pieces, least cost, source.</summary>
    public static TheoryData<string, string, double, string> Known() => new()
    {
        {
            "5600=1*90", "1380:22 1520:25 1560:12 1710:14 1820:18 1880:18 1930:20 2000:10 2050:12 2100:14 2140:16 2150:18 2200:20", 73,
            "M. Lawton, worked example on cutting stock, sci.op-research, 2008; encyclopaedia article Cutting stock problem"
        },
        {
            "110=1*59", "20:48 45:35 50:24 55:10 75:8", 47,
            "R. Fourer, D. Gay, B. Kernighan, AMPL, EXAMPLES2/cut.dat: data seen; settled again by all maximal patterns and CP-SAT"
        },
        { "17=1*31", "3:25 5:20 9:15", 19, "W. Winston, Operations Research, Woodco example, from memory; re-solved by full enumeration" },
        { "40=1*101", "8:90 12:111 16:55 20:30", 89, "MathWorks, Cutting Stock: Solver-Based: data; all maximal patterns and CP-SAT" },
        {
            "64.5=1*30", "6.77:10 7.56:40 17.46:33 18.76:10", 18,
            "ampl/ampls-api, CuttingCases/Sorrentino.py: data; all maximal patterns and CP-SAT"
        },
        { "20=1*22", "7:5 4:4 6:4 1:6 5:4 2:3 3:2 8:2 9:3 10:3", 10, "a stored course script: data; all maximal patterns and CP-SAT" },
        { "100=1*16", "48:1 30:2 19:1 36:3 27:1 42:2 24:1", 4, "OR-Tools, bin packing example: data; all maximal patterns and CP-SAT" },
        { "15=15*3 10=10*3", "7:3 6:2 4:6 3:1", 60, "jckantor/MathProg-Solver, StockCuttingV2.mod: data; all maximal patterns and CP-SAT" },
        { "24=1*23", "5:5 8:8 9:7 12:7", 11, Certified },
        { "24=1*22", "2:6 7:3 8:5 10:4 11:5 12:4", 10, Certified },
        { "24=1*21", "3:2 7:8 8:5 10:3 12:5", 9, Certified },
        { "24=1*19", "2:3 7:5 8:5 10:3 11:3", 7, Certified },
        { "24=1*17", "5:1 6:3 8:8 9:1", 5, Certified },
        { "132=1*15", "44:2 33:3 12:6", 3, "classical example of a gap between patterns and whole rolls, from memory; CP-SAT" },
    };

    [Theory]
    [MemberData(nameof(Known))]
    public void Published_cutting_stock_optima_are_reached_and_proved(string stock, string wanted, double least, string source)
    {
        Assert.NotEmpty(source);
        OrderPlan plan = Planned(stock, wanted);

        Assert.Equal(least, (double)plan.Cost.Total, 6);
        Assert.True(plan.GapPercent < 1e-2, $"gap {plan.GapPercent}");
    }

    private static OrderPlan Planned(string stock, string wanted)
    {
        (double Length, int Count)[] items =
        [
            .. wanted.Split(' ').Select(item => item.Split(':')).Select(p => (Number(p[0]), int.Parse(p[1]))),
        ];
        // Lengths as millimetres or centimetres, so that a die fits its press.
        double unit = items[0].Length > 1000 ? 1 : 10;
        List<StockRoll> rolls = [];
        foreach (string kind in stock.Split(' '))
        {
            string[] parts = kind.Split('=', '*');
            double metres = Number(parts[0]) * unit / 1000;
            decimal price = (decimal)Number(parts[1]) / (decimal)metres;
            rolls.AddRange(Enumerable.Range(1, int.Parse(parts[2])).Select(k => OrderCases.Roll($"{parts[0]} number {k}", metres, price)));
        }

        OrderRequest question = new()
        {
            Orders = [.. items.Select(i => OrderCases.Order($"{i.Length}", $"{i.Length}", i.Count))],
            Rolls = rolls,
            Offers = [],
            Dies = [.. items.Select(i => OrderCases.Die($"{i.Length}", $"{i.Length}", 2, unit * i.Length, unit * i.Length))],
            Presses = [OrderCases.FreePress],
            Rules = OrderCases.Bare,
        };
        OrderPlan plan = OrderPlanner.Run(question, stop: TestContext.Current.CancellationToken);

        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        Assert.Equal(0, plan.Results.Sum(r => r.ShortBalls));
        return plan;

        static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
    }
}
