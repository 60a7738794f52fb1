using FeltNest.Rolls.Orders.Model.Mixed;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Presses;

namespace FeltNest.Rolls.Orders.Model;

/// <summary>Reads the plan out of a solved model: pieces put in order on presses and rolls.</summary>
internal static class PlanReading
{
    // Metres kept back below this are rounding.
    private const double LeastMetres = 1e-6;

    /// <summary>The plan.</summary>
    public static OrderPlan Read(MixedModel model, OrderQuestion question, FeltRows felt, OrderRows orders, PressRows presses, PlanProof proof)
    {
        List<(CoverOrder Order, CutDie Die, StockRoll Roll, int Strikes)> pieces = [];
        foreach (RollUnit unit in felt.Units)
        {
            foreach ((int[] cut, int k) in unit.Cuts(model).Select((cut, k) => (cut, k)))
            {
                pieces.AddRange(Enumerable.Range(0, cut.Length).Where(i => cut[i] > 0).Select(i => (unit.Choices[i].Order, unit.Choices[i].Die, unit.Rolls[k], cut[i])));
            }
        }

        List<OrderCut> cuts = [];
        List<DieWork> dies = [];
        foreach (PressSpec press in question.Presses)
        {
            (DieRun Run, DieWork Work)[] here = [.. presses.Runs.Where(r => Stands(model, r) == press && pieces.Exists(p => p.Die == r.Die))
                .Select(r => (r, new DieWork(r.Die, press, pieces.Where(p => p.Die == r.Die).Sum(p => p.Strikes))))];
            DieRun[] inOrder = here.All(h => h.Run.Start is not null)
                ? [.. here.OrderBy(h => model.ValueOf(h.Run.Start!)).Select(h => h.Run)]
                : CampaignSequence.Best([.. here.Select(h => h.Run)], run => [.. InTurn(run).Select(p => (p.Order, p.Strikes))], press, question.Rules);
            double hour = 0;
            foreach (DieRun run in inOrder)
            {
                hour += press.ChangeOverMinutes / 60;
                foreach ((CoverOrder order, _, StockRoll roll, int strikes) in InTurn(run))
                {
                    double end = hour + (strikes / press.StrokesPerMinute / 60);
                    cuts.Add(new OrderCut(cuts.Count + 1, order, roll, run.Die, press, strikes, run.Die.Shape.BallsOf(strikes, question.GoodShare(roll, run.Die)), 0, hour, end));
                    hour = end;
                }

                dies.Add(here.First(h => h.Run == run).Work);
            }
        }

        cuts = Placed(cuts, question);
        List<RollPurchase> bought = [.. felt.Bought.Select(b => new RollPurchase(b.Offer, model.WholeOf(b.Count))).Where(p => p.Rolls > 0)];
        List<KeptRemnant> remnants = RemnantList.Of(question, cuts, bought, [.. orders.Reserves.Select(r => (r.Order, r.Room.Roll, model.ValueOf(r.Metres))).Where(r => r.Item3 > LeastMetres)]);
        OrderPlan plan = new(question, cuts, bought, remnants, [], dies, proof);
        return plan with { Results = [.. question.Orders.Select(order => Result(plan, order))] };

        IEnumerable<(CoverOrder Order, CutDie Die, StockRoll Roll, int Strikes)> InTurn(DieRun run) => run.Cuts.SelectMany(c => pieces.Where(p => p.Order == c.Order && p.Die == run.Die));
    }

    private static PressSpec? Stands(MixedModel model, DieRun run)
    {
        int at = Array.FindIndex(run.On, on => model.WholeOf(on) == 1);
        return at < 0 ? null : run.Presses[at];
    }

    // On a roll the pieces lie in the order in which they are cut.
    private static List<OrderCut> Placed(List<OrderCut> cuts, OrderQuestion question)
    {
        Dictionary<StockRoll, double> next = [];
        OrderCut[] placed = [.. cuts];
        foreach (OrderCut cut in cuts.OrderBy(c => c.StartHour).ThenBy(c => c.Number))
        {
            double from = next.GetValueOrDefault(cut.Roll, question.Rules.EndLossMm / 1000);
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
        double reserved = plan.Remnants.Sum(r => r.Reserved.Where(x => x.Order == order).Sum(x => x.Metres * OrderRows.BallsPerMetre(plan.Question, order, r.Roll)));
        OrderResult result = new(order, good, done, done > order.Due ? done.Value.DayNumber - order.Due.DayNumber : 0, (int)Math.Floor(reserved + 1e-3), null);
        return result.ShortBalls == 0 ? result : result with { Reason = ShortReason.Of(plan, order, result.ShortBalls) };
    }
}
