using FeltNest.Cost.Compare.Findings;
using FeltNest.Cost.Offers;
using static FeltNest.InvariantText;

namespace FeltNest.Cost.Compare.Handover;

/// <summary>What to buy and on what conditions, in sentences.</summary>
internal static class SummaryAdvice
{
    // Cheapest in fewer cases than this, per cent, a lead is called thin.
    private const double Sure = 80;

    private const int MostFlips = 3;

    /// <summary>What to do.</summary>
    public static string Recommendation(Comparison comparison)
    {
        CompareRow best = comparison.Best;
        string cut = Invariant($"{best.Rows} rows, {best.Account.Cavities:0.##} panels of one layer a strike");
        if (comparison.Rows.Count == 1)
        {
            return $"Only {best.Case.Name} has an answer: there is nothing to choose between. Cut it in {cut}.";
        }

        if (best.Sheet is not { } sheet || !comparison.HasCosts)
        {
            return Invariant(
                $"Take {best.Case.Name} if prices are alike: it needs the least felt, {best.Account.PerThousandBalls.SquareMetres:0.00} "
                    + $"m2 for a ")
                + $"thousand balls. Cut it in {cut}. Ask for prices before you order.";
        }

        string price = best.Case.Offer is null ? string.Empty : $" at {Price(sheet.Price)}";
        return Invariant(
            $"Buy {best.Case.Name}{price} and cut it in {cut}: {sheet.Total:0.00} {sheet.Currency} for a thousand good balls. ")
            + Lead(comparison);
    }

    /// <summary>On what conditions it holds.</summary>
    public static IEnumerable<string> Conditions(Comparison comparison)
    {
        CompareRow best = comparison.Best;
        if (comparison.Rows.Count > 1 && comparison.HasCosts)
        {
            foreach (string limit in Prices(comparison, best, comparison.Ranking[1]))
            {
                yield return limit;
            }

            foreach (RankFlip flip in comparison.Flips.OrderByDescending(f => f.IsStated).ThenBy(SummaryRisks.Distance).Take(MostFlips))
            {
                string side = flip.At > flip.Now ? "below" : "above";
                FigureName figure = FigureName.Of(flip.Assumption);
                yield return Invariant($"{figure.Name} stays {side} {flip.At:0.###}{figure.Unit} (now {flip.Now:0.###}); ")
                    + $"beyond it {flip.Best} is cheaper.";
            }
        }

        if (best.Case.Offer is not null)
        {
            yield return Invariant($"The felt is never narrower than {best.Case.WidthMm:0.##} mm, the width that is guaranteed.");
        }

        if (best.Sheet?.Purchase is { } bought)
        {
            string rolls = bought.Rolls is { } count ? Invariant($"{count:0.###} rolls, ") : string.Empty;
            yield return Invariant($"{rolls}{bought.BoughtM:0.0} m are bought for {bought.ThousandBalls:0.###} thousand balls.");
        }

        if (best.Case.Offer is { MinimumM: > 0 } least)
        {
            yield return Invariant($"No less than {least.MinimumM:0.#} m are sold at once.");
        }
    }

    // How sure the first place is, and what to do where it is not.
    private static string Lead(Comparison comparison)
    {
        if (comparison.Outlook is not { } outlook)
        {
            return "How sure that is cannot be said, as no figure has a range.";
        }

        double chance = outlook.Rows.First(row => row.Name == comparison.Best.Case.Name).CheapestPercent;
        RowOutlook likely = outlook.Rows.MaxBy(row => row.CheapestPercent)!;
        if (chance >= Sure)
        {
            return Invariant($"It is the cheapest in {chance:0.0} % of the cases drawn over the ranges.");
        }

        string other = likely.CheapestPercent > chance
            ? Invariant($", {likely.Name} in {likely.CheapestPercent:0.0} %")
            : string.Empty;
        string measure = outlook.Shares.Count > 0
            ? $". Before a large order, measure: {FigureName.Of(outlook.Shares[0].Figure).Name}"
            : string.Empty;
        return Invariant(
            $"The lead is thin: it is the cheapest in only {chance:0.0} % of the cases drawn over the ranges{other}{measure}.");
    }

    private static IEnumerable<string> Prices(Comparison comparison, CompareRow best, CompareRow next)
    {
        if (comparison.BreakEvens.FirstOrDefault(e => e.Offer == best.Case.Name && e.Against == next.Case.Name) is { } dearest)
        {
            yield return $"Its price stays below {Price(dearest.Price)} (now {Price(best.Sheet!.Price)}), where {next.Case.Name} costs "
                + $"as much.";
        }

        if (comparison.BreakEvens.FirstOrDefault(e => e.Offer == next.Case.Name && e.Against == best.Case.Name) is { } cheapest)
        {
            yield return cheapest.Price.Amount > 0
                ? $"{next.Case.Name} is not offered below {Price(cheapest.Price)} (now {Price(next.Sheet!.Price)})."
                : $"{next.Case.Name} would not cost less even as a gift.";
        }
    }

    private static string Price(FeltPrice price) => Invariant($"{price.Amount:0.00##} {price.Currency}/{PriceUnits.WordOf(price.Unit)}");
}
