using FeltNest.Rolls.Orders.Clock;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Orders.Begun;

/// <summary>Says what a plan does otherwise than the plan before it, order by order, and why where the inputs tell it.</summary>
/// <param name="plan">The plan.</param>
/// <param name="before">The plan before.</param>
/// <param name="done">What is cut of it.</param>
internal sealed class PlanChanges(OrderPlan plan, OrderPlan before, IReadOnlyList<DoneWork> done)
{
    private const string Pinned = "the list of orders asks for it";
    private const string Else = "by the new plan";

    /// <summary>The changes, in the order of the orders.</summary>
    public static IReadOnlyList<PlanChange> Of(OrderPlan plan, OrderPlan before, IReadOnlyList<DoneWork> done) =>
        [.. new PlanChanges(plan, before, done).All()];

    private IEnumerable<PlanChange> All()
    {
        foreach (string order in plan.Question.Orders.Select(BegunShop.OrderOf).Distinct())
        {
            OrderCut[] old = [.. before.Cuts.Where(c => BegunShop.OrderOf(c.Order) == order && !IsDone(c))];
            OrderCut[] now = [.. plan.Cuts.Where(c => BegunShop.OrderOf(c.Order) == order)];
            if (old.Length == 0)
            {
                continue;
            }

            foreach (ChangedThing what in Enum.GetValues<ChangedThing>())
            {
                string[] was = Said(before, old, what);
                string[] has = Said(plan, now, what);
                if (!was.SequenceEqual(has))
                {
                    yield return new PlanChange
                    {
                        Order = order,
                        What = what,
                        Before = string.Join(", ", was),
                        After = string.Join(", ", has),
                        Reason = Reason(what, order, old, now),
                    };
                }
            }
        }
    }

    private bool IsDone(OrderCut cut) => done.Any(d => d.Cut.Number == cut.Number && d.Strikes >= cut.Strikes);

    private static string[] Said(OrderPlan of, OrderCut[] cuts, ChangedThing what) => what switch
    {
        ChangedThing.Roll => Names(cuts, c => c.Roll.Name),
        ChangedThing.Press => Names(cuts, c => c.Press.Name),
        ChangedThing.Die => Names(cuts, c => c.Die.Name),
        _ => cuts.Length == 0 ? [] : [Invariant($"{of.Question.Rules.DayOf(cuts.Max(c => c.EndHour)):yyyy-MM-dd}")],
    };

    private static string[] Names(OrderCut[] cuts, Func<OrderCut, string> name) =>
        [.. cuts.Select(name).Distinct().Order(StringComparer.Ordinal)];

    private string Reason(ChangedThing what, string order, OrderCut[] old, OrderCut[] now)
    {
        OrderPins[] pins = [.. plan.Question.Orders.Where(o => BegunShop.OrderOf(o) == order).Select(o => o.Pins).OfType<OrderPins>()];
        return what switch
        {
            ChangedThing.Roll => OfRoll(old, now) ?? (Barred(pins, p => old.All(c => p.Takes(c.Roll, c.Die))) ?? Else),
            ChangedThing.Press => OfPress(old) ?? (Barred(pins, p => old.All(c => p.Takes(c.Press))) ?? Else),
            ChangedThing.Die => OfDie(old) ?? (Barred(pins, p => old.All(c => p.Takes(c.Roll, c.Die))) ?? Else),
            _ => OfDay(order, old, now, pins),
        };
    }

    // What the list of orders holds the order to is told, not what is held for a job that is begun.
    private static string? Barred(OrderPins[] pins, Func<OrderPins, bool> allows) =>
        pins.Any(p => !p.First && !allows(p)) ? Pinned : null;

    private string? OfRoll(OrderCut[] old, OrderCut[] now)
    {
        if (old.FirstOrDefault(c => c.Roll.Offer is null && plan.Question.Rolls.All(r => r.Name != c.Roll.Name)) is { } gone)
        {
            return $"roll {gone.Roll.Name} is used up or gone";
        }

        OrderCut? come = now.FirstOrDefault(c => c.Roll.Offer is null && before.Question.Rolls.All(r => r.Name != c.Roll.Name));
        return come is null ? null : $"roll {come.Roll.Name} has come";
    }

    private string? OfPress(OrderCut[] old)
    {
        if (old.FirstOrDefault(c => Press(c) is null) is { } gone)
        {
            return $"press {gone.Press.Name} is not there";
        }

        return old.FirstOrDefault(IsClosed) is { } closed ? $"press {closed.Press.Name} is closed then" : null;
    }

    private PressSpec? Press(OrderCut cut) => plan.Question.Presses.FirstOrDefault(p => p.Name == cut.Press.Name);

    // A closed time that was not in the plan before, and in which it cut.
    private bool IsClosed(OrderCut cut)
    {
        DateTime from = before.Question.Rules.MomentOf(cut.StartHour);
        DateTime to = before.Question.Rules.MomentOf(cut.EndHour);
        IReadOnlyList<ClosedSpan> known = cut.Press.Calendar?.Closed ?? [];
        return Press(cut)?.Calendar is { } calendar && calendar.Closed.Except(known).Any(span => span.From < to && span.To > from);
    }

    private string? OfDie(OrderCut[] old) =>
        old.FirstOrDefault(c => plan.Question.Dies.All(d => d.Name != c.Die.Name || d.MostStrikes == 0)) is { } gone
            ? $"die {gone.Die.Name} is worn out or not there"
            : null;

    private string OfDay(string order, OrderCut[] old, OrderCut[] now, OrderPins[] pins)
    {
        if (pins.Any(p => p.Day is not null))
        {
            return Pinned;
        }

        double end = now.Select(c => c.EndHour).DefaultIfEmpty(0).Max();
        OrderCut? rush = plan.Cuts.FirstOrDefault(c => c.StartHour < end
            && before.Question.Orders.All(o => o.Name != BegunShop.OrderOf(c.Order))
            && BegunShop.OrderOf(c.Order) != order
            && now.Any(own => own.Press.Name == c.Press.Name && own.Order.Priority < c.Order.Priority && c.StartHour < own.StartHour));
        string? of = OfPress(old) ?? OfRoll(old, now);
        return (rush, of) switch
        {
            ({ } first, _) => $"order {first.Order.Name} of higher priority came",
            (null, { } reason) => reason,
            _ => Else,
        };
    }
}
