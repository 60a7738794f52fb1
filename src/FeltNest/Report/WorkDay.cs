using FeltNest.Rolls;
using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What one press cuts on one day of a plan.</summary>
/// <param name="Press">The press.</param>
/// <param name="Day">The day on which its pieces begin.</param>
/// <param name="Cuts">The pieces, in the order of cutting.</param>
/// <param name="Id">Its id in a page.</param>
internal sealed record WorkDay(PressSpec Press, DateOnly Day, IReadOnlyList<OrderCut> Cuts, string Id)
{
    // The end of a day belongs to it: work that begins then begins on the next.
    private const double JustAfterHours = 1e-6;

    /// <summary>The days of a plan, press by press.</summary>
    public static IReadOnlyList<WorkDay> Of(OrderPlan plan) =>
    [
        .. plan.Cuts.GroupBy(c => (c.Press, Day: plan.Question.Rules.DayOf(c.StartHour + JustAfterHours)))
            .Select((day, i) => new WorkDay(day.Key.Press, day.Key.Day, [.. day], Invariant($"d{i + 1}"))),
    ];

    /// <summary>Its name.</summary>
    public string Name => Invariant($"{Press.Name}, {Day:dddd yyyy-MM-dd}");

    /// <summary>Id of a piece's ticket in a page.</summary>
    public static string TicketOf(OrderCut cut) => Invariant($"t{cut.Number}");
}
