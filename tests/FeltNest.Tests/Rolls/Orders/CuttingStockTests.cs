using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Check;
using FeltNest.Rolls.Orders.Planned;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>Rolls cut to lengths with known least counts, by the model that plans orders: a length is a die whose strike gives one ball, a
/// roll costs 1.</summary>
public sealed class CuttingStockTests
{
    public static TheoryData<int, string, int, string> Known() => new()
    {
        {
            5600, "1380:22 1520:25 1560:12 1710:14 1820:18 1880:18 1930:20 2000:10 2050:12 2100:14 2140:16 2150:18 2200:20", 73,
            "encyclopaedia article Cutting stock problem, paper-mill example"
        },
        {
            110, "20:48 45:35 50:24 55:10 75:8", 47,
            "R. Fourer, D. Gay, B. Kernighan, AMPL, cutting-stock example, from memory; data seen; re-solved by full enumeration"
        },
        { 17, "3:25 5:20 9:15", 19, "W. Winston, Operations Research, Woodco example, from memory; re-solved by full enumeration"
        },
    };

    [Theory]
    [MemberData(nameof(Known))]
    public void Published_cutting_stock_optima_are_reached_and_proved(int raw, string wanted, int least, string source)
    {
        Assert.NotEmpty(source);
        (int Length, int Count)[] items =
        [
            .. wanted.Split(' ').Select(item => (int.Parse(item.Split(':')[0]), int.Parse(item.Split(':')[1]))),
        ];
        OrderRequest question = new()
        {
            Orders = [.. items.Select(i => OrderCases.Order($"{i.Length}", $"{i.Length}", i.Count))],
            Rolls = [.. Enumerable.Range(1, least + 12).Select(k => OrderCases.Roll($"roll {k}", raw / 1000.0, 1000m / raw))],
            Offers = [],
            Dies = [.. items.Select(i => OrderCases.Die($"{i.Length}", $"{i.Length}", 2, i.Length, i.Length))],
            Presses = [OrderCases.FreePress],
            Rules = OrderCases.Bare,
        };

        OrderPlan plan = OrderPlanner.Run(question, stop: TestContext.Current.CancellationToken);

        Assert.Empty(OrderPlanCheck.Violations(StatedOrders.Of(plan)));
        Assert.Equal(least, plan.Begun.Count);
        Assert.Equal(least, (double)plan.Cost.Total, 9);
        Assert.True(plan.Bound > least - 1, $"the bound {plan.Bound} proves {least}");
        Assert.True(plan.GapPercent < 1e-3, $"gap {plan.GapPercent}");
    }
}
