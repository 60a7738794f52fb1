using FeltNest.Files.Orders;
using FeltNest.Tests.Rolls.Orders;
using Xunit;

namespace FeltNest.Tests.Files.Orders;

/// <summary>An order for many times the felt there is.</summary>
public sealed class StockReachTests
{
    // A strike of two panels is a ball and feeds 100 mm: 10 m of felt are 100 balls; five times that is 500, fifty times 5000.
    [Theory]
    [InlineData(500, false, false)]
    [InlineData(501, false, true)]
    [InlineData(501, true, false)]
    [InlineData(5000, true, false)]
    [InlineData(5001, true, true)]
    public void An_order_is_asked_about_above_five_times_the_felt_or_fifty_where_it_is_bought(int balls, bool buying, bool asked)
    {
        StockReach reach = new(
            [OrderCases.Roll("R1", 6, 1), OrderCases.Roll("R2", 4, 1)], [OrderCases.Die("D1", "T2", 2, 100, 200)], buying);

        Assert.Equal(asked, reach.Question("T2", balls) is not null);
        Assert.Null(reach.Question("another", balls));
    }

    [Fact]
    public void The_question_says_the_felt_it_wants_and_the_felt_there_is() => Assert.StartsWith(
        "2400 thousand balls want at least 240000 m of felt, and all in stock is 10 m",
        new StockReach([OrderCases.Roll("R1", 10, 1)], [OrderCases.Die("D1", "T2", 2, 100, 200)], true).Question("T2", 2_400_000),
        StringComparison.Ordinal);
}
