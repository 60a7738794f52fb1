using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Orders.Check;

/// <summary>What presses and dies of a plan must keep.</summary>
internal static class WorkRules
{
    // Hours of a file this near are equal.
    private const double Slack = 1e-6;

    /// <summary>What is violated.</summary>
    public static IEnumerable<string> Broken(OrderPlan plan) =>
    [
        .. plan.Cuts.GroupBy(c => c.Press.Name).SelectMany(OnPress),
        .. plan.Cuts.GroupBy(c => c.Die.Name).SelectMany(work => OfDie(plan, work)),
    ];

    // A press makes one cut after the other, each die once, inside its hours.
    private static IEnumerable<string> OnPress(IGrouping<string, OrderCut> work)
    {
        PressSpec press = work.First().Press;
        double free = 0;
        CutDie? on = null;
        HashSet<string> done = [];
        foreach (OrderCut cut in work.OrderBy(c => c.StartHour))
        {
            bool changed = on?.Name != cut.Die.Name;
            if (changed && !done.Add(cut.Die.Name))
            {
                yield return $"die {cut.Die.Name}: stands on press {press.Name} twice, where one campaign was counted";
            }

            free += changed ? press.ChangeOverMinutes / 60 : 0;
            on = cut.Die;
            double hours = cut.Strikes / (60 * press.StrokesPerMinute);
            if (cut.StartHour < free - Slack || Math.Abs(cut.EndHour - cut.StartHour - hours) > Slack)
            {
                yield return Invariant(
                    $"assignment {cut.Number}: hours {cut.StartHour:0.####} to {cut.EndHour:0.####} on press {press.Name}, which is "
                        + $"free from {free:0.####} and takes {hours:0.####} h");
            }

            free = cut.EndHour;
        }

        if (free > (press.Hours ?? double.PositiveInfinity) + Slack)
        {
            yield return Invariant($"press {press.Name}: busy for {free:0.####} h of {press.Hours:0.####}");
        }
    }

    // A die stands on one press that takes it, and makes no more strikes than it has.
    private static IEnumerable<string> OfDie(OrderPlan plan, IGrouping<string, OrderCut> work)
    {
        CutDie die = work.First().Die;
        long strikes = work.Sum(c => (long)c.Strikes);
        long most = die.StrikesLeft + ((long)die.LifeStrikes * (die.MostReRules + (die.MakePrice is null ? 0 : 1)));
        if (strikes > most)
        {
            yield return $"die {die.Name}: {strikes} strikes, of {most} that it has left or can get";
        }

        if (work.Select(c => c.Press.Name).Distinct().Count() > 1)
        {
            yield return $"die {die.Name}: stands on several presses";
        }

        if (work.FirstOrDefault(c => c.Press.Dies.Count > 0
            ? !c.Press.Dies.Contains(die.Name)
            : die.Shape.LengthMm > c.Press.Bed.BoardLengthMm + Slack || die.Shape.AcrossMm > c.Press.Bed.BoardWidthMm + Slack)
                is { } cut)
        {
            yield return $"die {die.Name}: does not fit press {cut.Press.Name}";
        }

        if (plan.Dies.Where(d => d.Die.Name == die.Name).Sum(d => (long)d.Strikes) is var said && said != strikes)
        {
            yield return $"die {die.Name}: {said} strikes stated, its assignments make {strikes}";
        }
    }
}
