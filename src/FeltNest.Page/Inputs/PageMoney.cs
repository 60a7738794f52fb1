using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;

namespace FeltNest.Page.Inputs;

/// <summary>What the page knows of money and losses.</summary>
/// <param name="Price">Price of the felt, or null.</param>
/// <param name="Losses">Losses beside the lay.</param>
internal sealed record PageMoney(FeltPrice? Price, FeltLosses Losses)
{
    /// <summary>The same as the costs of a sheet.</summary>
    public CostInputs Costs => CostInputs.Bare(Price?.Currency ?? "EUR") with { Losses = Losses, Felt = Price };
}
