using FeltNest.Cost.Offers;
using FeltNest.Cost.Sheet;

namespace FeltNest.Runs;

/// <summary>Whether every offer can be put in the currency of the cost sheet.</summary>
internal static class OfferRates
{
    /// <summary>Asks for the rate of every currency.</summary>
    /// <param name="offers">Offers, or null.</param>
    /// <param name="offersFile">Their file, or null.</param>
    /// <param name="costs">What the shop knows of its costs, or null.</param>
    /// <param name="costsFile">Its file, or null.</param>
    /// <exception cref="InputException">A currency without a rate.</exception>
    public static void Require(IReadOnlyList<FeltOffer>? offers, string? offersFile, CostInputs? costs, string? costsFile)
    {
        string? sheet = costs?.Currency ?? offers?[0].Price.Currency;
        foreach (FeltOffer offer in offers ?? [])
        {
            string own = offer.Price.Currency;
            if (own != sheet && costs?.Rates.Any(rate => rate.Currency == own) != true)
            {
                string where = costsFile is { } file ? $"rates in '{file}'" : "rates in a costs file";
                throw new InputException(
                    offersFile, $"currency of '{offer.Name}'", $"{own} cannot be mixed with {sheet}: state its rate under {where}");
            }
        }
    }
}
