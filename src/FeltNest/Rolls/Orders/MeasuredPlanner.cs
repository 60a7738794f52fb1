using FeltNest.Rolls.Orders.Assembly;
using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Plan;

namespace FeltNest.Rolls.Orders;

/// <summary>Plans orders where some rolls were measured: what such a roll gives is worked out from strikes planned round its faults, first
/// over the whole roll, then over the pieces that were planned.</summary>
internal static class MeasuredPlanner
{
    // Rounds in which a piece may turn out worse than its roll on the whole: each lowers what the roll is taken for.
    private const int MostRounds = 5;

    /// <summary>The plan of a question.</summary>
    /// <param name="question">The question; shares of its measured rolls are worked out here.</param>
    /// <param name="effort">Counted work for each round.</param>
    /// <param name="progress">Told what is done; may be null.</param>
    /// <param name="sound">Called when the first sound plan is there, which a stop from then on gives at the least; may be null.</param>
    /// <param name="stop">Ends the search with the best plan so far.</param>
    /// <exception cref="NoAnswerException">Nothing can be cut for any order.</exception>
    public static (OrderPlan Plan, IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> Tickets) Run(
        OrderRequest question, int effort = 5, IProgress<string>? progress = null, Action? sound = null,
        CancellationToken stop = default)
    {
        question = NapTurn.Turned(question);
        OrderRequest asked =
            NapTurn.Apart(question with { Rolls = [.. question.Rolls.Select(roll => WithShares(roll, question))] });
        OrderPlan? last = null;

        // Strikes round the faults of a measured roll take their time, and without them there is no plan to hand over.
        bool measured = question.Rolls.Any(roll => roll.Measured is not null);
        for (int round = 1; ; round++)
        {
            OrderPlan plan = last is not null && stop.IsCancellationRequested
                ? Recounted(last, asked)
                : OrderPlanner.Run(asked, effort, progress, measured ? null : sound, stop);
            IReadOnlyList<(OrderCut Cut, RollPlan Strikes)> tickets = CutTickets.Of(plan);
            (OrderCut Cut, double Share)[] worse = [.. tickets.Where(t =>
                t.Cut.Roll.Measured is not null && Balls(t.Strikes, t.Cut.Die, question.Rules) < t.Cut.GoodBalls)
                .Select(t =>
                    (t.Cut, CutTickets.OwnGood(t.Strikes, t.Cut.Die) / ((double)t.Cut.Strikes * t.Cut.Die.Shape.ClassPanels.Sum())))];
            if (worse.Length == 0 || round == MostRounds)
            {
                sound?.Invoke();
                return (plan, tickets);
            }

            progress?.Report(
                $"{worse.Length} piece{(worse.Length == 1 ? " has" : "s have")} more faults than the roll on the whole: planned again");
            asked = asked with { Rolls = [.. asked.Rolls.Select(roll => Lowered(roll, worse))] };
            last = plan;
        }
    }

    // The same pieces, by what their rolls give: a search that was stopped has no time to look for others.
    private static OrderPlan Recounted(OrderPlan plan, OrderRequest asked)
    {
        StockRoll Now(StockRoll roll) => asked.Rolls.FirstOrDefault(r => r.Name == roll.Name && roll.Offer is null) ?? roll;
        OrderPlan again = PlanAssembly.Of(
            asked, plan.Cuts.Select(c => new CutPiece(c.Order, c.Die, Now(c.Roll), c.Strikes)), plan.Purchases,
            [.. plan.Remnants.SelectMany(r => r.Reserved.Select(held => (held.Order, Now(r.Roll), held.Metres)))], 0,
            CancellationToken.None);
        return ShortReason.Stated(again with { Proof = PlanProof.None with { CutShort = true, Effort = plan.Proof.Effort } });
    }

    /// <summary>Whole good balls to expect of strikes planned round faults.</summary>
    public static int Balls(RollPlan strikes, CutDie die, OrderRules rules) => (int)Math.Floor(
        (strikes.Yields.Single(y =>
            y.Part == die.Shape.Part).Balls * (1 - (rules.RejectPercent / 100)) * (1 - (rules.UnpairedPercent / 100))) + 1e-9);

    private static StockRoll WithShares(StockRoll roll, OrderRequest question) =>
        roll.Measured is null ? roll : roll with
        {
            MeasuredShares = question.Dies.Where(die =>
                die.Drawn is not null && die.Serves(roll) && die.Shape.StrikesIn(question.ClearM(roll)) > 0)
            .ToDictionary(die => die.Name, die => CutTickets.GoodShare(roll, die, question.Rules.EndLossMm)),
        };

    private static StockRoll Lowered(StockRoll roll, (OrderCut Cut, double Share)[] worse) => roll with
    {
        MeasuredShares = roll.MeasuredShares.ToDictionary(
            s => s.Key,
            s => worse
                .Where(w => w.Cut.Roll.Name == roll.Name && w.Cut.Die.Name == s.Key)
                .Select(w => Math.Min(w.Share, s.Value * 0.999))
                .Append(s.Value)
                .Min()),
    };
}
