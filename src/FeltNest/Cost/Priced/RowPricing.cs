using FeltNest.Cost.Compare;
using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;

namespace FeltNest.Cost.Priced;

/// <summary>Prices the ways to cut the felt of a case: its own roll and faults, its own price, the shop's costs.</summary>
internal sealed class RowPricing(CompareRequest question)
{
    /// <summary>What the felt of a case costs, or null where no price is known.</summary>
    public static FeltPrice? PriceOf(CompareRequest question, CompareCase item) => item.Offer?.Price ?? question.Costs?.Felt;

    /// <summary>The costs of a question; where none are given those with nothing known but the currency of the first offer.</summary>
    public static CostInputs CostsOf(CompareRequest question) =>
        question.Costs ?? CostInputs.Bare(question.Cases.Select(c => c.Offer?.Price.Currency).First(c => c is not null)!);

    /// <summary>What is lost on the rolls of a case.</summary>
    public FeltLosses LossesOf(CompareCase item, PriceChange? change = null)
    {
        FeltLosses losses = (change?.Costs ?? question.Costs)?.Losses ?? FeltLosses.None;
        losses = item.Offer is { } offer
            ? losses with { RollLengthM = offer.LengthM, FaultPercent = offer.FaultPercent ?? losses.FaultPercent }
            : losses;
        return change?.FaultPercent is { } other ? losses with { FaultPercent = other } : losses;
    }

    private static FeltTerms? TermsOf(CompareCase item, CostInputs? costs)
    {
        if (item.Offer is { } offer)
        {
            return FeltTerms.Of(offer);
        }

        return costs?.Felt is { } price ? FeltTerms.Of(price) : null;
    }

    /// <summary>Account and cost sheet of a plan; no sheet where no price is known.</summary>
    /// <param name="item">The case.</param>
    /// <param name="plan">What is cut.</param>
    /// <param name="most">Most panels of one layer a strike cuts, or null for one repeat.</param>
    /// <param name="change">What is changed in the costs, or null.</param>
    /// <exception cref="NoAnswerException">The roll is shorter than one strike.</exception>
    public (FeltAccount Account, CostSheet? Sheet) Priced(CompareCase item, LayPlan plan, int? most, PriceChange? change = null)
    {
        CostInputs? costs = change?.Costs ?? question.Costs;
        FeltLosses losses = LossesOf(item, change) with { MostPanelsPerStrike = most };
        FeltAccount account =
            FeltAccount.Of(plan, losses, item.Offer?.MassPerAreaGsm ?? costs?.MassPerAreaGsm ?? question.Lay.Part.MassPerAreaGsm);
        if (TermsOf(item, costs) is not { } terms)
        {
            return (account, null);
        }

        // A price that is moved stands for that of every tier.
        terms = change?.Price is { } amount ? terms with { Price = terms.Price with { Amount = amount }, Tiers = [] } : terms;
        return (account, CostSheet.Of(account, terms, costs ?? CostsOf(question), question.ThousandBalls));
    }

    /// <summary>The way that costs least.</summary>
    /// <param name="item">The case.</param>
    /// <param name="front">Its layouts.</param>
    /// <param name="change">What is changed in the costs, or null.</param>
    /// <param name="plies">Plies of a strike, or null for those of the layout.</param>
    /// <param name="moreCavities">Panels of one layer that a strike may cut beyond what the costs allow.</param>
    public LayChoice Cheapest(
        CompareCase item, LayFront front, PriceChange? change = null, int? plies = null, int moreCavities = 0) =>
        front.Best(LossesOf(item, change).MostPanelsPerStrike + moreCavities, plies, (plan, most) => Priced(item, plan, most, change));

    /// <summary>All ways that are allowed.</summary>
    public List<LayChoice> Ways(CompareCase item, LayFront front) =>
        front.Ways(LossesOf(item).MostPanelsPerStrike, null, (plan, most) => Priced(item, plan, most));

    /// <summary>The layout with least felt, cut with as many repeats a strike as are allowed.</summary>
    public LayChoice LeastFelt(CompareCase item, LayFront front) =>
        front.LeastFelt(LossesOf(item).MostPanelsPerStrike, (plan, most) => Priced(item, plan, most));

    /// <summary>The ways of which none is better in felt, strikes and cavities together.</summary>
    public IReadOnlyList<LayChoice> Worth(CompareCase item, LayFront front) =>
        front.Worth(LossesOf(item).MostPanelsPerStrike, (plan, most) => Priced(item, plan, most));
}
