using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Assembly;

/// <summary>Keeps a plan from cutting more than is wanted.</summary>
internal static class Overcut
{
    /// <summary>Strikes that each piece of one order is to keep so that none is made for nothing; 0 where a piece is not needed at
    /// all.</summary>
    /// <param name="question">The question.</param>
    /// <param name="wanted">Balls wanted of them.</param>
    /// <param name="pieces">Pieces of one order.</param>
    public static int[] Kept(OrderRequest question, int wanted, IReadOnlyList<CutPiece> pieces)
    {
        int[] strikes = [.. pieces.Select(p => p.Strikes)];
        int[] balls = [.. pieces.Select(p => p.BallsIn(question))];
        int over = (int)Math.Min(int.MaxValue, balls.Sum(b => (long)b) - wanted);
        foreach (int i in Enumerable.Range(0, pieces.Count).OrderBy(i => pieces[i].BallsIn(question)))
        {
            if (balls[i] <= over)
            {
                (over, strikes[i], balls[i]) = (over - balls[i], 0, 0);
            }
        }

        for (int i = 0; i < pieces.Count && over > 0; i++)
        {
            CutPiece piece = pieces[i];
            if (strikes[i] > 0)
            {
                int fewer = Math.Max(
                    question.LeastStrikes(piece.Order, piece.Roll, piece.Die), question.StrikesFor(balls[i] - over, piece.Roll, piece.Die));
                strikes[i] = Math.Min(strikes[i], fewer);
                int left = (piece with { Strikes = strikes[i] }).BallsIn(question);
                over -= balls[i] - left;
            }
        }

        return strikes;
    }

    /// <summary>True where an order gets more than it wants by more than its runs of strikes must give over: one strike of each run, and
    /// the whole of a run that may not be shorter.</summary>
    public static bool Is(OrderPlan plan)
    {
        OrderRequest q = plan.Question;
        return plan.Cuts.GroupBy(c => c.Order).Any(own => own.Sum(c => (long)c.GoodBalls) - own.Key.Balls > own.Sum(Allowed));

        long Allowed(OrderCut cut) => cut.Strikes <= q.LeastStrikes(cut.Order, cut.Roll, cut.Die)
            ? cut.GoodBalls
            : cut.Die.Shape.ClassPanels.Sum(panels => (long)Math.Ceiling((panels * q.GoodShare(cut.Roll, cut.Die) / 2) - 1e-9));
    }
}
