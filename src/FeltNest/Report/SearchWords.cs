using FeltNest.Rolls.Orders.Planned;
using FeltNest.Rolls.Orders.Search;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What is said of how a plan was found and how far it is the best: nothing that was not proved.</summary>
internal static class SearchWords
{
    // One ball in so many short, and the plan says so in its first line.
    private const int Badly = 20;

    /// <summary>The first line of a plan that is badly short; null where it is not.</summary>
    public static string? BadlyShort(OrderPlan plan)
    {
        long wanted = plan.Question.Orders.Sum(o => (long)o.Balls);
        long lacking = plan.Results.Sum(r => (long)r.ShortBalls);
        return lacking * Badly < wanted || lacking == 0 ? null : Invariant(
            $"BADLY SHORT: {lacking} of {wanted} balls are missing ({100.0 * lacking / wanted:0.#} %), "
                + $"{plan.Results.Count(r => r.ShortBalls > 0)} of {plan.Results.Count} orders");
    }

    /// <summary>How far the cost is the least, in a few words.</summary>
    public static string Gap(OrderPlan plan)
    {
        if (plan.GapPercent is { } gap)
        {
            string cutShort = plan.Proof.CutShort ? "; cut short" : string.Empty;
            return Invariant(
                $"gap {Math.Max(0, gap):0.###} %, among plans with no more balls short and no more orders late{cutShort}");
        }

        if (plan.Proof.CutShort)
        {
            return "the search was cut short before it proved a bound";
        }

        return plan.Proof.Searched ? "the search proved no bound worth saying" : "no search was made";
    }

    /// <summary>The sentence of a question that was too large; null where a search was made.</summary>
    public static string? NotSearched(OrderPlan plan) => plan.Proof.Searched ? null : Invariant(
        $"no search was made: {plan.Question.Orders.Count} orders, {plan.Question.Rolls.Count} rolls and {plan.Question.Dies.Count} "
            + $"dies are more than {ModelSize.Most} variables; the plan of first fit is sound, others may cost less. Fewer orders at a "
            + $"time are searched");

    /// <summary>Rolls of the plan that come after the first day of cutting, one sentence each.</summary>
    public static IEnumerable<string> Coming(OrderPlan plan) => plan.Begun.Where(r => plan.Question.ThereFrom(r) > 0)
        .Select(r => Invariant($"roll {r.Name} arrives on {r.Received:yyyy-MM-dd}: it is cut from 00:00 of that day on at the earliest"));
}
