using FeltNest.Rolls.Orders;

namespace FeltNest.Tests.Rolls.Orders;

/// <summary>The least short and the least cost of tiny questions by trying every count of strikes on every roll; one press, no days, no
/// reserve, no offers.</summary>
internal static class EveryPlan
{
    /// <summary>Balls short and cost of the best plan.</summary>
    internal static (int Lacking, double Cost) Best(OrderRequest q)
    {
        (CoverOrder Order, StockRoll Roll, CutDie Die)[] all =
        [
            ..
            from o in q.Orders
            from r in q.Rolls from d in q.Dies where d.Ball == o.Ball && r.WidthMm >= d.Shape.LeastWidthMm select (o, r, d),
        ];
        (int Lacking, double Cost) best = (int.MaxValue, 0);
        Try(new int[all.Length], 0);
        return best;

        void Try(int[] strikes, int at)
        {
            if (at < all.Length)
            {
                for (strikes[at] = 0; strikes[at] <= 7; strikes[at]++)
                {
                    if (Left(strikes, all[at].Roll) < -1e-9)
                    {
                        break;
                    }

                    Try(strikes, at + 1);
                }

                strikes[at] = 0;
                return;
            }

            if (Cost(strikes) is { } cost)
            {
                int lacking = q.Orders.Sum(o => Math.Max(0, o.Balls - Safe(strikes, o)));
                if (lacking < best.Lacking || (lacking == best.Lacking && cost < best.Cost))
                {
                    best = (lacking, cost);
                }
            }
        }

        double Metres(int n, CutDie d) => n == 0 ? 0 : (((n - 1) * d.Shape.FeedMm) + d.Shape.LengthMm + d.Shape.GapMm) / 1000;

        double Left(int[] strikes, StockRoll roll) =>
            roll.LengthM - (2 * q.Rules.EndLossMm / 1000) - all.Select((a, i) => a.Roll == roll ? Metres(strikes[i], a.Die) : 0).Sum();

        // The cases have whole balls a strike, so nothing is rounded.
        int Safe(int[] strikes, CoverOrder o) => all.Select((a, i) => a.Order == o ? strikes[i] * a.Die.Shape.ClassPanels[0] / 2 : 0).Sum();

        double? Cost(int[] strikes)
        {
            double cost = 0;
            double minutes = 0;
            foreach (StockRoll roll in q.Rolls.Where(r => all.Where((a, i) => a.Roll == r && strikes[i] > 0).Any()))
            {
                double back = Left(strikes, roll) + (q.Rules.EndLossMm / 1000);
                cost += (double)roll.PricePerMetre * (roll.LengthM - (back >= q.Rules.LeastRemnantM
                    ? back * q.Rules.RemnantValuePercent / 100
                    : 0));
            }

            foreach (CutDie die in q.Dies)
            {
                int used = all.Select((a, i) => a.Die == die ? strikes[i] : 0).Sum();
                if (used == 0)
                {
                    continue;
                }

                int extra = Math.Max(0, used - die.StrikesLeft - (die.MakePrice is null ? 0 : die.LifeStrikes));
                int rules = die.LifeStrikes == 0 ? extra : (extra + die.LifeStrikes - 1) / die.LifeStrikes;
                if (rules > die.MostReRules)
                {
                    return null;
                }

                cost += (double)((die.MakePrice ?? 0) + (rules * die.ReRulePrice) + (used * q.Rules.PerStrike))
                    + ((double)q.Rules.HourRate * q.Presses[0].ChangeOverMinutes / 60);
                minutes += q.Presses[0].ChangeOverMinutes + (used / q.Presses[0].StrokesPerMinute);
            }

            bool lots = q.Orders.All(o =>
                !o.OneLot || all.Where((a, i) => a.Order == o && strikes[i] > 0).Select(a => a.Roll.Lot).Distinct().Count() <= 1);
            return lots && minutes <= (60 * q.Presses[0].Hours) + 1e-9 ? cost : null;
        }
    }
}
