using FeltNest.Ball;
using static FeltNest.InvariantText;

namespace FeltNest.Panel.Budget;

/// <summary>What a budget of the seam gap says, in sentences.</summary>
internal static class GapWords
{
    // A bend is worth a word from this share of the whole effect on, and from this size, mm.
    private const double BendShare = 0.1;
    private const double BendMm = 0.005;

    /// <summary>The sentences of one state.</summary>
    public static IReadOnlyList<string> Of(GapBudget budget, GapState state)
    {
        List<string> words = [];
        if (budget.Adhesive is { } range)
        {
            string bridged = Invariant($"{range.LeastMm:0.##} to {range.MostMm:0.##} mm that the adhesive bridges");
            words.Add(NominalWithin(state, range)
                ? $"With nothing off, the whole seam lies within the {bridged}."
                : $"With nothing off, the seam leaves the {bridged}: mend panel or seam gap first, tolerances alone cannot.");
            words.Add(Invariant($"{state.BallsWithinPercent:0.0} % of balls have their whole seam within, {state.SeamWithinPercent:0.0} % ")
                + "of all seam lies within.");
        }

        words.Add(First(budget, state));
        words.AddRange(Ties(budget, state));
        words.AddRange(Bends(budget, state));
        words.Add(Together(state));
        return words;
    }

    /// <summary>Whether the gap with nothing off lies within a range.</summary>
    public static bool NominalWithin(GapState state, AdhesiveRange range) =>
        range.Holds(state.NominalLeastMm) && range.Holds(state.NominalMostMm);

    /// <summary>A spread from end to end against the adhesive's range.</summary>
    public static string Verdict(AdhesiveRange? range, double leastMm, double mostMm)
    {
        if (range is null)
        {
            return "not known: no range is stated";
        }

        return range.Holds(leastMm) && range.Holds(mostMm) ? "within" : "outside";
    }

    private static string First(GapBudget budget, GapState state)
    {
        GapShare first = state.Shares[0];
        GapSource source = budget.Sources[first.Source];
        if (first.VariancePercent == 0)
        {
            return "No tolerance moves the gap.";
        }

        string most = Invariant($"{source.Words} ({source.Field}), {first.VariancePercent:0} % of the variance");
        return first.GainPercent is > 0
            ? Invariant($"Buy down first: {most}; halved it wins {first.GainPercent:0.0} points of balls.")
            : $"Greatest part: {most}; halving one tolerance alone wins no ball.";
    }

    // Gains that the count of balls does not tell apart: within two standard errors of both.
    private static IEnumerable<string> Ties(GapBudget budget, GapState state)
    {
        GapShare first = state.Shares[0];
        if (first.GainPercent is null or <= 0)
        {
            return [];
        }

        string[] near = [.. state.Shares.Skip(1)
            .Where(share => first.GainPercent - share.GainPercent
                < 2 * double.Hypot(first.GainErrorPercent ?? 0, share.GainErrorPercent ?? 0))
            .Select(share => budget.Sources[share.Source].Words)];
        return near.Length == 0 ? [] : [$"The count of balls does not tell it from: {string.Join(", ", near)}."];
    }

    private static IEnumerable<string> Bends(GapBudget budget, GapState state) => state.Shares
        .Where(share => share.BendMm > BendMm && share.BendMm > BendShare * share.GreatestMm)
        .Select(share => Invariant(
            $"{budget.Sources[share.Source].Words} bends the gap: up to {share.BendMm:0.000} mm is the same at both ends; the worst case ")
                + "goes by the ends.");

    private static string Together(GapState state) => state is { SolvedLeastMm: { } least, SolvedMostMm: { } most }
        ? Invariant($"Solved with all parts off together: {least:0.00} to {most:0.00} mm, against {state.WorstLeastMm:0.00} to ")
            + Invariant($"{state.WorstMostMm:0.00} mm added up part by part.")
        : "Felt cannot be off so far with all parts together: the worst case is added up part by part alone.";
}
