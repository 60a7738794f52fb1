using FeltNest.Rolls.Orders.Planned;

namespace FeltNest.Rolls.Orders.FirstFit;

/// <summary>Builds a sound plan at once, without a search: one order after the other, each into the lot that serves it best, first into
/// rolls begun, then into the roll that just holds it.</summary>
/// <remarks>Keeps every rule that a plan is checked for. It proves nothing: other plans may be shorter of fewer balls or cost less. Where
/// anything at all can be cut, it cuts something.</remarks>
internal static class FirstFitPlanner
{
    /// <summary>The plan of a question: the better one of the orders taken by their days and by their size.</summary>
    public static OrderPlan Run(OrderRequest question) =>
        new[] { question.Orders.OrderBy(o => o.Due), question.Orders.OrderByDescending(o => o.Balls) }
            .Select(sequence => Filled(question, sequence))
            .MinBy(plan => plan.Rank)!;

    private static OrderPlan Filled(OrderRequest question, IEnumerable<CoverOrder> sequence)
    {
        ShopState state = new(question);
        foreach (CoverOrder order in sequence)
        {
            state = OrderFill.Filled(state, order);
        }

        return state.Plan();
    }
}
