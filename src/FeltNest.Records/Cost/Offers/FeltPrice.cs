namespace FeltNest.Cost.Offers;

/// <summary>A price of felt.</summary>
/// <param name="Amount">Money for one unit.</param>
/// <param name="Unit">What it is for.</param>
/// <param name="Currency">Its currency.</param>
public sealed record FeltPrice(decimal Amount, PriceUnit Unit, string Currency)
{
    /// <summary>The quantity a price counts, of a felt usage.</summary>
    /// <exception cref="InputException">The price is for kilograms and the felt's mass is not known.</exception>
    public static double QuantityOf(PriceUnit unit, Yield.FeltUsage felt) => unit switch
    {
        PriceUnit.Metre => felt.Metres,
        PriceUnit.SquareMetre => felt.SquareMetres,
        _ => felt.Kilograms
            ?? throw new InputException(
                null, "massPerAreaGsm", "is not known, and the felt is priced by the kilogram: give the mass per area of the felt"),
    };
}
