using FeltNest.Rolls.Orders.Clock;
using FeltNest.Rolls.Orders.Model;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Assembly;

/// <summary>Makes a plan of pieces: timed on presses and placed on rolls, with its remnants and what every order gets.</summary>
internal static class PlanAssembly
{
    /// <summary>The plan.</summary>
    /// <param name="question">The question.</param>
    /// <param name="pieces">Pieces; strikes that no order needs are left out, and pieces for which no press has hours.</param>
    /// <param name="bought">Rolls bought.</param>
    /// <param name="reserves">Metres to keep back for orders, of any rolls alike.</param>
    /// <param name="effort">Counted work for putting the pieces in sequence; 0 takes the best sequence of a rule.</param>
    /// <param name="stop">Ends that with the best so far.</param>
    public static OrderPlan Of(
        OrderRequest question, IEnumerable<CutPiece> pieces, IReadOnlyList<RollPurchase> bought,
        IReadOnlyList<(CoverOrder Order, StockRoll Kind, double Metres)> reserves, int effort, CancellationToken stop)
    {
        ClockResult result = CutScheduler.Run(question, [.. Needed(question, pieces)], effort, stop);
        List<OrderCut> cuts = Placed(TimedPlan.Cuts(question, result), question);
        List<Mounting> mountings = TimedPlan.Mountings(question, result);
        OrderPlan plan = new()
        {
            Question = question,
            Cuts = cuts,
            Mountings = mountings,
            Overtime = TimedPlan.Overtime(question, result),
            Purchases = bought,
            Remnants = RemnantList.Of(question, cuts, bought, reserves),
            Results = [],
            Dies = TimedPlan.Dies(cuts, mountings),
            Proof = PlanProof.None,
        };
        plan = plan with { Results = [.. question.Orders.Select(order => Result(plan, order))] };
        return plan with { Results = RushDelays.Of(plan) };
    }

    // In the order of the list of orders, each without the strikes it does not need.
    private static IEnumerable<CutPiece> Needed(OrderRequest question, IEnumerable<CutPiece> pieces)
    {
        ILookup<CoverOrder, CutPiece> byOrder = pieces.ToLookup(p => p.Order);
        foreach (CoverOrder order in question.Orders)
        {
            CutPiece[] own = [.. byOrder[order]];
            int[] kept = Overcut.Kept(question, order.Balls, own);
            for (int i = 0; i < own.Length; i++)
            {
                if (kept[i] > 0)
                {
                    yield return own[i] with { Strikes = kept[i] };
                }
            }
        }
    }

    // On a roll the pieces lie in the order in which they are cut.
    private static List<OrderCut> Placed(List<OrderCut> cuts, OrderRequest question)
    {
        Dictionary<StockRoll, double> next = [];
        OrderCut[] placed = [.. cuts];
        foreach (OrderCut cut in cuts.OrderBy(c => c.StartHour).ThenBy(c => c.EndHour).ThenBy(c => c.Number))
        {
            double from = next.GetValueOrDefault(cut.Roll, cut.Roll.BeginM + (question.Rules.EndLossMm / 1000));
            placed[cut.Number - 1] = cut with { FromM = from };
            next[cut.Roll] = from + cut.Metres;
        }

        return [.. placed];
    }

    private static OrderResult Result(OrderPlan plan, CoverOrder order)
    {
        OrderCut[] own = [.. plan.Cuts.Where(c => c.Order == order)];
        OrderRules rules = plan.Question.Rules;
        int good = own.Sum(c => c.GoodBalls);
        double last = own.Select(c => c.EndHour).DefaultIfEmpty(0).Max();
        DateOnly? done = own.Length == 0 ? null : rules.DayOf(last);
        double reserved = plan.Remnants.Sum(r =>
            r.Reserved.Where(x => x.Order == order).Sum(x => x.Metres * OrderRows.BallsPerMetre(plan.Question, order, r.Roll)));
        return new OrderResult
        {
            Order = order,
            GoodBalls = good,
            Done = done,
            DaysLate = done > order.InTimeUntil ? done.Value.DayNumber - order.InTimeUntil.DayNumber : 0,
            ReservedBalls = (int)Math.Floor(reserved + 1e-3),
        };
    }
}
