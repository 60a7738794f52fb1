using CsCheck;
using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Clock;
using Xunit;

namespace FeltNest.Tests.Rolls.Orders.Clock;

public sealed class LateBoundTests
{
    [Fact]
    public void No_sequence_of_a_tiny_shop_is_below_the_bound() =>
        Gen.Int[0, 100_000].Sample(
            seed =>
            {
                (OrderRequest question, CutPiece[] pieces) = TinyShops.Of(seed);
                pieces = [.. pieces.Select(p => p with { Order = p.Order with { Balls = Balls(question, pieces, p.Order) } })];
                question = question with { Orders = [.. pieces.Select(p => p.Order).Distinct()] };
                ClockScore best = TinyShops.Best(new ClockShop(question, pieces));
                LateBound bound = LateBound.Of(question, 0);

                if (best.Unplaced == 0)
                {
                    Assert.True(bound.Orders <= best.Late || best.WeightedDays > 0, $"seed {seed}: {bound} above {best}");
                    Assert.True(bound.WeightedDays <= best.WeightedDays, $"seed {seed}: {bound} above {best}");
                }
            },
            iter: Runs.Count(40), threads: 1);

    // Pinedo, "Scheduling" (2012), Example 3.3.3, from memory: two jobs late. Worked out: 7, 15, then 19 is above 18 and 8 goes; 11, 17,
    // then 23 is above 21 and 7 goes.
    [Fact]
    public void The_number_of_late_orders_of_one_press_is_that_of_the_published_example() =>
        Assert.Equal(2, LateBound.Of(Days([7, 8, 4, 6, 6], [9, 17, 18, 19, 21], [1, 1, 1, 1, 1]), 0).Orders);

    // Pinedo, Example 3.6.3: 67 is the least by trying every sequence.
    [Fact]
    public void The_bound_of_days_late_says_something_and_stays_below_the_least_of_a_published_example() =>
        Assert.InRange(LateBound.Of(Days([12, 8, 15, 9], [16, 26, 25, 27], [4, 5, 3, 5]), 0).WeightedDays, 20, 67);

    [Fact]
    public void An_order_whose_felt_comes_after_its_day_is_late_in_any_plan()
    {
        OrderRequest question = Days([1], [2], [3]);
        question = question with { Rolls = [.. question.Rolls.Select(r => r with { Received = OrderCases.Monday.AddDays(4) })] };

        // It comes on Friday, a day of work: done on Friday night, three days after Tuesday; each counts three.
        Assert.Equal(new LateBound(1, 9), LateBound.Of(question, 0));
    }

    [Fact]
    public void A_plan_that_may_be_short_of_everything_may_be_in_time() =>
        Assert.Equal(new LateBound(0, 0), LateBound.Of(Days([5, 5], [5, 5], [1, 1]), 10_000));

    [Fact]
    public void Mounting_the_dies_of_two_balls_is_part_of_the_bound()
    {
        // 8 hours a day: 3.5 hours of work each and an hour of mounting each do not go into the first day.
        OrderRequest question = Days([1, 1], [1, 1], [1, 1]) with { Presses = [ClockCases.Press("P", PressCalendar.Usual(8), 60)] };
        CoverOrder[] orders =
        [
            .. question.Orders.Select((o, i) => o with { Balls = 35, Ball = i == 0 ? "ball" : "other", Due = OrderCases.Monday }),
        ];
        question = question with
        {
            Orders = orders,
            Dies = [.. question.Dies.Select((d, i) => d with { Ball = i == 0 ? "ball" : "other" })],
        };

        Assert.Equal(1, LateBound.Of(question, 0).Orders);
        Assert.Equal(0, LateBound.Of(question with { Presses = [ClockCases.Press("P", PressCalendar.Usual(8))] }, 0).Orders);
    }

    private static int Balls(OrderRequest question, CutPiece[] pieces, CoverOrder order) =>
        pieces.Where(p => p.Order.Name == order.Name).Sum(p => p.BallsIn(question));

    // One press that never rests and makes 10 balls an hour; work in days, due days counted from 1.
    private static OrderRequest Days(int[] work, int[] due, int[] priority) => ClockCases.Question(
        Enumerable.Range(0, work.Length).Select(i => new CutPiece(
            ClockCases.Order($"O{i}", due[i] - 1, priority[i]) with { Balls = 240 * work[i] }, ClockCases.Die($"D{i}"),
            ClockCases.Roll($"R{i}"), 24 * work[i])), ClockCases.Press("P"));
}
