using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Orders.Check;

/// <summary>What the work of presses and rolls must keep: open hours, one thing at a time, arrivals, changes.</summary>
internal static class WorkRules
{
    // Hours of a file this near are equal.
    private const double Slack = 1e-6;

    /// <summary>What is violated.</summary>
    public static IEnumerable<string> Broken(OrderPlan plan) =>
    [
        .. plan.Question.Presses.SelectMany(press => OnPress(plan, press, new WallCalendar(plan, press))),
        .. plan.Cuts.GroupBy(c => c.Roll.Name).SelectMany(roll => OnRoll(plan, roll)),
        .. DieRules.Broken(plan),
    ];

    // A press does one thing after the other in its open hours, and no more than its hours.
    private static IEnumerable<string> OnPress(OrderPlan plan, PressSpec press, WallCalendar calendar)
    {
        List<string> broken = [];
        double free = 0;
        double busy = 0;
        Dictionary<string, double> worked = [];
        foreach ((double start, double end, OrderCut? cut, Mounting? mounting) in Events(plan, press))
        {
            double before = cut is { RollChange: true } ? press.RollChangeMinutes / 60 : 0;
            double wanted = Wanted(press, cut, mounting);
            broken.AddRange(Spent(press, calendar, (start, end, cut, mounting), free));
            double ready = cut is null ? free : Math.Max(free, RollFree(plan, cut));
            if (before > 0 && calendar.Work(ready, start) < before - Slack)
            {
                broken.Add(Invariant(
                    $"{What(cut, mounting)}: begins at hour {start:0.####} on press {press.Name}; its roll and the press are free from "
                        + $"{ready:0.####}, and changing the roll takes {before:0.####} h"));
            }

            double from = before > 0 ? calendar.Before(start, before) : start;
            foreach (OvertimeWork over in plan.Overtime.Where(o => o.Press.Name == press.Name))
            {
                worked[Key(over)] = worked.GetValueOrDefault(Key(over)) + calendar.Work(from, end, over.Span);
            }

            busy += wanted + before;
            free = Math.Max(free, end);
        }

        if (busy > (press.Hours ?? double.PositiveInfinity) + Slack)
        {
            broken.Add(Invariant($"press {press.Name}: busy for {busy:0.####} h of {press.Hours:0.####}"));
        }

        return [.. broken, .. Overtime(plan, press, worked)];
    }

    // What begins when the press is free, and lasts as many open hours as it takes.
    private static IEnumerable<string> Spent(
        PressSpec press, WallCalendar calendar, (double Start, double End, OrderCut? Cut, Mounting? Mounting) work, double free)
    {
        (double start, double end, OrderCut? cut, Mounting? mounting) = work;
        double wanted = Wanted(press, cut, mounting);
        double spent = mounting is { Paid: false } ? end - start : calendar.Work(start, end);
        if (start < free - Slack || end < start - Slack || Math.Abs(spent - wanted) > Slack)
        {
            yield return Invariant(
                $"{What(cut, mounting)}: hours {start:0.####} to {end:0.####} on press {press.Name}, which is free from {free:0.####}, is "
                    + $"open for {calendar.Work(start, end):0.####} h of them, and takes {wanted:0.####} h");
        }
    }

    // Open hours of a mounting or of strikes; a die that stands there already takes none.
    private static double Wanted(PressSpec press, OrderCut? cut, Mounting? mounting)
    {
        double mounted = mounting is { Paid: true } ? press.ChangeOverMinutes / 60 : 0;
        return cut is null ? mounted : cut.Strikes / (60 * press.StrokesPerMinute);
    }

    private static string What(OrderCut? cut, Mounting? mounting) =>
        cut is null ? $"mounting die {mounting!.Die.Name}" : $"assignment {cut.Number}";

    // Overtime is of the calendar, stated once, and its hours are those that are worked.
    private static IEnumerable<string> Overtime(OrderPlan plan, PressSpec press, Dictionary<string, double> worked)
    {
        foreach (IGrouping<string, OvertimeWork> over in plan.Overtime.Where(o => o.Press.Name == press.Name).GroupBy(Key))
        {
            bool known = press.Calendar is { } calendar && calendar.Overtime.Contains(over.First().Span);
            double hours = worked.GetValueOrDefault(over.Key);
            if (!known || over.Count() > 1 || Math.Abs(over.Sum(o => o.Hours) - hours) > Slack)
            {
                yield return Invariant(
                    $"press {press.Name}: overtime from {over.First().Span.From:yyyy-MM-ddTHH:mm} stated with "
                        + $"{over.Sum(o => o.Hours):0.####} "
                        + $"h, its work takes {hours:0.####} h{(known ? string.Empty : "; its calendar has no such overtime")}");
            }
        }
    }

    private static string Key(OvertimeWork over) => Invariant($"{over.Span.From:s} {over.Span.To:s} {over.Span.PricePerHour}");

    // Mountings come before the work that begins with them.
    private static IEnumerable<(double Start, double End, OrderCut? Cut, Mounting? Mounting)> Events(OrderPlan plan, PressSpec press) =>
        plan.Mountings.Where(m => m.Press.Name == press.Name)
            .Select(m => (m.StartHour, m.EndHour, (OrderCut?)null, (Mounting?)m))
            .Concat(plan.Cuts.Where(c => c.Press.Name == press.Name).Select(c => (c.StartHour, c.EndHour, (OrderCut?)c, (Mounting?)null)))
            .OrderBy(e => e.StartHour).ThenBy(e => e.EndHour).ThenBy(e => e.Item3 is null ? 0 : 1);

    // When a roll comes, and when the work on it before a piece ends.
    private static double RollFree(OrderPlan plan, OrderCut cut) =>
        plan.Cuts.Where(c => c.Roll.Name == cut.Roll.Name && c.StartHour < cut.StartHour - Slack).Select(c => c.EndHour)
            .Append(Comes(plan, cut.Roll.Received)).Max();

    private static double Comes(OrderPlan plan, DateOnly? day) =>
        day is { } known ? 24.0 * (known.DayNumber - plan.Question.Rules.Start.DayNumber) : 0;

    // A roll is on one press at a time, is cut from its start on, and is put on wherever it was not.
    private static IEnumerable<string> OnRoll(OrderPlan plan, IGrouping<string, OrderCut> roll)
    {
        OrderCut? before = null;
        foreach (OrderCut cut in roll.OrderBy(c => c.StartHour).ThenBy(c => c.EndHour))
        {
            if (before is not null && (cut.StartHour < before.EndHour - Slack || cut.FromM < before.FromM - Slack))
            {
                yield return Invariant(
                    $"assignment {cut.Number}: cuts roll {roll.Key} from hour {cut.StartHour:0.####} and {cut.FromM:0.###} m on, while "
                        + $"assignment {before.Number} cuts it from {before.FromM:0.###} m on until {before.EndHour:0.####}");
            }

            OrderCut? onPress = plan.Cuts.Where(c => c.Press.Name == cut.Press.Name && c.StartHour < cut.StartHour - Slack)
                .MaxBy(c => c.StartHour);
            bool stays = onPress is not null && before is not null && onPress.Number == before.Number;
            if (cut.RollChange == stays)
            {
                yield return stays
                    ? $"assignment {cut.Number}: says that roll {roll.Key} is put on press {cut.Press.Name}, where it is already"
                    : $"assignment {cut.Number}: roll {roll.Key} is not on press {cut.Press.Name}, and no roll change is stated";
            }

            before = cut;
        }
    }
}
