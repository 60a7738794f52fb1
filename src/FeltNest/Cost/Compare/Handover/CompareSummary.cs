using FeltNest.Cost.Sheet;
using static FeltNest.InvariantText;

namespace FeltNest.Cost.Compare.Handover;

/// <summary>A comparison for the one who decides: money at stake, risks, what to buy and on what conditions, in sentences. Every figure is
/// of the comparison; what it does not hold is said to be missing.</summary>
internal sealed record CompareSummary
{
    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>What to do, in a sentence or two.</summary>
    public required string Recommendation { get; init; }

    /// <summary>On what conditions it holds.</summary>
    public required IReadOnlyList<string> Conditions { get; init; }

    /// <summary>Money at stake.</summary>
    public required IReadOnlyList<string> Stake { get; init; }

    /// <summary>What may go otherwise: spread, chance, nearest change of the ranking.</summary>
    public required IReadOnlyList<string> Risks { get; init; }

    /// <summary>What was not given or not reached.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    /// <summary>Most rows of its ranking: more do not fit on the page.</summary>
    public const int MostRows = 10;

    /// <summary>The summary.</summary>
    public static CompareSummary Of(Comparison comparison) => new()
    {
        Title = $"{comparison.Question.Lay.Part.Name}: which felt to buy",
        Recommendation = SummaryAdvice.Recommendation(comparison),
        Conditions = [.. SummaryAdvice.Conditions(comparison)],
        Stake = [.. StakeOf(comparison)],
        Risks = [.. SummaryRisks.Of(comparison)],
        Missing = [.. MissingOf(comparison)],
    };

    /// <summary>The rows as cells: rank, name, width, felt, total, above the best; the last two empty where not every row has a
    /// cost.</summary>
    public static IEnumerable<string[]> Ranking(Comparison comparison) => comparison.Ranking.Take(MostRows).Select(row => (string[])
    [
        Invariant($"{row.Rank}"), row.Case.Name, Invariant($"{row.Case.WidthMm:0.##}"),
        Invariant($"{row.Account.PerThousandBalls.SquareMetres:0.00}"), Invariant($"{row.Total:0.00}"),
        comparison.HasCosts ? Invariant($"{row.Total - comparison.Best.Total:0.00}") : string.Empty,
    ]);

    /// <summary>Names of those cells.</summary>
    public static IReadOnlyList<string> RankingNames(Comparison comparison) =>
        ["rank", "name", "width, mm", "felt, m2", $"cost, {comparison.Best.Sheet?.Currency ?? "not known"}", "above the best"];

    private static IEnumerable<string> StakeOf(Comparison comparison)
    {
        CompareRow best = comparison.Best;
        if (comparison.Rows.Count > 1)
        {
            CompareRow next = comparison.Ranking[1];
            double felt = next.Account.PerThousandBalls.SquareMetres - best.Account.PerThousandBalls.SquareMetres;
            yield return comparison.HasCosts
                ? $"Against the next, {next.Case.Name}: {Money(comparison, next.Total!.Value - best.Total!.Value)}."
                : Invariant($"Against the next, {next.Case.Name}: {felt:0.00} m2 of felt less for a thousand balls.");
        }

        if (!comparison.HasCosts)
        {
            yield break;
        }

        CompareRow today = comparison.Rows[0];
        decimal now = today.Kept?.Total ?? today.Total!.Value;
        string kept = today.Kept is null ? string.Empty : " with the kept die";
        yield return now > best.Total
            ? $"Against what is cut today, {today.Case.Name}{kept}: {Money(comparison, now - best.Total!.Value)}."
            : $"Against what is cut today, {today.Case.Name}{kept}: nothing is saved.";
        if (comparison.Years.FirstOrDefault(choice => choice.PaybackMonths is not null) is { } spent)
        {
            yield return Invariant(
                $"Money is best spent on: {spent.What}. {spent.Outlay:0} {best.Sheet!.Currency} at once save {spent.SavedPerYear:0} a "
                    + $"year, "
                    + $"so they are back after {spent.PaybackMonths:0.0} months (wear of dies left out).");
        }
    }

    // So much for a thousand balls, and in a year where its balls are known.
    private static string Money(Comparison comparison, decimal perThousand)
    {
        string currency = comparison.Best.Sheet!.Currency;
        string year = comparison.Question.Costs?.AnnualBalls is { } balls
            ? Invariant($", {perThousand * (decimal)(balls / 1000):0} {currency} a year")
            : string.Empty;
        return Invariant($"{perThousand:0.00} {currency} for a thousand balls{year}");
    }

    private static IEnumerable<string> MissingOf(Comparison comparison)
    {
        CostInputs? costs = comparison.Question.Costs;
        if (!comparison.HasCosts)
        {
            yield return "Not every row has a price: ranked by square metres of felt, and no money can be said.";
        }

        if (costs is null)
        {
            yield return "No costs file: strikes, die, roll ends, rejects and ranges are not counted.";
        }
        else if (costs.AnnualBalls is null)
        {
            yield return "The balls of a year are not known (annualBalls of the costs file): no money a year can be said.";
        }

        if (comparison.Best.Sheet?.NotCounted is { Count: > 0 } lines)
        {
            yield return $"Not in the costs, as no figure was given: {string.Join(", ", lines)}.";
        }

        foreach ((string name, string reason) in comparison.Unanswered.Take(3))
        {
            yield return $"{name} has no layout: {reason}.";
        }

        if (comparison.CutShort)
        {
            yield return "The search was cut short: what it did not reach is missing.";
        }

        if (comparison.Rows.Count > MostRows)
        {
            yield return Invariant($"The best {MostRows} of {comparison.Rows.Count} are listed; compare.csv holds all.");
        }
    }
}
