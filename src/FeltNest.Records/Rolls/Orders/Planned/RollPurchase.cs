namespace FeltNest.Rolls.Orders.Planned;

/// <summary>Rolls to buy of one offer.</summary>
/// <param name="Offer">The offer.</param>
/// <param name="Rolls">How many rolls.</param>
internal sealed record RollPurchase(FeltPurchase Offer, int Rolls)
{
    /// <summary>Length bought, m.</summary>
    public double Metres => Rolls * Offer.Roll.LengthM;

    /// <summary>What they cost.</summary>
    public decimal Price => Metre * Offer.Roll.PricePerMetre;

    private decimal Metre => (decimal)Metres;
}
