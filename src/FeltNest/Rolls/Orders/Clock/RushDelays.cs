using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Clock;

/// <summary>What orders of higher priority push aside: the same sequence is timed again without each of them.</summary>
internal static class RushDelays
{
    /// <summary>The results of a plan, each late order with what pushes it aside.</summary>
    public static IReadOnlyList<OrderResult> Of(OrderPlan plan)
    {
        OrderResult[] late = [.. plan.Results.Where(result => result.DaysLate > 0)];
        CoverOrder[] rush = [.. plan.Question.Orders.Where(order => Array.Exists(late, one => one.Order.Priority < order.Priority))];
        if (rush.Length == 0)
        {
            return plan.Results;
        }

        OrderCut[] cuts = [.. plan.Cuts.OrderBy(cut => cut.StartHour).ThenBy(cut => cut.EndHour).ThenBy(cut => cut.Number)];
        ClockShop shop = Shop(plan, cuts);
        int[] pressOf = [.. cuts.Select(cut => plan.Question.Presses.ToList().FindIndex(press => press.Name == cut.Press.Name))];
        PressClock clock = new(shop);
        ILookup<CoverOrder, RushDelay> pushed = rush.SelectMany(order => Without(order)).ToLookup(one => one.Late, one => one.Delay);
        return [.. plan.Results.Select(result => result with { PushedBy = [.. pushed[result.Order]] })];

        IEnumerable<(CoverOrder Late, RushDelay Delay)> Without(CoverOrder order)
        {
            clock.Run([.. Enumerable.Range(0, cuts.Length).Where(piece => cuts[piece].Order != order)], pressOf);
            foreach (OrderResult one in late.Where(one => one.Order.Priority < order.Priority))
            {
                double done = clock.DoneAt(Array.FindIndex(shop.Orders, other => other.Name == one.Order.Name));
                int days = one.Done!.Value.DayNumber - plan.Question.Rules.DayOf(done).DayNumber;
                if (days > 0)
                {
                    yield return (one.Order, new RushDelay(order, days));
                }
            }
        }
    }

    // With the overtime that the plan works, and no more.
    private static ClockShop Shop(OrderPlan plan, OrderCut[] cuts)
    {
        ClockShop shop = new(
            plan.Question, [.. cuts.Select(cut => new CutPiece(cut.Order, cut.Die, cut.Roll, cut.Strikes))]);
        for (int press = 0; press < plan.Question.Presses.Count; press++)
        {
            PressSpec spec = plan.Question.Presses[press];
            IReadOnlyList<OvertimeSpan> overtime = plan.Question.CalendarOf(spec).Overtime;
            shop = shop.WithOvertime(press, i => plan.Overtime.Any(o => o.Press.Name == spec.Name && o.Span == overtime[i]));
        }

        return shop;
    }
}
