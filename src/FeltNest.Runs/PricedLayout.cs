using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;
using FeltNest.Layout;
using FeltNest.Yield;

namespace FeltNest.Runs;

/// <summary>A layout with what it yields and, as far as losses and price allow, what a thousand balls of it use and cost.</summary>
internal sealed record PricedLayout
{
    /// <summary>What one repeat yields, before losses.</summary>
    public required YieldFigures Yields { get; init; }

    /// <summary>Its pairing groups, in order of part and angle.</summary>
    public required IReadOnlyList<PairingClass> Groups { get; init; }

    /// <summary>Felt with all losses, or null where they leave nothing.</summary>
    public FeltAccount? Felt { get; init; }

    /// <summary>Costs, or null without a price.</summary>
    public CostSheet? Sheet { get; init; }

    /// <summary>Why there is no account or no sheet, or null.</summary>
    public string? Problem { get; init; }

    /// <summary>The account of a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="costs">Losses, and what the shop knows of its costs.</param>
    /// <param name="price">Price of the felt, or null.</param>
    /// <param name="massGsm">Mass per area of the felt, g/m2, or null.</param>
    public static PricedLayout Of(RollLayout layout, CostInputs costs, FeltPrice? price, double? massGsm)
    {
        PricedLayout bare = new()
        {
            Yields = YieldAccount.Of(layout),
            Groups = [.. YieldAccount.Classes(layout).Select(c => c.Class)],
        };
        try
        {
            FeltAccount felt = FeltAccount.Of(LayPlan.Of(layout), costs.Losses, massGsm);
            return bare with { Felt = felt, Sheet = price is null ? null : CostSheet.Of(felt, FeltTerms.Of(price), costs) };
        }
        catch (FeltNestException error)
        {
            return bare with { Problem = error.Message };
        }
    }
}
