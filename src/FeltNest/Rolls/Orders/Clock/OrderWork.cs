namespace FeltNest.Rolls.Orders.Clock;

/// <summary>The least that an order takes of the presses.</summary>
internal sealed record OrderWork
{
    /// <summary>The order.</summary>
    public required CoverOrder Order { get; init; }

    /// <summary>Open hours of one press, by its best die, press and felt.</summary>
    public required double Hours { get; init; }

    /// <summary>Hour before which it cannot begin.</summary>
    public required double From { get; init; }

    /// <summary>End of its due day, hours.</summary>
    public required double Due { get; init; }

    /// <summary>The work of an order; null where nothing can be cut for it, or need be.</summary>
    /// <param name="question">The question.</param>
    /// <param name="order">The order.</param>
    /// <param name="mostShort">Balls it may be short of.</param>
    public static OrderWork? Of(OrderRequest question, CoverOrder order, long mostShort)
    {
        double balls = order.Balls - mostShort;
        double best = 0;
        double from = double.PositiveInfinity;
        StockRoll[] felt = [.. question.Rolls.Concat(question.Offers.Select(offer => offer.Roll))];
        foreach (CutDie die in question.Dies.Where(die => die.Ball == order.Ball))
        {
            double strokes = question.Presses.Where(press => OrderRequest.Takes(press, die))
                .Select(press => press.StrokesPerMinute).DefaultIfEmpty(0).Max();
            foreach (StockRoll roll in felt.Where(roll => strokes > 0 && question.Fits(order, roll, die)))
            {
                best = Math.Max(best, 60 * strokes * die.Shape.BallsPerStrike(question.GoodShare(roll, die)));
                from = Math.Min(from, Math.Max(question.ThereFrom(roll), question.ThereFrom(die)));
            }
        }

        return balls <= 0 || best <= 0
            ? null
            : new OrderWork { Order = order, Hours = balls / best, From = from, Due = question.Rules.HoursUntil(order.InTimeUntil) };
    }
}
