using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Orders.Check;

/// <summary>What rolls and remnants of a plan must keep.</summary>
internal static class RollRules
{
    // Lengths of a file this near are equal, m: rounding of written digits.
    private const double Slack = 1e-6;

    /// <summary>What is violated.</summary>
    public static IEnumerable<string> Broken(OrderPlan plan)
    {
        OrderRules rules = plan.Question.Rules;
        return
        [
            .. plan.Cuts.GroupBy(c => c.Roll.Name).SelectMany(roll => OnRoll(plan, roll)),
            .. plan.Cuts.SelectMany(cut => OfCut(rules, cut)),
            .. KeptBack(plan),
        ];
    }

    // Pieces of a roll in order along it, and what is left of it.
    private static IEnumerable<string> OnRoll(OrderPlan plan, IGrouping<string, OrderCut> roll)
    {
        OrderRules rules = plan.Question.Rules;
        StockRoll cloth = roll.First().Roll;
        double end = cloth.BeginM + (rules.EndLossMm / 1000);
        double length = cloth.BeginM + cloth.LengthM;
        foreach (OrderCut cut in roll.OrderBy(c => c.FromM))
        {
            if (cut.FromM < end - Slack)
            {
                yield return Invariant(
                    $"assignment {cut.Number}: begins at {cut.FromM:0.######} m of roll {roll.Key}, where felt is free from "
                        + $"{end:0.######} m on");
            }

            end = cut.FromM + Metres(cut);
        }

        if (end > length - (rules.EndLossMm / 1000) + Slack)
        {
            yield return Invariant(
                $"roll {roll.Key}: cut to {end:0.######} m, of {length:0.######} m less {rules.EndLossMm:0.###} mm at its end");
        }

        KeptRemnant? kept = plan.Remnants.FirstOrDefault(r => r.Roll.Name == roll.Key);
        double left = length - end;
        double wanted = left >= rules.LeastRemnantM - 1e-9 ? left : 0;
        if (Math.Abs((kept?.LengthM ?? 0) - wanted) > Slack)
        {
            yield return Invariant(
                $"roll {roll.Key}: {kept?.LengthM ?? 0:0.######} m stated to go back to stock, {left:0.######} m remain and "
                    + $"{rules.LeastRemnantM:0.###} m is the shortest kept");
        }
    }

    // Order, die and roll of a piece go together, and it is long enough.
    private static IEnumerable<string> OfCut(OrderRules rules, OrderCut cut)
    {
        CutDie die = cut.Die;
        if (die.Ball != cut.Order.Ball || (cut.Order.Felt is { } felt && felt != cut.Roll.Felt))
        {
            yield return $"assignment {cut.Number}: order {cut.Order.Name} wants {cut.Order.Ball} of "
                + $"{cut.Order.Felt ?? "any felt"}, die {die.Name} cuts {die.Ball}, roll {cut.Roll.Name} is {cut.Roll.Felt}";
        }

        if (cut.Roll.WidthMm < die.Shape.LeastWidthMm - Slack || cut.Roll.WidthMm > die.MostWidthMm + Slack)
        {
            yield return Invariant(
                $"assignment {cut.Number}: roll {cut.Roll.Name} is {cut.Roll.WidthMm:0.###} mm wide, die {die.Name} serves "
                    + $"{die.Shape.LeastWidthMm:0.###} to {die.MostWidthMm:0.###} mm");
        }

        if (rules.Nap == NapHandling.Turn && NapRule.GroupOf(cut.Roll, die) == NapDirection.Backward)
        {
            yield return $"assignment {cut.Number}: the nap of roll {cut.Roll.Name} lies against the feed under the one-way die "
                + $"{die.Name}, "
                + $"and the roll is not turned";
        }

        if (cut.Roll.Received is { } day && OrderTally.Day(rules, cut.StartHour + 1e-6) is var cutOn && cutOn < day)
        {
            yield return Invariant(
                $"assignment {cut.Number}: cuts roll {cut.Roll.Name} on {cutOn:yyyy-MM-dd}, before it arrives on {day:yyyy-MM-dd}");
        }

        if (cut.Strikes < 1 || (Metres(cut) < rules.LeastCutM - Slack && cut.GoodBalls < cut.Order.Balls))
        {
            yield return Invariant(
                $"assignment {cut.Number}: {cut.Strikes} strikes, {Metres(cut):0.###} m, where {rules.LeastCutM:0.###} m is the "
                    + $"least piece");
        }
    }

    // What is kept back of a roll is there.
    private static IEnumerable<string> KeptBack(OrderPlan plan)
    {
        OrderRules rules = plan.Question.Rules;
        foreach (KeptRemnant kept in plan.Remnants)
        {
            double room = kept.Begun ? kept.LengthM : kept.Roll.LengthM - (2 * rules.EndLossMm / 1000);
            if (kept.Reserved.Sum(r => r.Metres) > room + Slack || kept.Reserved.Any(r => r.Metres < 0))
            {
                yield return Invariant($"roll {kept.Roll.Name}: {kept.Reserved.Sum(r => r.Metres):0.###} m reserved of {room:0.###} m");
            }
        }
    }

    /// <summary>Cloth a piece takes, m: from the first to the last cut edge, and the gap to the next piece.</summary>
    internal static double Metres(OrderCut cut) =>
        (((cut.Strikes - 1) * cut.Die.Shape.FeedMm) + cut.Die.Shape.LengthMm + cut.Die.Shape.GapMm) / 1000;
}
