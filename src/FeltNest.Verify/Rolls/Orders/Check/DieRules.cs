using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Orders.Check;

/// <summary>What the dies of a plan must keep: strikes, presses that take them, mountings, one place at a time, the day they are
/// there.</summary>
internal static class DieRules
{
    // Hours of a file this near are equal.
    private const double Slack = 1e-6;

    /// <summary>What is violated.</summary>
    public static IEnumerable<string> Broken(OrderPlan plan) =>
        [.. plan.Cuts.GroupBy(c => c.Die.Name).SelectMany(work => OfDie(plan, work)), .. Places(plan)];

    // A die makes no more strikes than it has, on presses that take it.
    private static IEnumerable<string> OfDie(OrderPlan plan, IGrouping<string, OrderCut> work)
    {
        CutDie die = work.First().Die;
        long strikes = work.Sum(c => (long)c.Strikes);
        long most = die.StrikesLeft + ((long)die.LifeStrikes * (die.MostReRules + (die.MakePrice is null ? 0 : 1)));
        if (strikes > most)
        {
            yield return $"die {die.Name}: {strikes} strikes, of {most} that it has left or can get";
        }

        if (work.FirstOrDefault(c => c.Press.Dies.Count > 0
            ? !c.Press.Dies.Contains(die.Name)
            : die.Shape.LengthMm > c.Press.Bed.BoardLengthMm + Slack || die.Shape.AcrossMm > c.Press.Bed.BoardWidthMm + Slack)
                is { } cut)
        {
            yield return $"die {die.Name}: does not fit press {cut.Press.Name}";
        }

        DieWork[] said = [.. plan.Dies.Where(d => d.Die.Name == die.Name)];
        if (said.Sum(d => (long)d.Strikes) != strikes)
        {
            yield return $"die {die.Name}: {said.Sum(d => (long)d.Strikes)} strikes stated, its assignments make {strikes}";
        }

        if (said.Sum(d => d.Mountings) is var times && times != plan.Mountings.Count(m => m.Die.Name == die.Name))
        {
            yield return $"die {die.Name}: {times} mountings stated, {plan.Mountings.Count(m => m.Die.Name == die.Name)} are listed";
        }
    }

    // Where every die stands, from mounting to mounting in order of time.
    private static IEnumerable<string> Places(OrderPlan plan)
    {
        Dictionary<string, string?> onPress = plan.Question.Presses.ToDictionary(p => p.Name, p => p.MountedDie);
        HashSet<string> begun = [];
        Dictionary<string, double> free = [];
        foreach ((double start, OrderCut? cut, Mounting? mounting) in Events(plan))
        {
            CutDie die = cut?.Die ?? mounting!.Die;
            string press = (cut?.Press ?? mounting!.Press).Name;
            double there = Math.Max(free.GetValueOrDefault(die.Name), There(plan, die));
            if (start < there - Slack)
            {
                yield return cut is null
                    ? Invariant(
                        $"mounting die {die.Name}: begins on press {press} at hour {start:0.####}, the die is free from {there:0.####}")
                    : Invariant($"assignment {cut.Number}: die {die.Name} is free from hour {there:0.####}, it begins at {start:0.####}");
            }

            if (cut is not null && (onPress[press] != die.Name || !begun.Contains(press)))
            {
                yield return $"assignment {cut.Number}: die {die.Name} is not mounted on press {press} before it";
            }

            if (mounting is { Paid: false } && (onPress[press] != die.Name || begun.Contains(press)))
            {
                yield return $"mounting die {die.Name}: stated as standing on press {press} already, which it is not";
            }

            foreach (string other in mounting is null ? [] : onPress.Where(p => p.Value == die.Name).Select(p => p.Key).ToArray())
            {
                onPress[other] = null;
            }

            onPress[press] = die.Name;
            begun.Add(press);
            free[die.Name] = cut?.EndHour ?? mounting!.EndHour;
        }
    }

    // Mountings that end where work begins come before it.
    private static IEnumerable<(double Start, OrderCut? Cut, Mounting? Mounting)> Events(OrderPlan plan) =>
        plan.Mountings.Select(m => (m.StartHour, m.EndHour, (OrderCut?)null, (Mounting?)m))
            .Concat(plan.Cuts.Select(c => (c.StartHour, c.EndHour, (OrderCut?)c, (Mounting?)null)))
            .OrderBy(e => e.StartHour).ThenBy(e => e.EndHour).ThenBy(e => e.Item3 is null ? 0 : 1)
            .Select(e => (e.StartHour, e.Item3, e.Item4));

    // Midnight of the day a die comes, or so many days after the first for one to be made.
    private static double There(OrderPlan plan, CutDie die)
    {
        double from = die.From is { } day ? 24.0 * (day.DayNumber - plan.Question.Rules.Start.DayNumber) : 0;
        return Math.Max(from, die.MakePrice is null ? 0 : 24.0 * die.MakeDays);
    }
}
