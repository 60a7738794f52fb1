namespace FeltNest.Rolls.Orders.Check;

/// <summary>Works a plan of orders out again from its question and its work list alone; shares no arithmetic with the planner.</summary>
internal static class OrderPlanCheck
{
    /// <summary>What is violated, one clear line each; empty when all is kept.</summary>
    public static IReadOnlyList<string> Violations(StatedOrders stated) =>
    [
        .. RollRules.Broken(stated.Plan), .. PinRules.Broken(stated.Plan), .. WorkRules.Broken(stated.Plan), .. OrderTally.Broken(stated),
        .. CostRules.Broken(stated), .. ChangeRules.Broken(stated.Plan),
    ];
}
