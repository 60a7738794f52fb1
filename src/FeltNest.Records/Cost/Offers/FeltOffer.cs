namespace FeltNest.Cost.Offers;

/// <summary>Felt somebody offers.</summary>
/// <param name="Name">Name of the offer, once in a list.</param>
/// <param name="Felt">What felt it is.</param>
/// <param name="WidthMm">Nominal width of the roll, mm.</param>
/// <param name="LengthM">Length of a roll, m.</param>
/// <param name="Price">Price.</param>
/// <param name="LeastWidthMm">Width the seller guarantees, mm, or null for the nominal one.</param>
/// <param name="EdgeMm">Edge trim each side, mm, or null for the shop's usual one.</param>
/// <param name="MassPerAreaGsm">Mass per area, g/m2, or null for the ball's felt.</param>
/// <param name="MassBasis">Whether mass and kilograms are of bare or of coated felt, or null where the offer does not say.</param>
/// <param name="FaultPercent">Panels lost to faults, per cent, or null for the shop's usual share.</param>
/// <param name="MinimumM">Least length that is sold, m, or null.</param>
/// <param name="Lot">Shade lot, or null.</param>
public sealed record FeltOffer(
    string Name, string Felt, double WidthMm, double LengthM, FeltPrice Price, double? LeastWidthMm, double? EdgeMm, double? MassPerAreaGsm,
    string? MassBasis, double? FaultPercent,
    double? MinimumM, string? Lot)
{
    /// <summary>Least and greatest price thought possible, in the unit and currency of the price, or null.</summary>
    public (decimal Low, decimal High)? PriceRange { get; init; }

    /// <summary>The width to plan on: what is guaranteed.</summary>
    public double PlannedWidthMm => LeastWidthMm ?? WidthMm;
}
