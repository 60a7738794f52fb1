using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.Check;

/// <summary>A plan as a file states it.</summary>
/// <param name="Plan">Question and work; its results are not read, they are worked out again.</param>
/// <param name="Cost">Cost stated.</param>
/// <param name="GapPercent">How far it may be above the least, stated, per cent; null where none is stated.</param>
/// <param name="Lacking">Balls and reserve balls stated as short, by order.</param>
/// <param name="Late">Days stated as late, by order.</param>
internal sealed record StatedOrders(
    OrderPlan Plan, decimal Cost, double? GapPercent, IReadOnlyDictionary<string, (int Balls, int Reserve)> Lacking,
    IReadOnlyDictionary<string, int> Late)
{
    /// <summary>Whether it is stated that one ball in twenty or more is missing.</summary>
    public required bool BadlyShort { get; init; }

    /// <summary>What a plan states.</summary>
    public static StatedOrders Of(OrderPlan plan) => new(
        plan with { Proof = plan.Proof with { CostBound = plan.Bound } }, plan.Cost.Total, plan.GapPercent,
        plan.Results
            .Where(r => r.ShortBalls > 0 || r.ReserveShortBalls > 0)
            .ToDictionary(r => r.Order.Name, r => (r.ShortBalls, r.ReserveShortBalls)),
        plan.Results.Where(r => r.DaysLate > 0).ToDictionary(r => r.Order.Name, r => r.DaysLate))
    {
        BadlyShort = plan.BadlyShort,
    };
}
