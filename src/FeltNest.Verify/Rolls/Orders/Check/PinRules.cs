using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Orders.Check;

/// <summary>What orders are held to and kept from: lot, roll, press, die, day, and jobs that are begun before all others on their
/// press.</summary>
internal static class PinRules
{
    // Hours of a file this near are equal.
    private const double Slack = 1e-6;

    /// <summary>What is violated.</summary>
    public static IEnumerable<string> Broken(OrderPlan plan) =>
        plan.Cuts.Where(cut => cut.Order.Pins is not null).SelectMany(cut => OfCut(plan, cut, cut.Order.Pins!));

    private static IEnumerable<string> OfCut(OrderPlan plan, OrderCut cut, OrderPins pins)
    {
        string[] roll = cut.Roll.Offer is { } offer ? [cut.Roll.Name, offer] : [cut.Roll.Name];
        (string Kind, string[] Names, IReadOnlyList<string> Held, IReadOnlyList<string> Barred)[] rules =
        [
            ("lot", [cut.Roll.Lot], pins.Lots, pins.NotLots), ("roll", roll, pins.Rolls, pins.NotRolls),
            ("press", [cut.Press.Name], pins.Presses, pins.NotPresses), ("die", [cut.Die.Name], pins.Dies, pins.NotDies),
        ];
        foreach ((string kind, string[] names, IReadOnlyList<string> held, IReadOnlyList<string> barred) in rules)
        {
            if (held.Count > 0 && !names.Any(held.Contains))
            {
                yield return $"assignment {cut.Number}: order {cut.Order.Name} is held to {kind} {string.Join(", ", held)}, it is cut "
                    + $"from {kind} {names[0]}";
            }

            if (names.Any(barred.Contains))
            {
                yield return $"assignment {cut.Number}: order {cut.Order.Name} is kept from {kind} {names[0]}";
            }
        }

        if (pins.Day is { } day && cut.StartHour < (24.0 * (day.DayNumber - plan.Question.Rules.Start.DayNumber)) - Slack)
        {
            yield return Invariant(
                $"assignment {cut.Number}: order {cut.Order.Name} is not to be cut before {day:yyyy-MM-dd}, it begins at hour "
                    + $"{cut.StartHour:0.####}");
        }

        if (pins.First && plan.Cuts.FirstOrDefault(c => c.Press.Name == cut.Press.Name && c.StartHour < cut.StartHour - Slack
            && c.Order.Pins is not { First: true }) is { } before)
        {
            yield return $"assignment {before.Number}: is cut on press {cut.Press.Name} before the job of order {cut.Order.Name} that is "
                + $"begun";
        }
    }
}
