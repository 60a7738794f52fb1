using FeltNest.Rolls.Orders;
using FeltNest.Rolls.Orders.Clock;
using FeltNest.Tests.Rolls.Orders.Clock;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>Tiny questions with calendars, arrivals and dies mounted again, and the best of all their plans: every choice of pieces, each
/// in every sequence on every press.</summary>
internal static class EveryTimedPlan
{
    // Balls of a strike.
    private const int Balls = 10;

    /// <summary>A question by its number: two orders of two or three strikes, two rolls, two dies, two presses of a few hours a
    /// day.</summary>
    internal static OrderRequest Of(int seed)
    {
        Random random = new(seed);
        return new OrderRequest
        {
            Orders =
            [
                .. Enumerable.Range(0, 2).Select(i => OrderCases.Order($"O{i}", "ball", Balls * (2 + (i * random.Next(2))), random.Next(2))
                    with { Priority = 1 + random.Next(3) }),
            ],
            Rolls =
            [
                .. Enumerable.Range(0, 2).Select(i => OrderCases.Roll($"R{i}", 10, 1 + random.Next(3)) with
                {
                    Received = OrderCases.Monday.AddDays(random.Next(3) == 0 ? 1 : 0),
                }),
            ],
            Offers = [],
            Dies = [ClockCases.Die("D0"), ClockCases.Die("D1")],
            Presses =
            [
                .. Enumerable.Range(0, 2).Select(i => ClockCases.Press($"P{i}", PressCalendar.Usual(2 + random.Next(2)), 60) with
                {
                    RollChangeMinutes = 10 * random.Next(3),
                    MountedDie = i == 0 && random.Next(2) == 0 ? "D0" : null,
                    Dies = random.Next(3) == 0 ? [$"D{i}"] : [],
                }),
            ],
            Rules = OrderCases.Bare with { HourRate = 5 },
        };
    }

    /// <summary>Days late by priority, orders late and cost of the best plan.</summary>
    internal static (long Days, int Late, double Cost) Best(OrderRequest question)
    {
        CutPiece[][][] choices =
        [
            .. question.Orders.Select(order => Choices(question, order).ToArray()),
        ];
        (long Days, int Late, double Cost) best = (long.MaxValue, 0, 0);
        foreach (CutPiece[] first in choices[0])
        {
            foreach (CutPiece[] second in choices[1])
            {
                CutPiece[] pieces = [.. first, .. second];
                ClockScore score = TinyShops.Best(new ClockShop(question, pieces));
                double felt = (double)pieces.Select(p => p.Roll).Distinct().Sum(r => r.PricePerMetre * (decimal)r.LengthM);
                (long Days, int Late, double Cost) one = (score.WeightedDays, score.Late, felt + score.Money);
                best = score.Unplaced == 0 && one.CompareTo(best) < 0 ? one : best;
            }
        }

        return best;
    }

    // All ways to spread the strikes of an order over rolls and dies, one piece of each.
    private static IEnumerable<CutPiece[]> Choices(OrderRequest question, CoverOrder order)
    {
        (StockRoll Roll, CutDie Die)[] cells =
        [
            .. from roll in question.Rolls
               from die in question.Dies
               where question.Presses.Any(p => OrderRequest.Takes(p, die))
               select (roll, die),
        ];
        int strikes = order.Balls / Balls;
        for (int code = 0; code < (int)Math.Pow(strikes + 1, cells.Length); code++)
        {
            int rest = code;
            int[] each = [.. cells.Select(_ => (rest = Math.DivRem(rest, strikes + 1, out int here)) is var _ ? here : 0)];
            if (each.Sum() == strikes)
            {
                yield return [.. each.Select((n, i) => new CutPiece(order, cells[i].Die, cells[i].Roll, n)).Where(p => p.Strikes > 0)];
            }
        }
    }
}
