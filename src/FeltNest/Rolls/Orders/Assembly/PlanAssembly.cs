using FeltNest.Rolls.Orders.Model;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Assembly;

/// <summary>Makes a plan of pieces: put in order on presses and rolls, with its remnants and what every order gets.</summary>
internal static class PlanAssembly
{
    /// <summary>The plan.</summary>
    /// <param name="question">The question.</param>
    /// <param name="pieces">Pieces; strikes that no order needs are left out.</param>
    /// <param name="pressOf">The one press of every die that is used.</param>
    /// <param name="startOf">When a die's campaign begins where that is known; null lets the days of the orders decide.</param>
    /// <param name="bought">Rolls bought.</param>
    /// <param name="reserves">Metres to keep back for orders, of any rolls alike.</param>
    public static OrderPlan Of(
        OrderRequest question, IEnumerable<CutPiece> pieces, Func<CutDie, PressSpec> pressOf, Func<CutDie, double>? startOf,
        IReadOnlyList<RollPurchase> bought,
        IReadOnlyList<(CoverOrder Order, StockRoll Kind, double Metres)> reserves)
    {
        ILookup<CutDie, CutPiece> byDie = Needed(question, pieces).OrderBy(p => p.Order.Due).ToLookup(p => p.Die);
        (List<OrderCut> cuts, List<DieWork> dies) = Worked(question, byDie, pressOf, startOf);
        cuts = Placed(cuts, question);
        OrderPlan plan = new()
        {
            Question = question,
            Cuts = cuts,
            Purchases = bought,
            Remnants = RemnantList.Of(question, cuts, bought, reserves),
            Results = [],
            Dies = dies,
            Proof = PlanProof.None,
        };
        return plan with { Results = [.. question.Orders.Select(order => Result(plan, order))] };
    }

    // The campaigns of every press one after the other, each die's pieces by the days of their orders.
    private static (List<OrderCut> Cuts, List<DieWork> Dies) Worked(
        OrderRequest question, ILookup<CutDie, CutPiece> byDie, Func<CutDie, PressSpec> pressOf, Func<CutDie, double>? startOf)
    {
        List<OrderCut> cuts = [];
        List<DieWork> dies = [];
        foreach (PressSpec press in question.Presses)
        {
            CutDie[] here = [.. question.Dies.Where(die => byDie[die].Any() && pressOf(die) == press)];
            CutDie[] inOrder = startOf is null
                ? CampaignSequence.Best(here, die => [.. byDie[die].Select(p => (p.Order, p.Strikes))], press, question.Rules)
                : [.. here.OrderBy(startOf)];
            double hour = 0;
            foreach (CutDie die in inOrder)
            {
                hour += press.ChangeOverMinutes / 60;
                foreach (CutPiece piece in byDie[die])
                {
                    double end = hour + (piece.Strikes / press.StrokesPerMinute / 60);
                    cuts.Add(new OrderCut
                    {
                        Number = cuts.Count + 1,
                        Order = piece.Order,
                        Roll = piece.Roll,
                        Die = die,
                        Press = press,
                        Strikes = piece.Strikes,
                        GoodBalls = piece.BallsIn(question),
                        FromM = 0,
                        StartHour = hour,
                        EndHour = end,
                    });
                    hour = end;
                }

                dies.Add(new DieWork(die, press, byDie[die].Sum(p => p.Strikes)));
            }
        }

        return (cuts, dies);
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
        foreach (OrderCut cut in cuts.OrderBy(c => c.StartHour).ThenBy(c => c.Number))
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
        OrderResult result = new()
        {
            Order = order,
            GoodBalls = good,
            Done = done,
            DaysLate = done > order.Due ? done.Value.DayNumber - order.Due.DayNumber : 0,
            ReservedBalls = (int)Math.Floor(reserved + 1e-3),
            Reason = null,
        };
        return result.ShortBalls == 0 ? result : result with { Reason = ShortReason.Of(plan, order, result.ShortBalls) };
    }
}
