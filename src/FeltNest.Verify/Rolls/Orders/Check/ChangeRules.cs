using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Rolls.Orders.Check;

/// <summary>What a plan says of its changes must be what its work list does now.</summary>
internal static class ChangeRules
{
    /// <summary>What is violated.</summary>
    public static IEnumerable<string> Broken(OrderPlan plan)
    {
        foreach (PlanChange change in plan.Changes ?? [])
        {
            // The rest of a job that is begun stands under a name that goes on behind its order's.
            OrderCut[] own =
            [
                .. plan.Cuts.Where(c => c.Order.Name == change.Order
                    || (c.Order.Pins is { First: true } && c.Order.Name.StartsWith(change.Order + " begun", StringComparison.Ordinal))),
            ];
            string now = change.What switch
            {
                ChangedThing.Roll => Joined(own.Select(c => c.Roll.Name)),
                ChangedThing.Press => Joined(own.Select(c => c.Press.Name)),
                ChangedThing.Die => Joined(own.Select(c => c.Die.Name)),
                _ => own.Length == 0
                    ? string.Empty
                    : Invariant($"{OrderTally.Day(plan.Question.Rules, own.Max(c => c.EndHour)):yyyy-MM-dd}"),
            };
            if (now != change.After || change.After == change.Before)
            {
                yield return $"changes: order {change.Order} is stated with {change.After} after {change.Before}, its assignments have "
                    + $"{now}";
            }
        }
    }

    private static string Joined(IEnumerable<string> names) => string.Join(", ", names.Distinct().Order(StringComparer.Ordinal));
}
