using System.Globalization;
using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Check;

/// <summary>What the money of a plan must keep.</summary>
internal static class CostRules
{
    // A coin's fraction lost in written digits.
    private const decimal Slack = 0.0001m;

    /// <summary>What is violated.</summary>
    public static IEnumerable<string> Broken(StatedOrders stated)
    {
        decimal cost = CostOf(stated.Plan);
        IEnumerable<string> sum = Math.Abs(cost - stated.Cost) > Slack
            ?
            [
                FormattableString.Invariant(
                    $"cost: {stated.Cost:0.######} stated, rolls, strikes, dies, mountings and overtime add to {cost:0.######}"),
            ]
            : [];
        return [.. Bought(stated.Plan), .. sum, .. Bound(stated)];
    }

    private static IEnumerable<string> Bought(OrderPlan plan)
    {
        foreach (RollPurchase bought in plan.Purchases)
        {
            StockRoll roll = bought.Offer.Roll;
            if (bought.Rolls * roll.LengthM < bought.Offer.MinimumM - 1e-6)
            {
                yield return FormattableString.Invariant(
                    $"offer {roll.Name}: {bought.Rolls * roll.LengthM:0.###} m bought, {bought.Offer.MinimumM:0.###} m is the least sold");
            }
        }
    }

    // Rolls begun and bought, less what goes back to stock, and the work.
    private static decimal CostOf(OrderPlan plan)
    {
        decimal cost = 0;
        decimal worth = (decimal)plan.Question.Rules.RemnantValuePercent / 100;
        foreach (StockRoll roll in plan.Question.Rolls.Where(r => plan.Cuts.Any(c => c.Roll.Name == r.Name)))
        {
            cost += roll.PricePerMetre * (decimal)roll.LengthM;
        }

        foreach (RollPurchase bought in plan.Purchases)
        {
            StockRoll roll = bought.Offer.Roll;
            cost += roll.PricePerMetre * (decimal)(roll.LengthM * bought.Rolls);
        }

        foreach (KeptRemnant kept in plan.Remnants.Where(r => r.Begun || r.Roll.Offer is not null))
        {
            cost -= kept.Roll.PricePerMetre * (decimal)kept.LengthM * worth;
        }

        return cost + WorkCost(plan);
    }

    // Strikes, dies made and ruled again, mountings, overtime.
    private static decimal WorkCost(OrderPlan plan)
    {
        decimal cost = 0;
        foreach (IGrouping<string, OrderCut> work in plan.Cuts.GroupBy(c => c.Die.Name))
        {
            CutDie die = work.First().Die;
            long strikes = work.Sum(c => (long)c.Strikes);
            long more = strikes - die.StrikesLeft - (die.MakePrice is null ? 0 : die.LifeStrikes);
            long rules = more > 0 && die.LifeStrikes > 0 ? (more + die.LifeStrikes - 1) / die.LifeStrikes : 0;

            cost += (strikes * plan.Question.Rules.PerStrike) + (die.MakePrice ?? 0) + (rules * die.ReRulePrice);
        }

        foreach (Mounting mounting in plan.Mountings.Where(m => m.Paid))
        {
            cost += plan.Question.Rules.HourRate * (decimal)mounting.Press.ChangeOverMinutes / 60;
        }

        foreach (OvertimeWork over in plan.Overtime)
        {
            cost += over.Span.PricePerHour * (decimal)over.Hours;
        }

        return cost;
    }

    private static IEnumerable<string> Bound(StatedOrders stated)
    {
        OrderPlan plan = stated.Plan;
        double? gap;
        if (plan.Proof.CostBound is not { } bound)
        {
            gap = null;
        }
        else if (stated.Cost == 0)
        {
            gap = 0;
        }
        else
        {
            gap = (double)(100 * (stated.Cost - bound) / stated.Cost);
        }

        if (gap is null != stated.GapPercent is null || Math.Abs((gap - stated.GapPercent) ?? 0) > 1e-3)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"gapPercent: {stated.GapPercent?.ToString("0.######", CultureInfo.InvariantCulture) ?? "none"} stated, cost and bound "
                    + $"give {gap?.ToString("0.######", CultureInfo.InvariantCulture) ?? "none"}");
        }

        if (plan.Proof.CostBound < 0)
        {
            yield return FormattableString.Invariant($"bound: {plan.Proof.CostBound:0.######} is below nothing, and says nothing");
        }

        if (plan.Proof.CostBound > stated.Cost + Slack)
        {
            yield return FormattableString.Invariant($"bound: {plan.Proof.CostBound:0.######} is above the cost of {stated.Cost:0.######}");
        }
    }
}
