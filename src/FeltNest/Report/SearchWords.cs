using FeltNest.Rolls.Orders.Planned;
using static FeltNest.InvariantText;

namespace FeltNest.Report;

/// <summary>What is said of how far a plan is the best, aim by aim: nothing that was not proved.</summary>
internal static class SearchWords
{
    /// <summary>The first line of a plan that is badly short; null where it is not.</summary>
    public static string? BadlyShort(OrderPlan plan)
    {
        long wanted = plan.Question.Orders.Sum(o => (long)o.Balls);
        return plan.BadlyShort
            ? Invariant($"BADLY SHORT: {plan.ShortBalls} of {wanted} balls are missing ({100.0 * plan.ShortBalls / wanted:0.#} %), ")
                + Invariant($"{plan.Results.Count(r => r.ShortBalls > 0)} of {CountWords.Of(plan.Results.Count, "order")}")
            : null;
    }

    /// <summary>How far a count is the least that any plan has, in a few words.</summary>
    /// <param name="count">What the plan has.</param>
    /// <param name="least">What was proved for any plan.</param>
    /// <param name="among">Among which plans.</param>
    public static string Proof(long count, double least, string among)
    {
        long whole = PlanProof.Whole(least);
        if (count == 0)
        {
            return "none";
        }

        if (count <= whole)
        {
            return $"proved: no fewer in any plan{among}";
        }

        return whole > 0 ? Invariant($"not proved; at least {whole} in any plan{among}") : "not proved to be the fewest";
    }

    /// <summary>How far the cost is the least, in a few words.</summary>
    public static string Gap(double gapPercent)
    {
        string proved = gapPercent <= OrderPlan.ProvedGapPercent ? "; proved" : string.Empty;
        return Invariant($"gap {Math.Max(0, gapPercent):0.###} %, among plans with no more balls short and no more orders late{proved}");
    }

    /// <summary>What a search that was cut short left unproved, one sentence; null where it ended by itself.</summary>
    public static string? CutShort(OrderPlan plan)
    {
        if (!plan.Proof.CutShort)
        {
            return null;
        }

        string[] open = [.. plan.Unproved];
        return open.Length == 0
            ? "the search was cut short after all of the plan was proved"
            : $"the search was cut short; not proved: {string.Join(", ", open)}";
    }

    /// <summary>Rolls of the plan that come after the first day of cutting, one sentence each.</summary>
    public static IEnumerable<string> Coming(OrderPlan plan) => plan.Begun.Where(r => plan.Question.ThereFrom(r) > 0)
        .Select(r => Invariant($"roll {r.Name} arrives on {r.Received:yyyy-MM-dd}: it is cut from 00:00 of that day on at the earliest"));
}
